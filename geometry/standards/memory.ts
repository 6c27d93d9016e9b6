/** Memory modules and their sockets, mm. Board standards fix neither place nor pitch of memory. */
import { dimmOutlineDdr4, dimmOutlineSdram, fromMemory, noStandard } from './cited-documents';
import { citing } from './published';

const mo161 = citing(dimmOutlineSdram);
const mo309 = citing(dimmOutlineDdr4);
const seen = citing(noStandard);

/** Full-size modules. Height is from the contact edge to the top of a bare module. */
export const dimm = {
  length: mo161(133.35, 'two sources', undefined, { via: 'one data sheet and articles', note: '5.250 in' }),
  height: mo309(31.25, 'primary', 'raw card B1', { via: 'a module data sheet' }),
  thickness: fromMemory(3.9, { note: 'largest of a bare module; SDRAM modules were 3.00 (MO-161)' }),
  boardThicknessDdr4: fromMemory(1.4),
  boardThicknessDdr5: fromMemory(1.27),
  heightDdr5: fromMemory(31.25),
} as const;

/** Socket of a full-size module. */
export const dimmSocket = {
  length: seen(142, 'one source', undefined, { via: 'one open drawing' }),
  width: seen(6.5, 'one source', undefined, { via: 'one open drawing' }),
  height: seen(6, 'one source', undefined, { via: 'one open drawing' }),
  latchHeight: seen(19, 'one source', undefined, { via: 'one open drawing' }),
  /** Lower edge of a seated module above the board. */
  seatHeight: seen(2.5, 'one source', undefined, { via: 'one open drawing' }),
  pitch: fromMemory(9.5, { note: '9.5 to 10 between neighbouring sockets' }),
} as const;

/** Top of a bare module of standard height above the board's component side. */
export const seatedDimmTop = seen(2.5 + 31.25, 'derived', undefined, { note: 'seat 2.50 + module 31.25' });

/** Small-outline modules lie flat; length along the contact edge. */
export const soDimm = {
  length: fromMemory(69.6, { note: 'DDR4 and DDR5; one article agrees; earlier generations 67.6' }),
  height: seen(30, 'one source', undefined, { via: 'one article', note: '1.18 in for DDR3' }),
  socketHeights: seen([5.2, 8, 9.2] as const, 'two sources', undefined, { via: 'two part models' }),
  socketWithModuleLength: seen(78, 'one source', undefined, { via: 'one footprint', note: '8.0 high type' }),
  socketWithModuleDepth: seen(25.85, 'one source', undefined, {
    via: 'one footprint',
    note: '8.0 high type, without module',
  }),
} as const;
