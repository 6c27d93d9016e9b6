/** The clearances a builder asks for, in the order of the trade. Data only: a new question is a new row. */
import type { ClearanceRule } from './clearance-rule';
import { cardRules } from './rules/card-rules';
import { coolerRules } from './rules/cooler-rules';
import { driveRules } from './rules/drive-rules';
import { stackRules } from './rules/radiator-rules';
import { supplyRules } from './rules/supply-rules';

export const clearanceRules: readonly ClearanceRule[] = [
  ...coolerRules,
  ...cardRules,
  ...stackRules,
  ...supplyRules,
  ...driveRules,
];
