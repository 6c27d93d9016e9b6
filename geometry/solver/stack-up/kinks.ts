/** Where a clearance is no plain sum of its dimensions, in words. */
import type { FaceRef } from '../finding';
import { atStart, within } from '../part-names';
import type { ClearanceBand } from './band';
import type { Discovery, LegPair } from './discover';
import { facesOfPair, namesOfPair, numbersOfPair } from './pair-faces';
import { type PlanStudy, partAt } from './plan-study';

export interface Kink {
  /** Another pair of faces may set the gap; the binding faces may slip past each other; a dimension bends the sum. */
  readonly kind: 'another face' | 'slips past' | 'bends';
  readonly faces: readonly FaceRef[];
  readonly sentence: string;
}

/** More rivals than this are not told apart. */
const MOST_RIVALS_NAMED = 4;

export function kinksOf(study: PlanStudy, discovery: Discovery, band: ClearanceBand): readonly Kink[] {
  const { binding } = discovery;
  const [from, to] = namesOfPair(study, binding);
  const kinks: Kink[] = nearestOfEachFace(study, band.rivals)
    .slice(0, MOST_RIVALS_NAMED)
    .map(({ faces, names: [first, second] }) => ({
      kind: 'another face',
      faces,
      sentence:
        first.text === from.text && second.text === to.text
          ? `Depending on the pieces, other faces of ${within(first)} and ${within(second)} set the gap.`
          : `Depending on the pieces, the gap is set between ${within(first)} and ${within(second)}.`,
    }));
  if (band.mayPass)
    kinks.push({
      kind: 'slips past',
      faces: facesOfPair(study, binding),
      sentence: `Depending on the pieces, ${within(from)} slips past ${within(to)}.`,
    });
  if (band.bends || isRebuilt(study, discovery))
    kinks.push({
      kind: 'bends',
      faces: facesOfPair(study, binding),
      sentence: `${atStart(from)} or ${within(to)} does not follow its dimensions evenly.`,
    });
  return kinks;
}

/** One of the binding boxes is not there any more somewhere in a band: the part is built another way there. */
function isRebuilt(study: PlanStudy, { variations, binding }: Discovery): boolean {
  const { leg } = binding;
  const [from = -1, to = -1] = numbersOfPair(binding);
  return variations.some(({ part, upper, lower }) => {
    if (part !== leg.from && part !== leg.to) return false;
    const local = (part === leg.from ? from : to) - partAt(study, part).placed.firstBox;
    return [upper, lower].some(({ boxes }) => boxes.has(local) && boxes.get(local) === undefined);
  });
}

/** Rivals told apart by what a person would call them; pieces of one wall are one wall. */
function nearestOfEachFace(study: PlanStudy, rivals: readonly LegPair[]) {
  const nearest = [...rivals].sort((a, b) => a.gap.standing - b.gap.standing);
  const named = new Map<string, { faces: readonly FaceRef[]; names: ReturnType<typeof namesOfPair> }>();
  for (const pair of nearest) {
    const names = namesOfPair(study, pair);
    const key = `${names[0].text}/${names[1].text}`;
    if (!named.has(key)) named.set(key, { faces: facesOfPair(study, pair), names });
  }
  return [...named.values()];
}
