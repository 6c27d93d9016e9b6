/** What a card, its plugs and its fans have to clear. */
import type { ClearanceRule } from '../clearance-rule';
import { loose, WORTH_A_ROW_MM, walls } from './selections';
import { apart, cardAir, leads, panel, tip } from './wanted-gaps';

const cardBody: ClearanceRule['from'] = { kinds: ['card'], except: ['card bracket'] };
const cardPlugs: ClearanceRule['from'] = {
  kinds: ['card'],
  roles: ['plug space', 'bend space'],
  standsOut: true,
};

export const cardRules: readonly ClearanceRule[] = [
  {
    id: 'card tip',
    title: '{part} tip',
    from: cardBody,
    to: {
      kinds: ['enclosure', ...loose],
      except: ['standoff', 'foot', 'handle', 'tray', 'side panel', 'back panel'],
    },
    frame: 'own',
    directions: ['+x'],
    nearestOnly: true,
    limits: { of: 'from', field: 'length' },
    wanted: tip,
  },
  {
    id: 'card plug to what is in front',
    title: '{part}, plug and bend',
    from: cardPlugs,
    to: {
      kinds: ['enclosure', ...loose],
      except: ['standoff', 'foot', 'handle', 'tray', 'side panel', 'back panel'],
    },
    frame: 'own',
    directions: ['+x'],
    nearestOnly: true,
    limits: { of: 'from', field: 'length' },
    wanted: leads,
  },
  {
    id: 'card edge to side panel',
    title: '{part}, upper edge',
    from: cardBody,
    to: { kinds: ['enclosure'], elements: walls, across: true },
    frame: 'own',
    directions: ['+z'],
    nearestOnly: true,
    limits: { of: 'from', field: 'height' },
    wanted: panel,
  },
  {
    id: 'card plug to side panel',
    title: '{part}, plug and bend',
    from: cardPlugs,
    to: { kinds: ['enclosure'], elements: walls, across: true },
    frame: 'own',
    directions: ['+z'],
    nearestOnly: true,
    limits: { of: 'from', field: 'height' },
    wanted: leads,
  },
  {
    id: 'card to what lies below',
    title: '{part}, fan side',
    from: cardBody,
    to: { kinds: ['enclosure', ...loose], except: ['standoff', 'foot', 'handle', 'tray', 'card bracket'] },
    frame: 'own',
    directions: ['-y'],
    nearestOnly: true,
    limits: { of: 'from', field: 'thickness' },
    wanted: cardAir,
  },
  {
    id: 'card to fan',
    title: '{part}',
    from: { kinds: ['card'] },
    to: { kinds: ['fan', 'radiator'] },
    frame: 'own',
    directions: ['+y', '+z'],
    reach: WORTH_A_ROW_MM,
    wanted: apart,
  },
];
