/** What radiators and fans have to clear on the board. */
import type { ClearanceRule } from '../clearance-rule';
import { all, WORTH_A_ROW_MM } from './selections';
import { apart } from './wanted-gaps';

export const stackRules: readonly ClearanceRule[] = [
  {
    id: 'radiator to board',
    title: '{part}',
    from: { kinds: ['radiator', 'fan'] },
    to: { kinds: ['board'], except: ['expansion slot'] },
    frame: 'board',
    directions: all,
    reach: WORTH_A_ROW_MM,
    wanted: apart,
  },
  {
    id: 'radiator to memory',
    title: '{part}',
    from: { kinds: ['radiator', 'fan'] },
    to: { kinds: ['memory'] },
    frame: 'board',
    directions: all,
    reach: WORTH_A_ROW_MM,
    wanted: apart,
  },
];
