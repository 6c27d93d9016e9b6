import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { briefSchema, readPlan } from '../../../geometry';
import { briefValue, textOf } from '../../../src/views/brief/brief-text';

const read = readPlan(readFileSync('public/plans/demo.json', 'utf8'));
if (!read.ok) throw new Error('the demo plan cannot be read');
const { plan } = read;

test('a brief that is opened and saved untouched is what it was, whatever it holds', () => {
  const brief = {
    ...plan.brief,
    altitude: 1200,
    mains: 115 as const,
    carried: 'weekly' as const,
    mustGoInto: { name: 'cabin bag', length: 550, height: 400, width: 200, upright: true },
  };
  expect(briefSchema.parse(briefValue(textOf({ ...plan, brief })))).toEqual(brief);
});

test('a place without a size is refused by the name of the field', () => {
  const parsed = briefSchema.safeParse(briefValue({ ...textOf(plan), placeName: 'bag', placeLength: '500' }));
  expect(parsed.success).toBe(false);
});
