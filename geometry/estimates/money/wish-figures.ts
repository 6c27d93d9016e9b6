/** What a wish costs: the part as chosen against the plainer one that would do. */
import { nominal } from '../../parts/dimension';
import type { Plan, Price, Quote } from '../../plan/plan-schema';
import type { PlacedPart, Scene } from '../../plan/scene';
import type { Figure } from '../estimate';

export function amountOf(price: Price): number {
  return typeof price === 'number' ? price : price.amount;
}

/** What a decibel less costs between two plans, or two parts; undefined when nothing is quieter. */
export function costPerDecibel(
  plain: { price: number; decibels: number },
  quieter: { price: number; decibels: number },
): number | undefined {
  const avoided = plain.decibels - quieter.decibels;
  return avoided > 0 ? (quieter.price - plain.price) / avoided : undefined;
}

type Wish = NonNullable<Quote['wishes']>[number];

/** What a wish costs against the plainer part, and what a decibel of it costs where both levels are known. */
export function wishFigures(
  plan: Plan,
  scene: Scene,
  { label, part, plainPrice, plainDecibels }: Wish,
  number: number,
  shared: Pick<Figure, 'topic' | 'unit' | 'inputs' | 'exact' | 'currency'>,
): readonly Figure[] {
  const price = plan.prices?.[part];
  const amount = price === undefined ? undefined : amountOf(price);
  const placed = scene.parts.find(({ id }) => id === part);
  const name = placed?.label ?? part;
  const noPrice = { because: `${name} has no price` };
  const own: Figure = {
    ...shared,
    id: `money wish ${number}`,
    title: `Price of a wish: ${label}`,
    part,
    ...(amount === undefined ? noPrice : { value: amount - plainPrice }),
    formula: 'The part as chosen less the plainer one that would do.',
    inputs: [
      { name: `${name}, as chosen`, value: amount ?? 'no price', unit: 'money', source: 'plan' },
      { name: 'plainer part', value: plainPrice, unit: 'money', source: 'plan' },
    ],
  };
  if (plainDecibels === undefined) return [own];
  const level = placed && soundOf(placed);
  const cost =
    amount === undefined || level === undefined
      ? undefined
      : costPerDecibel({ price: plainPrice, decibels: plainDecibels }, { price: amount, decibels: level });
  const because =
    amount === undefined
      ? noPrice.because
      : level === undefined
        ? `the sheet of ${name} states no sound`
        : `${name}, ${level} dB, is no quieter than the plainer part, ${plainDecibels} dB`;
  return [
    own,
    {
      ...shared,
      id: `money decibel ${number}`,
      title: `Price of a decibel less: ${label}`,
      part,
      unit: 'money/dB',
      ...(cost === undefined ? { because } : { value: cost }),
      formula: 'What the wish costs, over how much quieter its sheet is than that of the plainer part.',
      inputs: [
        { name: 'plainer part, sound', value: plainDecibels, unit: 'dB', source: 'plan' },
        ...(level === undefined
          ? []
          : [{ name: `${name}, sound`, value: level, unit: 'dB', source: 'sheet' } as const]),
      ],
    },
  ];
}

function soundOf({ spec }: PlacedPart): number | undefined {
  const stated =
    spec.kind === 'cooler'
      ? spec.eachFan?.sound
      : spec.kind === 'fan' || spec.kind === 'card' || spec.kind === 'supply'
        ? spec.sound
        : undefined;
  return stated === undefined ? undefined : nominal(stated);
}
