/** A wanted gap in words. */
import type { WantedGapSetting } from '../../../geometry';
import { formatMillimetres } from '../../ui/numbers';

/** 'Cooler to side panel'. */
export function pairWords(rule: string): string {
  return rule.charAt(0).toUpperCase() + rule.slice(1);
}

/** '10.0 mm; without fan 1.0 mm', '3.0 mm; to glass 5.0 mm'. */
export function defaultWords({ byDefault, toGlass, without }: WantedGapSetting): string {
  const glass = toGlass === undefined ? '' : `; to glass ${formatMillimetres(toGlass)} mm`;
  const lacking = without ? `; without ${without.piece} ${formatMillimetres(without.millimetres)} mm` : '';
  return `${formatMillimetres(byDefault)} mm${glass}${lacking}:`;
}

/** 'panels bow and parts stand a little higher than their sheets say (common practice, no source)'. */
export function reasonWords({ reason, source }: WantedGapSetting): string {
  return source === undefined ? reason : `${reason} (${source})`;
}
