/**
 * The band in which a clearance lies whatever pieces one gets.
 *
 * Each face pair wanders as a sum of shares, so its own extremes are exact. The least of the pairs lies between the
 * least of their lower extremes and the least upper extreme of a pair that always faces: exact as long as one pair
 * sets the clearance all through the band, and safe, perhaps a little wide, where another may take over.
 */
import { type Discovery, groupsOf, type LegPair } from './discover';
import { leastOf, mostOf, type Wandering } from './face-pairs';
import type { Band } from './fit-verdict';

/** Sums of shares closer than this are equal, mm. */
const SAME_SHARE_MM = 1e-9;

export interface ClearanceBand {
  readonly band: Band;
  /** Face pairs other than the binding one that may set the clearance somewhere in the band. */
  readonly rivals: readonly LegPair[];
  /** The binding faces may slip past each other. */
  readonly mayPass: boolean;
  /** A dimension moves the gap by unlike amounts up and down. */
  readonly bends: boolean;
}

export function bandOf({ pairs, binding }: Discovery): ClearanceBand {
  const rivals: LegPair[] = [];
  let least = leastOf(binding.gap);
  let most = Number.POSITIVE_INFINITY;
  for (const group of groupsOf(pairs)) {
    const found = group.includes(binding) ? widerThan(binding, group) : nearerThan(binding, group);
    rivals.push(...found);
    if (found.length > 0) least = Math.min(least, leastOfGroup(group));
    if (group.some((pair) => pair.facesAlways)) most = Math.min(most, mostOfGroup(group));
  }
  if (most === Number.POSITIVE_INFINITY) most = Math.max(...pairs.map((pair) => mostOf(pair.gap)));
  return { band: [least, most], rivals, mayPass: !binding.facesAlways, bends: isBent(binding.gap) };
}

/** Of two other boxes: they come nearer than the binding ones only if no direction they always face in forbids it. */
function nearerThan(binding: LegPair, group: readonly LegPair[]): readonly LegPair[] {
  const nearer = group.filter((pair) => leastLead(pair.gap, binding.gap) < -SAME_SHARE_MM);
  return group.some((pair) => pair.facesAlways && !nearer.includes(pair)) ? [] : nearer;
}

/** Of the binding boxes themselves: another direction may come to have more room. */
function widerThan(binding: LegPair, group: readonly LegPair[]): readonly LegPair[] {
  return group.filter((pair) => pair !== binding && leastLead(binding.gap, pair.gap) < -SAME_SHARE_MM);
}

/** The least by which one wandering value exceeds another; what both share cancels. */
function leastLead(a: Wandering, b: Wandering): number {
  let lead = a.standing - b.standing;
  for (let k = 0; k < a.upper.length; k++) {
    const up = (a.upper[k] ?? 0) - (b.upper[k] ?? 0);
    const down = (a.lower[k] ?? 0) - (b.lower[k] ?? 0);
    lead += Math.min(0, up, down);
  }
  return lead;
}

/** Two boxes count with the widest direction they face in: at least with each in which they always do. */
function leastOfGroup(group: readonly LegPair[]): number {
  const always = group.filter((pair) => pair.facesAlways).map((pair) => leastOf(pair.gap));
  return always.length > 0 ? Math.max(...always) : Math.min(...group.map((pair) => leastOf(pair.gap)));
}

function mostOfGroup(group: readonly LegPair[]): number {
  return Math.max(...group.map((pair) => mostOf(pair.gap)));
}

function isBent({ upper, lower }: Wandering): boolean {
  return upper.some((share, index) => Math.abs(share + (lower[index] ?? 0)) > SAME_SHARE_MM);
}
