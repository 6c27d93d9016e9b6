/** What drives and M.2 sinks have to clear. */
import type { ClearanceRule } from '../clearance-rule';
import { all, WORTH_A_ROW_MM } from './selections';
import { apart, rearSide } from './wanted-gaps';

export const driveRules: readonly ClearanceRule[] = [
  {
    id: 'M.2 sink to card',
    title: '{part}, M.2 sink',
    from: { kinds: ['board'], elements: ['m2 sink'] },
    to: { kinds: ['card'] },
    frame: 'board',
    directions: ['+z', '-x', '+x'],
    seatedToo: true,
    reach: WORTH_A_ROW_MM,
    wanted: apart,
  },
  {
    id: 'M.2 drive to card',
    title: '{part}',
    from: { kinds: ['drive'], on: 'board' },
    to: { kinds: ['card'] },
    frame: 'board',
    directions: ['+z', '-x', '+x'],
    reach: WORTH_A_ROW_MM,
    wanted: apart,
  },
  {
    id: 'M.2 drive to cooler',
    title: '{part}',
    from: { kinds: ['drive'], on: 'board' },
    to: { kinds: ['cooler'] },
    frame: 'board',
    directions: all,
    reach: WORTH_A_ROW_MM,
    wanted: apart,
  },
  {
    id: 'drive to panel',
    title: '{part}',
    from: { kinds: ['drive'] },
    to: { kinds: ['enclosure'], elements: ['tray', 'back panel', 'side panel'], across: true },
    frame: 'own',
    directions: ['+z'],
    seatedToo: true,
    nearestOnly: true,
    reach: WORTH_A_ROW_MM,
    wanted: rearSide,
  },
  {
    id: 'drive to card',
    title: '{part}',
    from: { kinds: ['drive'], on: 'enclosure' },
    to: { kinds: ['card', 'cooler'] },
    frame: 'enclosure',
    directions: all,
    reach: WORTH_A_ROW_MM,
    wanted: apart,
  },
];
