/** What the controls of a machine would set, given how it runs, and the temperatures they look at. */
import { nominal } from '../../parts/dimension';
import { makersAirDensity } from '../../standards/standard-atmosphere';
import type { Device } from '../air/devices';
import { type Cooling, cardCooling, coolerCooling, radiatorResistance } from './cooling-paths';
import { holdingShare, settledShare } from './fan-control';
import { flowOf, flowShare, intakeRise } from './heat-in-place';
import type { Question, Settled } from './question';

/** What every control would set now, by device id. */
export function askedShares(question: Question, state: Settled): Map<string, number> {
  return new Map(question.air.devices.map((device) => [device.id, askedShare(question, state, device)]));
}

function askedShare(question: Question, state: Settled, device: Device): number {
  const { values, caseShare, supplyLoad } = question;
  switch (device.kind) {
    case 'case fan':
      return caseShare;
    case 'supply':
      return values.supplyLeastSpeed + (1 - values.supplyLeastSpeed) * Math.min(supplyLoad, 1);
    case 'card':
      return cardShare(question, state, device);
    case 'cooler':
    case 'radiator':
      return coolerShare(question, state, device);
  }
}

function cardShare(question: Question, state: Settled, device: Device): number {
  const { values, room } = question;
  const heat = question.heats.get(device.id) ?? 0;
  const cooling = cardCooling(device.part, question.sustained.get(device.id) ?? heat, values);
  if (!cooling.known) return values.cardLeastSpeed;
  const turning = state.shares.get(device.id) ?? 1;
  const flow = flowShare(state, device, question.ratings);
  const air = room + intakeRise(state, device);
  const at = (share: number) => air + heat * cooling.at((flow * share) / Math.max(turning, 0.01));
  const { spec } = device.part;
  const target =
    spec.kind === 'card' && spec.limit !== undefined ? nominal(spec.limit) - 10 : values.cardTarget;
  return holdingShare(at, target, values.cardLeastSpeed);
}

function coolerShare(question: Question, state: Settled, device: Device): number {
  const { values, coolerMost } = question;
  const turning = state.shares.get(device.id) ?? 1;
  const at = (share: number) =>
    processorTemperature(question, state, device, share / Math.max(turning, 0.01));
  return settledShare((share) => at(share) ?? values.coolerFullAt, {
    least: values.coolerLeastSpeed,
    most: coolerMost,
    slowAt: values.coolerSlowAt,
    fullAt: values.coolerFullAt,
  });
}

/** Temperature of the processor cooled by a device whose flow is `times` what it is now; undefined if unknown. */
export function processorTemperature(
  question: Question,
  state: Settled,
  device: Device,
  times = 1,
): number | undefined {
  const { scene, values, room } = question;
  const processor = scene.parts.find((part) => part.kind === 'processor');
  if (processor?.spec.kind !== 'processor') return undefined;
  const heat = question.heats.get(processor.id) ?? 0;
  const cooling = processorCooling(question, state, device, times);
  if (!cooling.known) return undefined;
  const { resistance } = processor.spec;
  const inner =
    resistance === undefined ? values.dieRise / nominal(processor.spec.class) : nominal(resistance);
  return room + intakeRise(state, device) + heat * (inner + cooling.at(1));
}

/** Lid to air through the device as its flow is now, times `times`; the argument of the result is not used again. */
export function processorCooling(question: Question, state: Settled, device: Device, times = 1): Cooling {
  const { scene, values } = question;
  if (device.kind === 'radiator') {
    const flows = device.streams.map(({ id }) => flowOf(state, id) * times);
    const ratio = state.network.density / makersAirDensity.value;
    const whole =
      values.lidToFoot +
      values.blockToLiquid +
      radiatorResistance(device, flows, ratio, question.ratings.flow(device), values);
    return { known: true, at: () => whole, missing: [] };
  }
  const cooler = scene.parts.find((part) => part.id === device.id);
  if (!cooler) return { known: false, because: 'the processor has no cooler' };
  const cooling = coolerCooling(cooler, values);
  if (!cooling.known) return cooling;
  const whole = cooling.at(flowShare(state, device, question.ratings) * times);
  return { known: true, at: () => whole, missing: cooling.missing };
}
