/** The closed lists of patterns and forms that decide which foot goes on which mount. */
import { z } from 'zod';

/** Hole pattern round a processor socket, named by its millimetres. */
export const socketPatternSchema = z.enum(['square-75', 'square-78', 'square-80', 'rectangle-54x90']);
export type SocketPattern = z.infer<typeof socketPatternSchema>;

export const boardFormSchema = z.enum(['ATX', 'microATX', 'Mini-ITX', 'FlexATX', 'Mini-DTX', 'SSI-EEB']);

export const supplyFormSchema = z.enum(['ATX', 'SFX', 'SFX-L', 'TFX', 'Flex ATX']);
export type SupplyForm = z.infer<typeof supplyFormSchema>;

export const slotSizeSchema = z.enum(['x1', 'x4', 'x8', 'x16']);
export type SlotSize = z.infer<typeof slotSizeSchema>;

export const moduleFormSchema = z.enum(['DIMM', 'SO-DIMM']);
export type ModuleForm = z.infer<typeof moduleFormSchema>;

export const driveFormSchema = z.enum(['3.5', '2.5', 'M.2']);

/** Fan frame, mm. */
export const fanSizeSchema = z.union([
  z.literal(40),
  z.literal(60),
  z.literal(80),
  z.literal(92),
  z.literal(120),
  z.literal(140),
  z.literal(200),
]);
export type FanSize = z.infer<typeof fanSizeSchema>;

/** Radiators are named by the fan row they take, never by their length. */
export const radiatorRowSchema = z.enum(['120', '140', '240', '280', '360']);
export type RadiatorRow = z.infer<typeof radiatorRowSchema>;

export const m2LengthSchema = z.union([
  z.literal(30),
  z.literal(42),
  z.literal(60),
  z.literal(80),
  z.literal(110),
]);
export type M2Length = z.infer<typeof m2LengthSchema>;

/** Plugs and sockets of power and signal leads that a compact machine uses, named by form, not by maker. */
export const plugTypeSchema = z.enum([
  'main 24-pin',
  'processor 8-pin',
  'processor 4-pin',
  'card 6-pin',
  'card 8-pin',
  'card 16-pin',
  'drive power',
  'peripheral 4-pin',
]);
export type PlugType = z.infer<typeof plugTypeSchema>;

export const headerTypeSchema = z.enum([
  'main 24-pin',
  'processor 8-pin',
  'processor 4-pin',
  'fan 4-pin',
  'USB 3 20-pin',
  'USB C internal',
  'USB 2 10-pin',
  'front panel',
  'front audio',
  'SATA upright',
  'SATA angled',
  'lighting 3-pin',
  'clear settings',
]);
export type HeaderType = z.infer<typeof headerTypeSchema>;

/** Pattern names shared by mounts and feet. */
export const boardPattern = 'board';
export const socketMountPattern = (pattern: SocketPattern): string => `processor ${pattern}`;
export const coolerMountPattern = (pattern: SocketPattern): string => `cooler ${pattern}`;
export const memoryMountPattern = (form: ModuleForm): string => `memory ${form}`;
export const m2MountPattern = (length: M2Length): string => `M.2 22x${length}`;
export const slotMountPattern = (size: SlotSize): string => `slot ${size}`;
export const supplyMountPattern = (form: SupplyForm): string => `supply ${form === 'SFX-L' ? 'SFX' : form}`;
export const fanMountPattern = (size: FanSize): string => `fan ${size}`;
export const radiatorMountPattern = (row: RadiatorRow): string => `radiator ${row}`;
export const driveMountPattern = (form: '3.5' | '2.5'): string => `drive ${form}`;
export const riserMountPattern = 'riser x16';
