/** The assembly sheet as data: numbered steps, screws, leads, checks and cautions. Nothing here decides the order. */

import { nominal } from '../../../parts/dimension';
import type { Scene } from '../../../plan/scene';
import { type ScrewUse, screwThreads, tightness } from '../../../standards/assembly-screws';
import { type LeadOptions, type LeadPlan, routeLeads } from '../leads/route-leads';
import { buildMachine } from '../machine/machine';
import type { UnitKind } from '../machine/unit';
import {
  type AssemblyOrder,
  type AssemblyStep,
  type OrderOptions,
  orderOfMachine,
} from '../order/assembly-order';
import { cautionsOf, generalCautions } from './cautions';

export interface SheetStep {
  readonly number: number;
  /** Unit ids to draw new in the picture of this step. */
  readonly units: readonly string[];
  /** Units that are in place already. */
  readonly present: readonly string[];
  readonly title: string;
  readonly how: string;
  readonly place: string;
  readonly screws: readonly {
    readonly count: number;
    readonly thread: string;
    readonly tightness?: string;
  }[];
  readonly tools: readonly string[];
  readonly reasons: readonly string[];
  readonly checks: readonly string[];
  readonly cautions: readonly string[];
}

export interface AssemblySheet {
  readonly name: string;
  readonly buildable: boolean;
  /** Why it cannot be built, when it cannot. */
  readonly problem?: string;
  readonly general: readonly string[];
  readonly steps: readonly SheetStep[];
  readonly screwList: readonly { readonly use: ScrewUse; readonly thread: string; readonly count: number }[];
  readonly toolList: readonly string[];
  readonly leadList: LeadPlan;
  /** Screws and plugs for which no tool was found to have room: to be looked at before ordering. */
  readonly unproved: readonly string[];
}

export interface SheetOptions extends OrderOptions {
  readonly leads?: LeadOptions;
}

export function assemblySheet(scene: Scene, name: string, options: SheetOptions = {}): AssemblySheet {
  const order = orderOfMachine(buildMachine(scene, options), options);
  return sheetOfOrder(scene, name, order, routeLeads(scene, options.leads));
}

/** The sheet of an order and a lead plan already found. */
export function sheetOfOrder(
  scene: Scene,
  name: string,
  order: AssemblyOrder,
  leadList: LeadPlan,
): AssemblySheet {
  const present: string[] = order.steps.filter((step) => step.action === 'take off').map((step) => step.unit);
  const steps = order.steps.map((step): SheetStep => {
    if (step.action === 'take off') present.splice(present.indexOf(step.unit), 1);
    const sheet = sheetStep(scene, order, step, [...present]);
    if (step.action !== 'take off') present.push(step.unit);
    return sheet;
  });
  const uses = new Map<ScrewUse, number>();
  for (const step of order.steps) {
    if (step.action === 'take off') continue;
    for (const need of step.needs) if (need.screw) uses.set(need.screw, (uses.get(need.screw) ?? 0) + 1);
  }
  return {
    name,
    buildable: order.buildable,
    ...(order.stuck ? { problem: order.stuck.sentence } : {}),
    general: generalCautions(massOf(scene)),
    steps,
    screwList: [...uses].map(([use, count]) => ({ use, count, thread: screwThreads[use].value })),
    toolList: [...new Set(steps.flatMap((step) => step.tools))].sort(),
    leadList,
    unproved: [...new Set(order.unproved.map((entry) => entry.sentence))],
  };
}

function sheetStep(
  scene: Scene,
  order: AssemblyOrder,
  step: AssemblyStep,
  present: readonly string[],
): SheetStep {
  const spec = scene.parts[scene.indexById.get(step.part) ?? -1]?.spec;
  const uses = new Map<ScrewUse, number>();
  for (const need of step.needs) if (need.screw) uses.set(need.screw, (uses.get(need.screw) ?? 0) + 1);
  const bench = step.bench === undefined ? undefined : order.steps.find((other) => other.unit === step.bench);
  return {
    number: step.number,
    units: [step.unit, ...step.with],
    present,
    title: titleOf(order, step),
    how: step.action === 'take off' ? takeOffWords(step) : step.wayWords,
    place: placeWords(step, bench),
    screws: [...uses].map(([use, count]) => ({
      count,
      thread: screwThreads[use].value,
      ...(use === 'board' ? { tightness: tightness.boardScrews.value } : {}),
      ...(use === 'cooler' ? { tightness: tightness.coolerScrews.value } : {}),
    })),
    tools: [...new Set(step.needs.flatMap((need) => need.tool ?? []))],
    reasons: step.reasons.map((reason) => reason.sentence),
    checks: step.action === 'take off' ? [] : (CHECKS[step.kind] ?? []),
    cautions: cautionsOf(step, spec),
  };
}

/** The way off, as seen by somebody who stands before the open side. */
function takeOffWords({ kind, motions }: AssemblyStep): string {
  const first = motions[0];
  const [x, y, z] = first?.kind === 'slide' ? first.by : [0, 0, 0];
  const side =
    Math.abs(z) >= Math.max(Math.abs(x), Math.abs(y))
      ? z > 0
        ? 'the open side'
        : 'the side behind the tray'
      : Math.abs(x) > Math.abs(y)
        ? x > 0
          ? 'the front'
          : 'the rear'
        : y > 0
          ? 'the top'
          : 'below';
  return kind === 'slot cover'
    ? `drawn off towards ${side}`
    : `straight off towards ${side}, and laid aside to the end`;
}

function placeWords({ action }: AssemblyStep, bench: AssemblyStep | undefined): string {
  if (action === 'take off' || action === 'close') return '';
  return bench ? `on the bench, on ${bench.name}` : 'in the enclosure';
}

function titleOf(order: AssemblyOrder, step: AssemblyStep): string {
  if (step.action === 'take off') return `Take off ${step.name}`;
  if (step.action === 'close') return `Put ${step.name} back on`;
  if (step.action === 'plug in') return `Plug in ${step.name}`;
  const names = step.with
    .map((id) => order.steps.find((other) => other.unit === id))
    .flatMap((other) => (other && other.action !== 'plug in' ? other.name : []));
  const along = names.length === 0 ? '' : `, with ${names.join(', ')} on it`;
  return `${step.bench ? 'Fit' : 'Put in'} ${step.name}${along}`;
}

/** What to look at before going on; common practice, no source. */
const CHECKS: Readonly<Partial<Record<UnitKind, readonly string[]>>> = {
  processor: ['The mark on its corner meets the mark on the socket; it lies flat by itself.'],
  memory: ['Both clips have clicked and stand upright.'],
  drive: ['It is pushed in as far as it goes before its screw is turned.'],
  'M.2 sink': ['The film is off its pad.'],
  cooler: ['The film is off its base; paste or pad is between base and lid.', 'It does not rock.'],
  'cooler fan': ['It blows the way the arrow says; its lead touches no blade.'],
  board: [
    'Every standoff has a hole over it and no standoff touches the board elsewhere.',
    'The rear sockets sit square in their opening.',
  ],
  card: [
    'It is seated to the click of the latch along its whole edge.',
    'Its bracket lies flat on its ledge.',
  ],
  plug: ['Seated to the click; no bend at the plug itself.'],
  supply: ['Its fan looks where the plan says.'],
  fan: ['It blows the way the plan says.'],
  radiator: ['No screw is long enough to reach the fins.'],
  panel: ['Nothing lies between fins and panel; no lead is pinched.'],
};

/** Mass of everything whose sheet says, kg. */
function massOf(scene: Scene): number {
  const grams = scene.parts.reduce(
    (sum, { spec }) => sum + (spec.mass === undefined ? 0 : nominal(spec.mass)),
    0,
  );
  return grams / 1000;
}
