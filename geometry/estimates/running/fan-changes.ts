/**
 * What a fan more, fewer, turned round or slowed would do: each change is made on the plan and the machine is run
 * again, without bands, for the difference between two runs of one model is surer than either.
 */
import type { FanSpec } from '../../parts/fan/spec';
import { addPart, movePart, removePart } from '../../plan/edit-plan';
import { findMounts } from '../../plan/find-mounts';
import { placePlan } from '../../plan/place-plan';
import { isSeated, type Plan } from '../../plan/plan-schema';
import type { PlacedPart, Scene } from '../../plan/scene';
import { SECONDS_PER_HOUR } from '../air/air-laws';
import { middleValues } from '../assumptions';
import type { Profile } from '../profile';
import { exchangeOf, insidePressure } from './air-figures';
import { type Run, runMachine } from './run';

export interface FanChange {
  readonly id: string;
  /** 'Fan 1 turned round' */
  readonly what: string;
  /** Temperature of the processor and of every card after the change and how much it rose, deg C and K. */
  readonly temperatures: readonly {
    readonly part: string;
    readonly label: string;
    readonly after: number;
    readonly by: number;
  }[];
  /** dB at the ear, and how much louder. */
  readonly level: { readonly after: number; readonly by: number } | undefined;
  /** Air drawn from the room, m3/h, and how much more. */
  readonly drawn: { readonly after: number; readonly by: number };
  /** Inside against the room, Pa. */
  readonly pressure: number;
  /** The plan as it would be, for changes that put in or move a part, and the id of that part. */
  readonly changed?: { readonly plan: Plan; readonly part: string };
}

/** A slowed fan keeps this share of its speed. */
const SLOWED = 0.7;

/** More free seats than these are not tried: a machine has few, and the first are those a builder would use. */
const MOST_ADDED = 4;

/** Where no fan of the plan goes on a seat, one of an ordinary frame and no stated ratings. */
const plainFans: readonly FanSpec[] = ([140, 120, 92] as const).map((size) => ({
  kind: 'fan',
  maker: 'Generic',
  model: `${size} x 25`,
  size,
}));

export function fanChanges(plan: Plan, scene: Scene, profile: Profile): readonly FanChange[] {
  const base = runMachine(plan, scene, profile, middleValues);
  if (!base.ok) return [];
  const fans = scene.parts.filter(({ kind }) => kind === 'fan');
  return [
    ...fans.flatMap((fan) => changesOf(plan, scene, profile, base.run, fan)),
    ...additions(plan, scene, profile, base.run, fans),
  ];
}

function changesOf(
  plan: Plan,
  scene: Scene,
  profile: Profile,
  base: Run,
  fan: PlacedPart,
): readonly FanChange[] {
  const { id, label } = fan;
  const share = base.question.fanShares[id] ?? base.state.shares.get(id) ?? 0;
  const slower = { ...profile, fanShares: { ...profile.fanShares, [id]: share * SLOWED } };
  const speed = `${Math.round(100 * share)} % of top speed`;
  const placement = plan.parts[id]?.placement;
  const turned =
    placement && isSeated(placement)
      ? movePart(plan, id, { ...placement, foot: fan.seat?.foot === 'blows out' ? 'blows in' : 'blows out' })
      : undefined;
  const without = removePart(plan, id).plan;
  return [
    ...(turned
      ? changed(base, `turn ${id}`, `${label} turned round`, turned, profile, { plan: turned, part: id })
      : []),
    ...differing(
      base,
      `slow ${id}`,
      `${label} slowed from ${speed} to ${Math.round(100 * share * SLOWED)} %`,
      runMachine(plan, scene, slower, middleValues, base.state),
    ),
    ...changed(base, `remove ${id}`, `${label} left out`, without, profile),
  ];
}

/** A fan on each free seat of the enclosure, as it usually blows there: one like those of the plan that fits it. */
function additions(
  plan: Plan,
  scene: Scene,
  profile: Profile,
  base: Run,
  fans: readonly PlacedPart[],
): readonly FanChange[] {
  const enclosure = scene.parts.find(({ kind }) => kind === 'enclosure');
  const own = fans.flatMap(({ spec }) => (spec.kind === 'fan' ? [spec] : []));
  const seen = new Set<string>();
  const changes: FanChange[] = [];
  for (const spec of [...own, ...plainFans]) {
    for (const { placement, label, takenBy } of findMounts(scene, spec)) {
      if (placement.on !== enclosure?.id || takenBy !== undefined || seen.has(placement.mount)) continue;
      if (changes.length === MOST_ADDED) return changes;
      seen.add(placement.mount);
      const added = addPart(plan, spec, placement);
      const seat = label.replace(/ on .*/, '').toLowerCase();
      const name = `a ${spec.size} mm fan added, ${seat}, ${placement.foot ?? ''}`.replace(/, $/, '');
      changes.push(
        ...changed(base, `add ${placement.mount}`, name, added.plan, profile, {
          plan: added.plan,
          part: added.id,
        }),
      );
    }
  }
  return changes;
}

function changed(
  base: Run,
  id: string,
  what: string,
  plan: Plan,
  profile: Profile,
  after?: FanChange['changed'],
): readonly FanChange[] {
  return differing(base, id, what, runMachine(plan, placePlan(plan), profile, middleValues)).map((change) =>
    after ? { ...change, changed: after } : change,
  );
}

function differing(
  base: Run,
  id: string,
  what: string,
  result: ReturnType<typeof runMachine>,
): readonly FanChange[] {
  if (!result.ok) return [];
  const { run } = result;
  const before = new Map(base.temperatures.map(({ part, celsius }) => [part.id, celsius]));
  const temperatures = run.temperatures.flatMap(({ part, celsius }) => {
    const earlier = before.get(part.id);
    if (celsius === undefined || earlier === undefined) return [];
    if (part.kind !== 'processor' && part.kind !== 'card') return [];
    return [{ part: part.id, label: part.label, after: celsius, by: celsius - earlier }];
  });
  const level =
    run.level === undefined || base.level === undefined
      ? undefined
      : { after: run.level, by: run.level - base.level };
  const drawn = drawnIn(run);
  return [
    {
      id,
      what,
      temperatures,
      level,
      drawn: { after: drawn, by: drawn - drawnIn(base) },
      pressure: insidePressure(run),
    },
  ];
}

function drawnIn(run: Run): number {
  const { drawnByFans, drawnElsewhere } = exchangeOf(run);
  return (drawnByFans + drawnElsewhere) * SECONDS_PER_HOUR;
}
