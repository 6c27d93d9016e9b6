/** Currents in leads: volts, amperes, ohms, metres. */
import { wireResistance } from '../../standards/copper-wire';

/** Drop over a pair of leads, there and back: 2 L R' I, shared by `conductors` of each polarity. */
export function leadDrop(metres: number, gauge: number, amperes: number, conductors = 1): number {
  return (2 * metres * wireResistance(gauge) * amperes) / conductors;
}

/** Contacts a current passes on its way there and back: two plugs, two polarities. */
const CONTACTS_IN_LOOP = 4;

/** Drop over the contacts of one path, there and back. */
export function contactDrop(amperes: number, contactOhms: number): number {
  return amperes * contactOhms * CONTACTS_IN_LOOP;
}

/** How a current divides among paths of given resistances. */
export function sharedCurrents(amperes: number, resistances: readonly number[]): readonly number[] {
  const conductances = resistances.map((one) => 1 / one);
  const total = conductances.reduce((sum, one) => sum + one, 0);
  return conductances.map((one) => (amperes * one) / total);
}
