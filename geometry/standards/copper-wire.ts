/** Round copper wire by gauge number: area in mm2, resistance in ohm per metre. */
import { fromMemory } from './cited-documents';
import { citing, type Published } from './published';

const gauge = citing({
  document: 'ASTM B258 Standard nominal diameters of solid round wires',
  publisher: 'ASTM',
});

/** Diameter 0.127 mm x 92^((36 - n) / 39). */
export const gaugeRule = gauge(
  { base: 0.127, ratio: 92, zero: 36, steps: 39 } as const,
  'two sources',
  undefined,
  {
    via: 'wire tables',
  },
);

/** Resistivity of copper at 20 deg C, ohm mm2 / m. */
export const copperResistivity: Published<number> = fromMemory(0.017241, {
  note: 'annealed copper; gives the tabled 13.17 and 20.94 mohm/m of 16 and 18 AWG',
});

/** Gauge of the conductors of each lead. */
export const leadGauges = {
  cardSixteenPin: citing({
    document: 'ATX Version 3 Multi Rail Desktop Platform Power Supply Design Guide, document 336521',
    publisher: 'Intel',
    revision: '2.0',
  })(16, 'primary', 'page 55', { note: 'twelve of them' }),
  others: citing({
    document: 'ATX Version 3 Multi Rail Desktop Platform Power Supply Design Guide, document 336521',
    publisher: 'Intel',
    revision: '2.0',
  })(18, 'primary', 'page 18'),
} as const;

/** Cross-section, mm2. */
export function wireArea(gaugeNumber: number): number {
  const { base, ratio, zero, steps } = gaugeRule.value;
  const diameter = base * ratio ** ((zero - gaugeNumber) / steps);
  return (Math.PI * diameter * diameter) / 4;
}

/** Ohm per metre of one conductor. */
export function wireResistance(gaugeNumber: number): number {
  return copperResistivity.value / wireArea(gaugeNumber);
}
