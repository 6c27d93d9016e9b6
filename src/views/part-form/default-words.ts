/** Where a default comes from, in words. */
import type { StandingIn } from '../../../geometry';

type Published = StandingIn[string];

/** 'from ATX Specification 2.2, figure 4 (± 0.25)'; practice and memory say that no document stands behind them. */
export function defaultOrigin({ source, confidence, plusMinus }: Published): string {
  const band = plusMinus === undefined ? '' : ` (± ${plusMinus})`;
  if (confidence === 'memory') return `assumed, no source${band}`;
  if (confidence === 'common practice') return `common practice, no source${band}`;
  if (source.document.startsWith('no standard')) return `${source.document}${band}`;
  const place = [source.revision, source.figure].filter(Boolean).join(', ');
  const document = [source.document, place].filter(Boolean).join(' ');
  return `from ${document}${band}`;
}
