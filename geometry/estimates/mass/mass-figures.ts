/** What is said about mass, standing, carrying and size. */
import { outerSizeOf } from '../../parts/enclosure/outer-size';
import type { Plan } from '../../plan/plan-schema';
import type { Scene } from '../../plan/scene';
import type { Bounds } from '../../space/oriented-box';
import type { Vector3 } from '../../space/vector';
import { recommendedWeightLimit } from '../../standards/lifting-equation';
import { stabilityTests } from '../../standards/stability-tests';
import { FREE_FALL } from '../../standards/standard-atmosphere';
import type { AssumptionValues } from '../assumptions';
import type { Figure } from '../estimate';
import { cardDroops } from './card-droop';
import { centreOfMass } from './centre-of-mass';
import { partMasses, partsWithoutMass } from './masses';
import { roomLeft, type Size } from './places';
import { footLoads, handlePivot, hangAngle, standOf, tippingOf } from './standing';

export function massFigures(plan: Plan, scene: Scene, values: AssumptionValues): readonly Figure[] {
  return [...weightFigures(scene, values), ...droopFigures(scene, values), ...sizeFigures(plan, scene)];
}

/** Mass and centre of the whole machine, leads included; undefined when a mass that cannot be guessed is missing. */
export function wholeMass(
  scene: Scene,
  values: AssumptionValues,
): { kilograms: number; centre: Vector3 } | undefined {
  if (partsWithoutMass(scene).length > 0) return undefined;
  const whole = centreOfMass(partMasses(scene, values).map(({ grams, at }) => ({ mass: grams, at })));
  return whole && { kilograms: (whole.mass + values.leadsMass) / 1000, centre: whole.at };
}

function weightFigures(scene: Scene, values: AssumptionValues): readonly Figure[] {
  const masses = partMasses(scene, values);
  const without = partsWithoutMass(scene);
  const shared = {
    topic: 'mass',
    inputs: masses.map(({ input }) => input),
    missing: masses.flatMap(({ missing }) => missing),
  } as const;
  const total = {
    ...shared,
    id: 'mass',
    title: 'Mass',
    unit: 'kg',
    formula: 'Masses of all parts, leads and screws, added up.',
  } as const;
  const whole = wholeMass(scene, values);
  if (!whole) {
    const [first] = without;
    const because = first ? `the sheet of ${first.label} states no mass` : 'no part has a mass';
    return [{ ...total, because }];
  }
  const { kilograms, centre } = whole;
  const weight = kilograms * FREE_FALL;
  const limit = recommendedWeightLimit({
    horizontal: values.liftReach,
    vertical: LIFTED_FROM,
    travel: values.liftTravel,
    couplingMultiplier: values.coupling,
  });
  const axes = [
    'forwards from the rear wall',
    'up from the floor',
    'from the tray towards the panel',
  ] as const;
  return [
    { ...total, value: kilograms },
    ...axes.map(
      (words, axis): Figure => ({
        ...shared,
        id: `mass centre ${'xyz'[axis]}`,
        title: `Centre of gravity, ${words}`,
        unit: 'mm',
        value: centre[axis] ?? 0,
        formula:
          'Every mass times where the middle of its body is, added up, over the whole mass; leads are taken to spread evenly.',
      }),
    ),
    {
      ...shared,
      id: 'mass lifting index',
      title: 'Lifting index from the floor',
      unit: 'times',
      value: kilograms / limit,
      formula: `Mass over the recommended weight limit (${limit.toFixed(1)} kg): 23 kg times what reach, height, travel and grip leave of it (NIOSH 94-110).`,
      limit: { kind: 'at most', value: 1, from: 'lifting equation' },
    },
    ...standingFigures(scene, centre, weight, shared),
  ];
}

/** Hands above the floor when a low machine is picked up, cm: the worked example of the lifting equation's users. */
const LIFTED_FROM = 20;

/** A handle off the centre of gravity hangs no more than this, degrees: common practice, no source. */
const HANG_WISH = 3;

function standingFigures(
  scene: Scene,
  centre: Vector3,
  weight: number,
  shared: Pick<Figure, 'topic' | 'inputs' | 'missing'>,
): readonly Figure[] {
  const stand = standOf(scene);
  if (!stand) return [];
  const tipping = tippingOf(stand, centre, weight);
  const { push } = stabilityTests;
  const pushed = Math.min(push.value.shareOfWeight * weight, push.value.most);
  const pivot = handlePivot(scene);
  return [
    ...footLoads(stand, centre, weight).map(
      (load, i): Figure => ({
        ...shared,
        id: `mass on ${stand.contacts[i]?.name}`,
        title: `Load on ${stand.contacts[i]?.name}`,
        unit: 'N',
        value: load,
        formula: 'Weight shared so that force and both moments balance, feet giving alike.',
        limit: { kind: 'at least', value: 0, from: 'a foot under less than nothing lifts off' },
      }),
    ),
    {
      ...shared,
      id: 'mass tip angle',
      title: `Tilt at which it falls, over its ${tipping.over}`,
      unit: 'deg',
      value: tipping.degrees,
      formula:
        'Angle whose tangent is the way from the centre of gravity to the nearest edge it stands on, over its height.',
      limit: { kind: 'at least', value: stabilityTests.tilt.value, from: 'IEC 62368-1, tilt test' },
    },
    {
      ...shared,
      id: 'mass push to tip',
      title: 'Push at the top edge that tips it',
      unit: 'N',
      value: tipping.push,
      formula: 'Weight times the way to the nearest edge, over the height of the top.',
      limit: { kind: 'at least', value: pushed, from: 'IEC 62368-1, 13 % of the weight' },
    },
    ...(pivot
      ? [
          {
            ...shared,
            id: 'mass hang angle',
            title: 'Tilt when it hangs from its handle',
            unit: 'deg',
            value: hangAngle(pivot, centre),
            formula:
              'Angle whose tangent is the way of the centre of gravity beside the handle, over its drop below.',
            limit: { kind: 'at most', value: HANG_WISH, from: 'common practice' },
          } satisfies Figure,
          {
            ...shared,
            id: 'mass handle must bear',
            title: 'Load a handle should be proved with',
            unit: 'N',
            value: weight * stabilityTests.handleFactor.value[1],
            formula: 'Four times the weight: the stricter of the two factors of handle tests.',
          } satisfies Figure,
        ]
      : []),
  ];
}

function droopFigures(scene: Scene, values: AssumptionValues): readonly Figure[] {
  return cardDroops(scene, values).flatMap(({ card, free, propped, propLoad, overhang, load }): Figure[] => {
    const shared = {
      topic: 'mass',
      part: card.id,
      inputs: [
        { name: 'length beyond the slot', value: Math.round(overhang), unit: 'mm', source: 'plan' },
        {
          name: 'weight on it across the board',
          value: Math.round(load * 10) / 10,
          unit: 'N',
          source: 'derived',
        },
      ],
    } as const;
    return [
      {
        ...shared,
        id: `mass droop of ${card.id}`,
        title: `${card.label}, tip sinks by`,
        unit: 'mm',
        value: free,
        formula:
          'Weight times length cubed over eight times the stiffness of circuit board and backplate, and what the bracket gives. What stands below needs this much more.',
      },
      {
        ...shared,
        id: `mass propped droop of ${card.id}`,
        title: `${card.label}, with a prop under the tip, sags by`,
        unit: 'mm',
        value: propped,
        formula: 'Weight times length cubed over 185 times the stiffness.',
      },
      {
        ...shared,
        id: `mass prop load of ${card.id}`,
        title: `${card.label}, load on a prop under the tip`,
        unit: 'N',
        value: propLoad,
        formula: 'Three eighths of the weight beyond the slot.',
      },
    ];
  });
}

function sizeOfRange({ min, max }: Bounds): Size {
  return { length: max[0] - min[0], height: max[1] - min[1], width: max[2] - min[2] };
}

function sizeFigures(plan: Plan, scene: Scene): readonly Figure[] {
  const spec = scene.parts.find((part) => part.kind === 'enclosure')?.spec;
  if (spec?.kind !== 'enclosure') return [];
  const outer = outerSizeOf(spec);
  const overall = sizeOfRange(outer.overall);
  const inputs = [
    { name: 'length', value: round(overall.length), unit: 'mm', source: 'plan' },
    { name: 'height', value: round(overall.height), unit: 'mm', source: 'plan' },
    { name: 'width', value: round(overall.width), unit: 'mm', source: 'plan' },
  ] as const;
  const shared = { topic: 'mass', inputs, exact: true } as const;
  const place = plan.brief?.mustGoInto;
  return [
    {
      ...shared,
      id: 'size walls',
      title: 'Volume round the walls',
      unit: 'l',
      value: outer.litres,
      formula: 'Length, height and width over the outer faces of the walls; feet and handle left out.',
    },
    {
      ...shared,
      id: 'size overall',
      title: 'Volume round everything',
      unit: 'l',
      value: outer.litresOverall,
      formula: 'Length, height and width over all that stands out.',
    },
    {
      ...shared,
      id: 'size footprint',
      title: 'Footprint',
      unit: 'mm²',
      value: overall.length * overall.width,
      formula: 'Length times width over all that stands out.',
    },
    ...(place
      ? [
          {
            ...shared,
            id: 'size place',
            title: `Room left in ${place.name}`,
            unit: 'mm',
            value: roomLeft(overall, place, place.upright ?? false),
            formula: 'Least of the three differences, turned the best way it may be.',
            limit: { kind: 'at least', value: 0, from: 'brief' },
          } satisfies Figure,
        ]
      : []),
  ];
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
