/** What a maker promises about an enclosure, as the panel that rebuilds it from its limits takes it. */
import type { ReadValue } from '../../../geometry';
import type { FilledValue } from '../part-form/fill-draft';
import { phraseOf } from './filled-values';

const LIMITS: Readonly<Record<string, string>> = {
  'limits.coolerHeight': 'coolerHeight',
  'limits.cardLength': 'cardLength',
  'limits.supplyDepth': 'supplyLength',
  'limits.outerLength': 'outerLength',
  'limits.outerHeight': 'outerHeight',
  'limits.outerWidth': 'outerWidth',
  'interior.behindTray': 'behindTray',
  'board.slots': 'slots',
};

/** Thickness of a usual front fan, mm: sheets say that it is there, not how thick it is. Common practice, no source. */
const USUAL_FAN_MM = 25;

export function limitsRead(read: readonly ReadValue[], text: string): readonly FilledValue[] {
  const at = (path: string) => read.find((one) => one.path === path);
  const withFan = at('limits.cardLengthWithFrontFan');
  const filled = read.flatMap((one): readonly FilledValue[] => {
    const path = LIMITS[one.path];
    return path === undefined ? [] : [filledFrom(one, path, text)];
  });
  if (!withFan || at('limits.cardLength')) return filled;
  return [
    ...filled,
    filledFrom(withFan, 'cardLength', text),
    {
      path: 'frontFan',
      value: USUAL_FAN_MM,
      source: 'assumed',
      note: 'a usual fan; its thickness is not on the sheet',
    },
  ];
}

function filledFrom({ value, plusMinus, span }: ReadValue, path: string, text: string): FilledValue {
  return { path, value, plusMinus, source: 'sheet', note: phraseOf(text, span) };
}
