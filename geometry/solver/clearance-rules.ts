/** The clearances a builder asks for, in the order of the trade. Data only: a new question is a new row. */
import type { Element } from '../parts/body';
import type { PartKind } from '../parts/part-spec';
import { breathingSpace, workingGaps } from '../standards/assembly-practice';
import type { ClearanceRule, WantedGap } from './clearance-rule';
import type { Direction } from './finding';

const all: readonly Direction[] = ['-x', '+x', '-y', '+y', '-z', '+z'];
const walls: readonly Element[] = [
  'side panel',
  'back panel',
  'front wall',
  'rear wall',
  'top wall',
  'floor',
  'vent',
];
/** What is not an enclosure and may stand in a part's way. */
const loose: readonly PartKind[] = [
  'cooler',
  'memory',
  'drive',
  'card',
  'supply',
  'fan',
  'radiator',
  'adapter',
];

/** Neighbours further apart than this are no neighbours: half a 120 mm fan. A matter of taste. */
const WORTH_A_ROW_MM = 60;

const panel: WantedGap = {
  millimetres: workingGaps.coolerToPanel.value[0],
  toGlass: workingGaps.toGlass.value,
  reason: 'panels bow and parts stand a little higher than their sheets say',
  basis: workingGaps.coolerToPanel,
};
const apart: WantedGap = {
  millimetres: workingGaps.betweenParts.value,
  reason: 'so that nothing rattles or has to be forced',
  basis: workingGaps.betweenParts,
};
const tip: WantedGap = {
  millimetres: workingGaps.cardTip.value,
  reason: 'room to swing the card in',
  basis: workingGaps.cardTip,
};
const leads: WantedGap = {
  millimetres: 0,
  reason: 'plug and bend already hold the room the leads need',
};
const cardAir: WantedGap = {
  millimetres: breathingSpace.cardFansInSmallEnclosures.value[0],
  reason: 'air for the fans of the card',
  basis: breathingSpace.cardFansInSmallEnclosures,
};
const rearSide: WantedGap = {
  millimetres: workingGaps.betweenParts.value,
  reason: 'so that nothing presses on the panel',
  basis: workingGaps.betweenParts,
};

const coolerRules: readonly ClearanceRule[] = [
  {
    id: 'cooler to side panel',
    title: '{part}',
    from: { kinds: ['cooler'] },
    to: { kinds: ['enclosure'], elements: walls, across: true },
    frame: 'board',
    directions: ['+z'],
    nearestOnly: true,
    limits: { of: 'from', field: 'height' },
    wanted: panel,
  },
  {
    id: 'cooler to top',
    title: '{part}',
    from: { kinds: ['cooler'] },
    to: { kinds: ['enclosure'], elements: walls, across: true },
    frame: 'board',
    directions: ['-x'],
    nearestOnly: true,
    wanted: apart,
  },
  {
    id: 'cooler to rear wall',
    title: '{part}',
    from: { kinds: ['cooler'] },
    to: { kinds: ['enclosure'], elements: walls, across: true },
    frame: 'board',
    directions: ['-y'],
    nearestOnly: true,
    wanted: apart,
  },
  {
    id: 'cooler to memory',
    title: '{part}',
    from: { kinds: ['cooler'], except: ['tube'] },
    to: { kinds: ['memory'] },
    frame: 'board',
    directions: ['-z', '-x', '+x', '-y', '+y'],
    reach: WORTH_A_ROW_MM,
    limits: { of: 'to', field: 'height' },
    wanted: apart,
  },
  {
    id: 'cooler to board',
    title: '{part}',
    from: { kinds: ['cooler'] },
    to: { kinds: ['board'], elements: ['regulator sink', 'rear connectors', 'm2 sink', 'memory slot'] },
    frame: 'board',
    directions: ['-z', '-x', '+x', '-y', '+y'],
    seatedToo: true,
    reach: WORTH_A_ROW_MM,
    wanted: apart,
  },
  {
    id: 'cooler to other parts',
    title: '{part}',
    from: { kinds: ['cooler'] },
    to: { kinds: ['fan', 'radiator', 'supply', 'adapter'] },
    frame: 'board',
    directions: all,
    reach: WORTH_A_ROW_MM,
    wanted: apart,
  },
  {
    id: 'cooler to card',
    title: '{part}',
    from: { kinds: ['cooler'] },
    to: { kinds: ['card'] },
    frame: 'board',
    directions: ['+x', '-x', '+z'],
    reach: WORTH_A_ROW_MM,
    wanted: apart,
  },
];

const cardBody: ClearanceRule['from'] = { kinds: ['card'], except: ['card bracket'] };
const cardPlugs: ClearanceRule['from'] = {
  kinds: ['card'],
  roles: ['plug space', 'bend space'],
  standsOut: true,
};

const cardRules: readonly ClearanceRule[] = [
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

const stackRules: readonly ClearanceRule[] = [
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

const supplyPlugs: ClearanceRule['from'] = {
  kinds: ['supply'],
  roles: ['plug space', 'bend space'],
  standsOut: true,
};

const supplyRules: readonly ClearanceRule[] = [
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

const driveRules: readonly ClearanceRule[] = [
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

export const clearanceRules: readonly ClearanceRule[] = [
  ...coolerRules,
  ...cardRules,
  ...stackRules,
  ...supplyRules,
  ...driveRules,
];
