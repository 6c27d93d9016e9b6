/**
 * Spec of a cooler.
 *
 * Frame: origin at the centre of the contact face on top of the processor lid; at turn 0 x and y are parallel to the
 * board's x (down) and y (forward), z away from the board. Air runs along -y (front to rear) through a tower at turn
 * 0. Heights are measured from the lid, as sheets do. Millimetres.
 */
import { z } from 'zod';
import { refuse } from '../contradiction';
import { millimetres, position, rating } from '../dimension';
import { identityFields } from '../identity';
import { fanSizeSchema, socketPatternSchema } from '../patterns';
import { liquidBlockContradictions } from './liquid-block';
import { topFlowContradictions } from './top-flow';
import { towerContradictions } from './tower-layout';

/** A fan of a tower; it stands in front of, between or behind the fin stacks. */
const towerFanSchema = z.strictObject({
  place: z.enum(['front', 'middle', 'rear']).meta({ title: 'Place' }),
  size: fanSizeSchema.meta({ title: 'Frame', unit: 'mm' }),
  thickness: millimetres('Thickness', { fallback: 25 }).optional(),
  bottom: millimetres('Lower edge above the lid', { min: 0 }),
  raise: millimetres('Can slide up by', { min: 0, fallback: 0 }).optional(),
});

const shared = {
  kind: z.literal('cooler'),
  ...identityFields,
  patterns: z.array(socketPatternSchema).min(1).max(4).meta({ title: 'Hole patterns' }),
  watts: rating('Heat it is made for', 'W', { max: 1000 }).optional(),
  resistance: rating('Heat resistance, lid to air at top speed', 'K/W', { max: 20 }).optional(),
  eachFan: z
    .strictObject({
      speed: rating('Top speed', 'rpm', { max: 10_000 }).optional(),
      flow: rating('Free flow at top speed', 'm³/h', { max: 1000 }).optional(),
      pressure: rating('Shut-off pressure at top speed', 'Pa', { max: 1000 }).optional(),
      sound: rating('Sound at top speed, 1 m', 'dB', { max: 100 }).optional(),
    })
    .optional()
    .meta({ title: 'Each of its fans' }),
  offset: z
    .tuple([position('x'), position('y')])
    .optional()
    .meta({ title: 'Offset of the stack from the socket centre' }),
} as const;

const stackFields = {
  height: millimetres('Height', { datum: 'top of the processor lid to top of the fins or pipes' }),
  width: millimetres('Width of the fins', { datum: 'across the air, along x' }),
  finBottom: millimetres('Lower face of the fins', { datum: 'top of the lid to the lowest fin', min: 0 }),
} as const;

const towerSchema = z
  .strictObject({
    style: z.literal('tower'),
    ...shared,
    ...stackFields,
    stacks: z
      .array(z.strictObject({ depth: millimetres('Depth', { datum: 'along the air' }) }))
      .min(1)
      .max(2)
      .meta({ title: 'Fin stacks, front first' }),
    gap: millimetres('Gap between the stacks', {
      min: 0,
      fallback: 'thickness of the middle fan + 2',
    }).optional(),
    fans: z.array(towerFanSchema).max(3),
  })
  .superRefine(refuse(towerContradictions));

const topFlowSchema = z
  .strictObject({
    style: z.literal('top flow'),
    ...shared,
    ...stackFields,
    depth: millimetres('Depth of the fins', { datum: 'along y' }),
    fan: z
      .strictObject({
        size: fanSizeSchema,
        thickness: millimetres('Thickness', { fallback: 15 }).optional(),
        under: z.boolean().optional(),
      })
      .meta({ title: 'Fan', help: 'Sits on the fins, or under them; the height includes a fan on top' }),
  })
  .superRefine(refuse(topFlowContradictions));

const liquidBlockSchema = z
  .strictObject({
    style: z.literal('liquid block'),
    ...shared,
    width: millimetres('Block width', { datum: 'along x' }),
    depth: millimetres('Block depth', { datum: 'along y' }),
    height: millimetres('Block height', { datum: 'top of the lid to top of the block' }),
    pumpSound: rating('Sound of the pump, 1 m', 'dB', { max: 100 }).optional(),
    pumpWatts: rating('Power of the pump', 'W', { max: 60 }).optional(),
    tubes: z
      .strictObject({
        diameter: millimetres('Outer diameter'),
        length: millimetres('Free length', { datum: 'between the fittings' }),
        bendRadius: millimetres('Least bend radius', { datum: 'to the centre line' }),
        leaves: z.enum(['+x', '-x', '+y', '-y']).meta({ title: 'Tubes leave towards' }),
      })
      .meta({ title: 'Tubes' }),
  })
  .superRefine(refuse(liquidBlockContradictions));

export const coolerSpecSchema = z.discriminatedUnion('style', [
  towerSchema,
  topFlowSchema,
  liquidBlockSchema,
]);
export type CoolerSpec = z.infer<typeof coolerSpecSchema>;
export type TowerSpec = z.infer<typeof towerSchema>;
