/** A stack-up as a sum: what each dimension adds to the gap or takes from it, and what the rest comes to. */
import type { StackUp, StackUpTerm } from '../../../geometry';
import { formatMillimetres } from '../../ui/numbers';

/** Sensitivities this close to 1 are 1: the gap follows the dimension. */
const WHOLE = 1e-3;
/** A rest below this is none, mm: the sum is shown to a tenth. */
const NO_REST_MM = 0.05;

/** '+ 172.0', '− 6.5', '− ½ × 128.0', '+ 0.71 × 40.0'. */
export function summand({ sensitivity, nominal }: StackUpTerm): string {
  const takes = sensitivity * nominal < 0;
  const size = formatMillimetres(Math.abs(nominal));
  const share = Math.abs(sensitivity);
  const sign = takes ? '−' : '+';
  if (Math.abs(share - 1) < WHOLE) return `${sign} ${size}`;
  if (Math.abs(share - 0.5) < WHOLE) return `${sign} ½ × ${size}`;
  return `${sign} ${share.toFixed(2)} × ${size}`;
}

/** What stands on the sheets without any tolerance that matters here, mm; undefined when there is nothing of it. */
export function restOf({ nominal, terms }: StackUp): number | undefined {
  const rest = nominal - terms.reduce((sum, term) => sum + term.sensitivity * term.nominal, 0);
  return Math.abs(rest) < NO_REST_MM ? undefined : rest;
}

/** '+ 16.2' or '− 181.8'. */
export function signed(millimetres: number): string {
  return `${millimetres < 0 ? '−' : '+'} ${formatMillimetres(Math.abs(millimetres))}`;
}

/** 'sheet', 'sheet, ± by default', 'published, sheet is silent'. */
export function sourceWords({ source, isDefault, isStated }: StackUpTerm): string {
  const band = isDefault ? ', ± by default' : '';
  if (isStated) return `${source}${band}`;
  return source === 'standard' ? `published, sheet is silent${band}` : `${source}, sheet is silent${band}`;
}

/** 'Cooler, height'; 'Board, M.2 sockets upper, sink height' keeps its capital. */
export function dimensionName({ partLabel, title }: Pick<StackUpTerm, 'partLabel' | 'title'>): string {
  const lowered = /^[A-Z][a-z]/.test(title) ? title.charAt(0).toLowerCase() + title.slice(1) : title;
  return `${partLabel}, ${lowered}`;
}
