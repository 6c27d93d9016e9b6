/**
 * What is tried on an empty mount: the smallest usual thing of the kind, of which one size after another is then let
 * grow, the others staying small. Sizes come from the published tables; a cooler has none and is a bare block of fins.
 */
import type { Mount } from '../../parts/body';
import { type PartSpec, partSpecSchema } from '../../parts/part-spec';
import {
  coolerMountPattern,
  driveMountPattern,
  fanMountPattern,
  fanSizeSchema,
  m2LengthSchema,
  m2MountPattern,
  memoryMountPattern,
  moduleFormSchema,
  radiatorMountPattern,
  radiatorRowSchema,
  type SlotSize,
  type SocketPattern,
  type SupplyForm,
  slotMountPattern,
  slotSizeSchema,
  socketPatternSchema,
  supplyFormSchema,
  supplyMountPattern,
} from '../../parts/patterns';
import { cardEnvelopeThickness, cardOutline } from '../../standards/card-envelope';
import { driveForms } from '../../standards/drives';
import { dimm } from '../../standards/memory';

/** The largest form that the mount takes; undefined where a trial would say nothing (boards, processors, risers). */
export function trialPart(mount: Mount): PartSpec | undefined {
  const takes = (pattern: string): boolean => mount.patterns.includes(pattern);
  const slot = slotSizeSchema.options.findLast((size) => takes(slotMountPattern(size)));
  if (slot !== undefined) return card(slot);
  const module = moduleFormSchema.options.find((form) => takes(memoryMountPattern(form)));
  if (module !== undefined) {
    return parsed({ kind: 'memory', form: module, thickness: dimm.thickness.value });
  }
  const socket = socketPatternSchema.options.find((pattern) => takes(coolerMountPattern(pattern)));
  if (socket !== undefined) return cooler(socket);
  const fan = fanSizeSchema.options.findLast(({ value }) => takes(fanMountPattern(value)));
  if (fan !== undefined) return parsed({ kind: 'fan', size: fan.value });
  const row = radiatorRowSchema.options.findLast((name) => takes(radiatorMountPattern(name)));
  if (row !== undefined) return parsed({ kind: 'radiator', row });
  const supply = supplyFormSchema.options.find((form) => takes(supplyMountPattern(form)));
  if (supply !== undefined) return supplyOf(supply);
  const m2 = m2LengthSchema.options.findLast(({ value }) => takes(m2MountPattern(value)));
  if (m2 !== undefined) return parsed({ kind: 'drive', form: 'M.2', length: m2.value });
  return driveOf(takes);
}

function card(slot: SlotSize): PartSpec {
  return parsed({
    kind: 'card',
    interface: slot,
    length: cardOutline.halfLength.value,
    height: cardOutline.fullHeight.value,
    thickness: cardEnvelopeThickness(1),
    bracketSlots: 1,
  });
}

/** A block of fins no larger than a small contact plate: nothing of it is from a table. */
function cooler(socket: SocketPattern): PartSpec {
  return parsed({
    kind: 'cooler',
    style: 'tower',
    patterns: [socket],
    height: 40,
    width: 60,
    finBottom: 25,
    stacks: [{ depth: 60 }],
    fans: [],
  });
}

/** Leads and plugs as every supply has them. */
function supplyOf(form: SupplyForm): PartSpec {
  const plugs = [{ type: 'main 24-pin', count: 1 }];
  return parsed({ kind: 'supply', form, plugs, modular: true, watts: 300 });
}

function driveOf(takes: (pattern: string) => boolean): PartSpec | undefined {
  const form = (['3.5', '2.5'] as const).find((name) => takes(driveMountPattern(name)));
  if (form === undefined) return undefined;
  const [height] = driveForms[`${form} in`].heights.value;
  return parsed({ kind: 'drive', form, height });
}

function parsed(fields: Readonly<Record<string, unknown>>): PartSpec {
  return partSpecSchema.parse({ maker: 'Generic', model: 'Trial', ...fields });
}
