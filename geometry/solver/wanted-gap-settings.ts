/** The wanted gaps a person can set, by kind of pair, each with its default and what that rests on. */
import type { PartKind } from '../parts/part-spec';
import { clearanceRules } from './clearance-rules';

export interface WantedGapSetting {
  /** Key in the plan's `gaps`: 'cooler to side panel'. */
  readonly rule: string;
  /** Kind of the part it is about. */
  readonly kind: PartKind;
  /** What holds unless the plan says otherwise, mm. */
  readonly byDefault: number;
  /** By default, to glass, where it differs. */
  readonly toGlass?: number;
  /** By default, for a part without any such piece. */
  readonly without?: { readonly piece: string; readonly millimetres: number };
  readonly reason: string;
  /** The document the default rests on; absent for a gap of nothing. */
  readonly source?: string;
}

/** In the order of the trade. */
export function wantedGapSettings(): readonly WantedGapSetting[] {
  return clearanceRules.flatMap(({ id, from, wanted }) => {
    const [kind] = from.kinds;
    if (!kind) return [];
    const { millimetres, toGlass, lacking, reason, basis } = wanted;
    return {
      rule: id,
      kind,
      byDefault: millimetres,
      ...(toGlass === undefined || toGlass === millimetres ? {} : { toGlass }),
      ...(lacking ? { without: { piece: lacking.element, millimetres: lacking.millimetres } } : {}),
      reason,
      ...(basis ? { source: basis.source.document } : {}),
    };
  });
}
