/** Temperature of every part that has one, from a machine in balance. */
import { nominal } from '../../parts/dimension';
import type { PlacedPart } from '../../plan/scene';
import { cellNode } from '../air/build-network';
import { processorCooling, processorTemperature } from './controls';
import { cardCooling, standingResistance } from './cooling-paths';
import { coolerOf, deviceFor, flowShare, intakeRise } from './heat-in-place';
import type { Question, Settled } from './question';

export interface PartTemperature {
  readonly part: PlacedPart;
  /** deg C */
  readonly celsius?: number;
  readonly because?: string;
  /** Of the air it takes, deg C. */
  readonly air?: number;
  readonly watts: number;
  /** Part to air, K/W. */
  readonly resistance?: number;
  readonly limit: number;
  readonly limitFrom: string;
  readonly missing: readonly string[];
  readonly formula: string;
}

export function partTemperatures(question: Question, state: Settled): readonly PartTemperature[] {
  return question.scene.parts.flatMap((part) => {
    switch (part.kind) {
      case 'processor':
        return [processorRow(question, state, part)];
      case 'card':
        return [cardRow(question, state, part)];
      case 'drive':
      case 'memory':
        return [standingRow(question, state, part)];
      default:
        return [];
    }
  });
}

const usual = 'usual limit, assumed';

function processorRow(question: Question, state: Settled, part: PlacedPart): PartTemperature {
  const { scene, air, values, room } = question;
  const { spec } = part;
  const stated = spec.kind === 'processor' ? spec.limit : undefined;
  const shared = {
    part,
    watts: question.heats.get(part.id) ?? 0,
    limit: stated === undefined ? values.processorLimit : nominal(stated),
    limitFrom: stated === undefined ? usual : 'sheet of the processor',
    formula:
      'Air at the intake of the cooler, and the heat times the resistances from die to lid, lid to cooler and cooler ' +
      'to air at its flow. Beyond its limit a processor slows down instead of getting hotter.',
  };
  const device = deviceFor(scene, air, part.id);
  if (!device) {
    const cooler = coolerOf(scene, part);
    const because = cooler
      ? `${cooler.label} has no radiator in the plan`
      : `${part.label} has no cooler in the plan`;
    return { ...shared, because, missing: [] };
  }
  const cooling = processorCooling(question, state, device);
  const celsius = processorTemperature(question, state, device);
  if (!cooling.known || celsius === undefined)
    return { ...shared, because: cooling.known ? 'no resistance is known' : cooling.because, missing: [] };
  const taken = room + intakeRise(state, device);
  const resistance = shared.watts > 0 ? (celsius - taken) / shared.watts : 0;
  const missing =
    spec.kind === 'processor' && spec.resistance === undefined
      ? [...cooling.missing, `the sheet of ${part.label} states no heat resistance`]
      : cooling.missing;
  return { ...shared, celsius, air: taken, resistance, missing };
}

function cardRow(question: Question, state: Settled, part: PlacedPart): PartTemperature {
  const { air, values, room } = question;
  const { spec } = part;
  const watts = question.heats.get(part.id) ?? 0;
  const stated = spec.kind === 'card' ? spec.limit : undefined;
  const shared = {
    part,
    watts,
    limit: stated === undefined ? values.cardLimit : nominal(stated),
    limitFrom: stated === undefined ? usual : 'sheet of the card',
    formula:
      'Air at the intakes of its fans, and its heat times the resistance of its cooler at its flow; its own control ' +
      'turns the fans up to stay at the temperature it aims for.',
  };
  const device = air.devices.find((one) => one.id === part.id);
  const cooling = cardCooling(part, question.sustained.get(part.id) ?? watts, values);
  if (!device || !cooling.known)
    return {
      ...shared,
      because: cooling.known ? `${part.label} moves no air of its own` : cooling.because,
      missing: [],
    };
  const taken = room + intakeRise(state, device);
  const resistance = cooling.at(flowShare(state, device, question.ratings));
  return { ...shared, celsius: taken + watts * resistance, air: taken, resistance, missing: cooling.missing };
}

function standingRow(question: Question, state: Settled, part: PlacedPart): PartTemperature {
  const { scene, air, values, room } = question;
  const watts = question.heats.get(part.id) ?? 0;
  const resistance = standingResistance(scene, part, values) ?? 0;
  const cell = air.cellOf.get(part.id);
  const taken = room + state.drawnInRise + (cell === undefined ? 0 : (state.rises[cellNode(cell)] ?? 0));
  return {
    part,
    watts,
    celsius: taken + watts * resistance,
    air: taken,
    resistance,
    limit: part.kind === 'drive' ? values.driveLimit : values.cardLimit,
    limitFrom: usual,
    missing: [],
    formula: 'Air of the place where it is, and its heat times its resistance to that air.',
  };
}
