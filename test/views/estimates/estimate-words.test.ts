import { describe, expect, test } from 'vitest';
import type { Estimate, TopicEstimates, WishRow } from '../../../geometry';
import {
  bandText,
  effectText,
  inputText,
  missingPlugs,
  outsideWords,
  topicLine,
  valueText,
  wishesLine,
} from '../../../src/views/estimates/estimate-words';

const figure: Estimate = {
  id: 'air drawn in',
  topic: 'air',
  title: 'Air drawn from the room',
  unit: 'm³/h',
  value: 84.4,
  low: 70.2,
  high: 99.6,
  missing: [],
  formula: '',
  inputs: [],
  assumptions: [],
  standing: 'no limit',
  sentence: '',
};

function without(value: Estimate): Estimate {
  const { value: _value, low: _low, high: _high, ...rest } = value;
  return { ...rest, unknown: 'unknown, because the plan has no enclosure' };
}

const topicsWhere = (air: Estimate) => {
  const empty = (topic: TopicEstimates['topic']): TopicEstimates => ({ topic, answer: '', estimates: [] });
  return {
    power: empty('power'),
    air: { ...empty('air'), estimates: [air] },
    heat: empty('heat'),
    sound: empty('sound'),
    mass: empty('mass'),
    money: empty('money'),
  };
};

describe('what lies outside its limit', () => {
  test('is named beside the answer of its topic, and nothing else is', () => {
    const late: Estimate = { ...figure, title: 'Days left of the quote', standing: 'not met' };
    const near: Estimate = { ...figure, title: 'Total', standing: 'perhaps' };
    expect(outsideWords([figure, near])).toBe('');
    expect(outsideWords([near, late])).toBe(' Outside its limit: Days left of the quote.');
    expect(outsideWords([late, { ...late, title: 'Total' }])).toBe(
      ' Outside their limits: Days left of the quote; Total.',
    );
  });
});

describe('a figure in words', () => {
  test('stands with its unit and its band, and is called an estimate', () => {
    expect(valueText(figure, '')).toBe('84 m³/h');
    expect(bandText(figure, '')).toBe('70 to 100 m³/h, an estimate');
  });

  test('is called an estimate even where nothing assumed moves it', () => {
    expect(bandText({ ...figure, low: 84.4, high: 84.4 }, '')).toBe('an estimate');
  });

  test('takes the currency of the brief, and no unit of its own, for money', () => {
    const money: Estimate = { ...figure, unit: 'money', value: 900, low: 900, high: 900 };
    expect(valueText(money, 'EUR')).toBe('900 EUR');
    expect(valueText(money, '')).toBe('900');
  });

  test('is unknown without a value, never zero', () => {
    expect(valueText(without(figure), '')).toBe('unknown');
    expect(bandText(without(figure), '')).toBe('');
  });

  test('says where an input comes from and which way an assumption moves it', () => {
    const room = { name: 'room', value: 24, unit: '°C', source: 'brief' } as const;
    expect(inputText(room, '')).toBe('room: 24 °C, from the brief');
    const effect = { id: 'roomTemperature', words: '', source: '', atLow: -3.2, atHigh: 4.1 } as const;
    expect(effectText(effect, 'K', '')).toBe('at its lowest \u22123.2 K, at its highest +4.1 K');
  });
});

describe('the line of a topic', () => {
  test('of heat gives the reason that keeps the air from being known', () => {
    const topics = topicsWhere(without(figure));
    expect(topicLine(topics.heat, topics)).toBe('Unknown, because the plan has no enclosure.');
  });

  test('says that it is an estimate, once', () => {
    const topics = topicsWhere(figure);
    const line = (answer: string) => topicLine({ ...topics.money, answer }, topics);
    expect(line('Total: 2414.')).toBe('Total: 2414. An estimate.');
    expect(line('Mass: 10.6 kg, an estimate.')).toBe('Mass: 10.6 kg, an estimate.');
    expect(line('Total: unknown, because no price is stated.')).not.toContain('estimate');
  });

  test('is never blank', () => {
    const topics = topicsWhere(figure);
    expect(topicLine(topics.money, topics)).toMatch(/^Unknown, because/);
  });
});

describe('missing plugs', () => {
  const plug = (missing: number) => ({
    type: 'card 16-pin' as const,
    wanted: [],
    offered: 0,
    standsIn: 0,
    missing,
  });

  test('are told by number and name, and not at all when none is missing', () => {
    expect(missingPlugs([plug(0)])).toBe('');
    expect(missingPlugs([plug(1)])).toBe(' Missing: 1 card 16-pin plug.');
    expect(missingPlugs([plug(2)])).toBe(' Missing: 2 card 16-pin plugs.');
  });
});

describe('the line of the wishes', () => {
  const wish = (standing: WishRow['standing'], id: number): WishRow => ({
    id: `${id}`,
    wish: '',
    standing,
    says: '',
  });

  test('counts them by how they stand', () => {
    const wishes = (['met', 'met', 'unknown'] as const).map(wish);
    expect(wishesLine(wishes)).toBe('2 met, 0 not met, 1 unknown, by estimate.');
    expect(wishesLine([...wishes, wish('perhaps', 4)])).toContain('1 perhaps');
  });

  test('says when nothing is wished', () => {
    expect(wishesLine([])).toMatch(/asks for nothing/);
  });
});
