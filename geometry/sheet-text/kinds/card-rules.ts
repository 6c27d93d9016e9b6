import { field, type KindRules, massRule } from '../figure-rules';

export const cardRules: KindRules = {
  own: ['card'],
  figures: [
    field('length', 'length', ['length'], ['max', 'size', 'without bracket'], 'length of the card'),
    field('length', 'length', ['length', 'with bracket'], ['max'], 'length with the bracket', {
      ask: 'This length includes the bracket. Is it the length from the bracket’s inner face to the tip?',
      yieldsToAny: true,
    }),
    field('height', 'length', ['height', 'with plugs'], ['max'], 'height with the plug', {
      ask: 'This height includes the plug. Is it the height of the card itself?',
      yieldsToAny: true,
    }),
    field('length', 'length', ['length', 'with plugs'], ['max'], 'length with the plug', {
      ask: 'This length includes the plug. Is it the length of the card itself?',
      yieldsToAny: true,
    }),
    field(
      ['height', 'thickness'],
      'length',
      ['height'],
      ['max', 'size'],
      'height, as large as only one side of a card is',
    ),
    field(
      ['height', 'thickness'],
      'length',
      ['width'],
      ['max', 'size', 'slot'],
      'width, as large as only one side of a card is',
    ),
    field('thickness', 'length', ['thickness'], ['max', 'size', 'slot'], 'thickness of the card'),
    field('thickness', 'length', ['slot'], [], 'size given beside the number of slots'),
    field('sustained', 'power', ['design power'], ['max', 'load', 'power'], 'board power'),
    field('sustained', 'power', ['power'], ['load'], 'power the card draws'),
    field(['sustained', 'peak'], 'power', ['power', 'max'], ['load'], 'highest power the card draws', {
      ask: 'Is this the highest power it draws for long, or a short peak?',
    }),
    field('peak', 'power', ['power', 'peak'], ['max', 'load'], 'peak power'),
    field('fans.count', 'count', ['fan'], ['count'], 'number of fans'),
    field('fans.diameter', 'length', ['fan'], ['size', 'diameter'], 'diameter of the fans'),
    field('sound', 'sound', [], ['noise', 'max', 'load', 'fan'], 'sound level'),
    field('limit', 'temperature', ['temperature', 'max'], [], 'highest temperature'),
    massRule,
  ],
};
