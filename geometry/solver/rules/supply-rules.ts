/** What a supply and its plugs have to clear. */
import type { ClearanceRule } from '../clearance-rule';
import { all, loose, WORTH_A_ROW_MM } from './selections';
import { apart, leads } from './wanted-gaps';

const supplyPlugs: ClearanceRule['from'] = {
  kinds: ['supply'],
  roles: ['plug space', 'bend space'],
  standsOut: true,
};

export const supplyRules: readonly ClearanceRule[] = [
  {
    id: 'supply to card',
    title: '{part}',
    from: { kinds: ['supply'] },
    to: { kinds: ['card'] },
    frame: 'own',
    directions: all,
    reach: WORTH_A_ROW_MM,
    wanted: apart,
  },
  {
    id: 'supply plugs to what is in front',
    title: '{part}, plugs and bend',
    from: supplyPlugs,
    to: { kinds: ['enclosure', 'board', ...loose], except: ['standoff', 'foot', 'handle'] },
    frame: 'own',
    directions: ['+x'],
    seatedToo: true,
    nearestOnly: true,
    limits: { of: 'from', field: 'depth' },
    wanted: leads,
  },
  {
    id: 'supply to other parts',
    title: '{part}',
    from: { kinds: ['supply'] },
    to: { kinds: ['board', 'memory', 'drive', 'fan', 'radiator'] },
    frame: 'own',
    directions: all,
    reach: WORTH_A_ROW_MM,
    wanted: apart,
  },
];
