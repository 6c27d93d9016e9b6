/** What a maker would publish about an enclosure, measured by the solver: the largest things that go in, nothing spare. */
import type { EnclosureSpec } from '../../../geometry/parts/enclosure/fields';
import type { PublishedLimits } from '../../../geometry/parts/enclosure-from-limits/limits';
import { partSpecSchema } from '../../../geometry/parts/part-spec';
import { placePlan } from '../../../geometry/plan/place-plan';
import { type Plan, planSchema } from '../../../geometry/plan/plan-schema';
import { clearanceRules } from '../../../geometry/solver/clearance-rules';
import { limitOf } from '../../../geometry/solver/limits/limit';

const named = { maker: 'Test', model: 'Trial' } as const;
const noGaps = Object.fromEntries(clearanceRules.map(({ id }) => [id, 0]));

type Measured = Pick<PublishedLimits, 'layout' | 'boardForm' | 'slots' | 'supply'>;

/** Board with nothing on it but a socket and a slot; processor, bare block of fins and bare card on them. */
export function emptyBuild(enclosure: EnclosureSpec, { layout, boardForm, supply }: Measured): Plan {
  const onRiser = layout === 'card behind the board on a riser';
  const bay = enclosure.supplyBays[0];
  const parts = {
    enclosure: { placement: { at: [0, 0, 0] }, spec: enclosure },
    board: {
      placement: { on: 'enclosure', mount: 'board' },
      spec: {
        kind: 'board',
        ...named,
        form: boardForm,
        socket: { pattern: 'square-75', at: [75, 95] },
        memory: { form: 'SO-DIMM', count: 1, at: [150, 140], along: 'x' },
        slots: onRiser ? [] : [{ position: 1, size: 'x16' }],
      },
    },
    processor: {
      placement: { on: 'board', mount: 'processor' },
      spec: { kind: 'processor', ...named, socket: 'square-75', width: 37.5, depth: 37.5, class: 65 },
    },
    cooler: {
      placement: { on: 'processor', mount: 'lid' },
      spec: {
        kind: 'cooler',
        ...named,
        style: 'tower',
        patterns: ['square-75'],
        height: 30,
        width: 40,
        finBottom: 20,
        stacks: [{ depth: 40 }],
        fans: [],
      },
    },
    ...(onRiser
      ? {
          adapter: {
            placement: { on: 'enclosure', mount: 'riser' },
            spec: { kind: 'adapter', ...named, form: 'riser socket' },
          },
        }
      : {}),
    card: {
      placement: onRiser ? { on: 'adapter', mount: 'slot 1' } : { on: 'board', mount: 'slot 1' },
      spec: {
        kind: 'card',
        ...named,
        interface: 'x16',
        length: 150,
        height: 60,
        thickness: 15,
        bracketSlots: 1,
        lowProfile: true,
      },
    },
    ...(supply && bay
      ? {
          supply: {
            placement: { on: 'enclosure', mount: `supply ${bay.id}` },
            spec: {
              kind: 'supply',
              ...named,
              form: supply,
              depth: 60,
              watts: 300,
              modular: true,
              plugs: [{ type: 'main 24-pin', count: 1, sockets: 1 }],
            },
          },
        }
      : {}),
  };
  for (const { spec } of Object.values(parts)) partSpecSchema.parse(spec);
  const plan = planSchema.parse({ format: 1, name: 'Trial', parts, gaps: noGaps });
  const { problems } = placePlan(plan);
  if (problems.length > 0) throw new Error(JSON.stringify(problems));
  return plan;
}

const first = (plan: Plan, part: string, path: string): number | undefined =>
  limitOf(plan, part, path).steps[0]?.value;

/** The supply stands in its bay, so what it ends for the card is part of the answer. */
export function publishedLimitsOf(enclosure: EnclosureSpec, how: Measured): PublishedLimits {
  const plan = emptyBuild(enclosure, how);
  const sizes = {
    coolerHeight: first(plan, 'cooler', 'height'),
    cardLength: first(plan, 'card', 'length'),
    cardThickness: first(plan, 'card', 'thickness'),
    cardHeight: first(plan, 'card', 'height'),
    supplyLength: how.supply && first(plan, 'supply', 'depth'),
  };
  const known = Object.entries(sizes).flatMap(([key, value]) =>
    value === undefined ? [] : [[key, Number(value.toFixed(6))] as const],
  );
  return { ...how, ...Object.fromEntries(known) };
}
