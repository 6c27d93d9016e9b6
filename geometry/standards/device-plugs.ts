/** Plugs at the back of drives and supplies, mm. No drawing of any of them was read. */
import { fromMemory } from './cited-documents';

/** Power and data plug of a 2.5 or 3.5 in drive, side by side. */
export const drivePlug = {
  along: fromMemory(45, { note: 'both plugs, across the drive' }),
  across: fromMemory(8),
  length: fromMemory(20, { note: 'beyond the connector end' }),
  bend: fromMemory(15, { note: 'of the leads beyond the plugs' }),
  above: fromMemory(1, { note: 'from the base of the drive to the plug' }),
} as const;

/** Mains plug at the inlet of a supply; how far it stands out is in `plugAndBend.angledMainsPlug`. */
export const mainsPlug = {
  width: fromMemory(28),
  height: fromMemory(20),
  inletFromSide: fromMemory(0.25, { note: 'share of the width, on the left seen from outside' }),
} as const;

/** Leads of a supply that is not modular. */
export const leadBundle = {
  diameter: fromMemory(25, { note: 'where all leads leave the case together' }),
} as const;

/** Spacing of modular sockets in their rows. */
export const modularSockets = {
  gap: fromMemory(2, { note: 'between neighbouring plugs' }),
  margin: fromMemory(5, { note: 'from the edge of the face to the first plug' }),
} as const;
