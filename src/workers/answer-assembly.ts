/** Finds order, leads and service of a plan in one go. Runs in the worker, or on the page where there is none. */
import {
  buildMachine,
  type InsertionPath,
  type LeadOptions,
  leadWaypoints,
  type Machine,
  orderOfMachine,
  type Plan,
  pathOfUnit,
  placePlan,
  routeLeads,
  serviceOfMachine,
  sheetOfOrder,
} from '../../geometry';
import type {
  AssemblyAnswer,
  AssemblyPhase,
  AssemblyProgress,
  StepSubject,
  UnitOutline,
  WayQuestion,
} from './assembly-request';

/** Where each phase begins and ends on the way from 0 to 1. */
const SPANS: Readonly<Record<AssemblyPhase, readonly [number, number]>> = {
  machine: [0, 0.35],
  order: [0.35, 0.55],
  leads: [0.55, 0.85],
  service: [0.85, 1],
};

/** The machine of the plan last asked about: a way is asked for after the sheet, of the same plan. */
let built: { readonly text: string; readonly machine: Machine } | undefined;

function machineOf(plan: Plan, onProgress?: (share: number) => void): Machine {
  // A plan crosses to a worker as a copy, so it is known by what is in it.
  const text = JSON.stringify(plan);
  if (built?.text !== text)
    built = { text, machine: buildMachine(placePlan(plan), onProgress ? { onProgress } : {}) };
  return built.machine;
}

/** The same sheet as `assemblySheet`; the machine is built once for sheet, service and ways. */
export function answerAssembly(
  plan: Plan,
  onProgress: (progress: AssemblyProgress) => void = () => {},
): AssemblyAnswer {
  const tell = (phase: AssemblyPhase) => (done: number) => {
    const [from, to] = SPANS[phase];
    onProgress({ phase, share: from + (to - from) * Math.min(1, Math.max(0, done)) });
  };
  tell('machine')(0);
  const machine = machineOf(plan, tell('machine'));
  tell('order')(0);
  // An order tells of its search in the upper half, below which the building of the machine is told.
  const order = orderOfMachine(machine, { onProgress: (share) => tell('order')(2 * share - 1) });
  tell('leads')(0);
  const leads = routeLeads(machine.scene, { ...wishesFor(plan), onProgress: tell('leads') });
  tell('service')(0);
  const service = serviceOfMachine(machine, { onProgress: tell('service') });
  return {
    sheet: sheetOfOrder(machine.scene, plan.name, order, leads),
    subjects: order.steps.map(
      (step): StepSubject => ({
        key: `${step.action} ${step.unit}`,
        part: step.part,
        unit: step.unit,
        with: step.with,
        ...(step.bench === undefined ? {} : { bench: step.bench }),
        words: step.wayWords,
        // What is taken off goes back on the same way: its motions are told into the seat like all others.
        motions:
          step.action === 'take off'
            ? (order.steps.findLast((other) => other.unit === step.unit)?.motions ?? step.motions)
            : step.motions,
        takenOff: step.action === 'take off',
      }),
    ),
    units: outlinesOf(machine),
    waypoints: leadWaypoints(machine.scene),
    service,
    ...(order.stuck ? { knot: order.stuck } : {}),
    unitNames: Object.fromEntries(machine.units.map(({ id, name }) => [id, name])),
  };
}

/** What the plan says of its leads, as routing asks for it. */
function wishesFor(plan: Plan): Pick<LeadOptions, 'pins' | 'lengths'> {
  const said = Object.entries(plan.leads ?? {});
  return {
    pins: Object.fromEntries(said.flatMap(([id, { through }]) => (through ? [[id, through]] : []))),
    lengths: Object.fromEntries(
      said.flatMap(([id, { length }]) => (length === undefined ? [] : [[id, length]])),
    ),
  };
}

function outlinesOf({ scene, units }: Machine): readonly UnitOutline[] {
  return units.map((unit): UnitOutline => {
    const part = scene.parts[unit.part];
    const on = unit.on === undefined ? undefined : units[unit.on]?.id;
    return {
      id: unit.id,
      name: unit.name,
      part: part?.id ?? '',
      boxes: unit.boxes.map((box) => box - (part?.firstBox ?? 0)),
      ...(on === undefined ? {} : { on }),
      covers: unit.kind === 'panel' || unit.kind === 'slot cover',
      isPlug: unit.kind === 'plug',
    };
  });
}

export function answerWay(plan: Plan, { unit, present, ...options }: WayQuestion): InsertionPath {
  return pathOfUnit(machineOf(plan), unit, present && new Set(present), options);
}
