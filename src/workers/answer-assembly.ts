/** Finds order, leads and service of a plan in one go. Runs in the worker, or on the page where there is none. */
import {
  buildMachine,
  orderOfMachine,
  type Plan,
  placePlan,
  routeLeads,
  serviceOfMachine,
  sheetOfOrder,
} from '../../geometry';
import type { AssemblyAnswer, AssemblyPhase, AssemblyProgress } from './assembly-request';

/** Where each phase begins and ends on the way from 0 to 1. */
const SPANS: Readonly<Record<AssemblyPhase, readonly [number, number]>> = {
  machine: [0, 0.35],
  order: [0.35, 0.55],
  leads: [0.55, 0.85],
  service: [0.85, 1],
};

/** The same sheet as `assemblySheet`; the machine is built once for sheet and service. */
export function answerAssembly(
  plan: Plan,
  onProgress: (progress: AssemblyProgress) => void = () => {},
): AssemblyAnswer {
  const tell = (phase: AssemblyPhase) => (done: number) => {
    const [from, to] = SPANS[phase];
    onProgress({ phase, share: from + (to - from) * Math.min(1, Math.max(0, done)) });
  };
  const scene = placePlan(plan);
  tell('machine')(0);
  const machine = buildMachine(scene, { onProgress: tell('machine') });
  tell('order')(0);
  // An order tells of its search in the upper half, below which the building of the machine is told.
  const order = orderOfMachine(machine, { onProgress: (share) => tell('order')(2 * share - 1) });
  tell('leads')(0);
  const leads = routeLeads(scene, { onProgress: tell('leads') });
  tell('service')(0);
  const service = serviceOfMachine(machine, { onProgress: tell('service') });
  return {
    sheet: sheetOfOrder(scene, plan.name, order, leads),
    subjects: order.steps.map(({ action, unit, part }) => ({ key: `${action} ${unit}`, part })),
    service,
    ...(order.stuck ? { knot: order.stuck } : {}),
    unitNames: Object.fromEntries(machine.units.map(({ id, name }) => [id, name])),
  };
}
