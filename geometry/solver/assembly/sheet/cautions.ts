/** The usual cautions of the bench: common practice and the words every sheet of this trade carries. */
import type { PartSpec } from '../../../parts/part-spec';
import type { AssemblyStep } from '../order/assembly-order';

/** One person lifts no more than this without help, kg; our choice, well under the reference mass of lifting guides. */
export const LIFT_ALONE_KG = 15;

/** Printed once, at the head of the sheet. */
export function generalCautions(massKg: number): readonly string[] {
  return [
    'Switch the supply off and unplug it before anything else, and wait. The supply itself is never opened: it holds a charge and nothing in it is to be serviced.',
    'Touch bare metal that is earthed, or wear an earthed strap, before touching boards, memory and drives; handle them by their edges.',
    'Sheet edges, brackets and fins are sharp.',
    'Leads belong to the supply they came with: leads of another may fit and still destroy parts.',
    'Makers’ manuals and torque figures prevail over this sheet.',
    'Mains wiring, sockets and earthing are for licensed people under the local code.',
    ...(massKg > LIFT_ALONE_KG
      ? [`The parts weigh ${massKg.toFixed(1)} kg together: two people lift it, or a trolley.`]
      : []),
  ];
}

/** Printed at a step, for what is in hand there. */
export function cautionsOf(step: AssemblyStep, spec: PartSpec | undefined): readonly string[] {
  const cautions: string[] = [];
  const isGlass =
    spec?.kind === 'enclosure' &&
    step.kind === 'panel' &&
    ((step.unit.endsWith('side panel') && spec.walls?.side?.material === 'glass') ||
      (step.unit.endsWith('back panel') && spec.walls?.back?.material === 'glass'));
  if (isGlass) cautions.push('Glass: lay it flat on a soft cloth, never on tile, never on its edge.');
  if (step.kind === 'cooler' && step.action === 'put in') {
    cautions.push('Turn its screws alternately, a few turns at a time, so that it comes down level.');
    if (spec?.kind === 'cooler' && spec.style === 'liquid block')
      cautions.push('Coolant: read its safety sheet, keep a towel by, do not open a sealed unit.');
  }
  if (step.kind === 'radiator')
    cautions.push('Coolant: read its safety sheet; look for leaks before power is switched on.');
  if (step.kind === 'supply' && step.action === 'put in')
    cautions.push('Its switch is off and no mains lead is in it.');
  if (step.kind === 'board') cautions.push('Two threads look alike (6-32 and M3): never force a screw.');
  if (step.action === 'plug in') cautions.push('Never plug or unplug with the power on.');
  return cautions;
}
