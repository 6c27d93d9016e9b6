/** Boards and enclosures: what they offer to other parts. */
import { field, ignored, type KindRules, massRule } from '../figure-rules';
import type { Atom } from '../words/atoms';

export const boardRules: KindRules = {
  own: ['board'],
  figures: [massRule],
};

const atMost: readonly Atom[] = ['max', 'clearance', 'cooler', 'processor'];
const sink: readonly Atom[] = ['max', 'clearance', 'processor'];
const along: readonly Atom[] = ['max', 'clearance', 'length'];

export const enclosureRules: KindRules = {
  own: ['enclosure'],
  figures: [
    ignored(['radiator'], undefined, 'a radiator it takes; its rail has to be measured'),
    field('limits.coolerHeight', 'length', ['cooler', 'height'], atMost, 'highest cooler'),
    field('limits.coolerHeight', 'length', ['heatsink', 'height'], sink, 'highest cooler'),
    field('limits.coolerHeight', 'length', ['cooler', 'clearance'], atMost, 'room for the cooler'),
    field('limits.coolerHeight', 'length', ['cooler', 'max'], atMost, 'highest cooler'),
    field(
      'limits.cardLengthWithFrontFan',
      'length',
      ['card', 'with front fan'],
      along,
      'longest card, front fan in place',
    ),
    field('limits.cardLength', 'length', ['card', 'length'], [...along, 'without front fan'], 'longest card'),
    field(
      'limits.cardLength',
      'length',
      ['card', 'clearance'],
      along,
      'room for the card: no other side of a card is as long',
    ),
    field(
      'limits.cardLength',
      'length',
      ['card', 'max'],
      ['clearance'],
      'room for the card: no other side of a card is as long',
    ),
    field('limits.supplyDepth', 'length', ['supply', 'length'], along, 'longest supply'),
    field('limits.supplyDepth', 'length', ['supply', 'depth'], along, 'deepest supply'),
    field(
      'limits.supplyDepth',
      'length',
      ['supply', 'clearance'],
      along,
      'room for the supply: no other side of it is as long',
    ),
    field('limits.supplyDepth', 'length', ['supply', 'max'], along, 'longest supply'),
    field(
      'interior.behindTray',
      'length',
      ['behind'],
      ['tray', 'clearance', 'board', 'max', 'depth'],
      'room behind the tray',
    ),
    field('board.slots', 'count', ['slot'], ['count'], 'slot openings'),
    massRule,
  ],
};
