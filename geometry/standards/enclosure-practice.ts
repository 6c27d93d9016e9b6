/** How enclosures are commonly made where no document gives a size, mm. */
import { commonPractice, fromMemory } from './cited-documents';

/** Rim of sheet left round the face of a supply: the screws of every form stand within it. */
export const supplyOpeningRim = commonPractice(10, {
  note: 'the holes lie at most 6 mm inside the edge of the face',
});

/** Across the flats of a board standoff. */
export const standoffWidth = fromMemory(5.5, { note: 'hexagonal, 5 to 6' });

/** Free sheet round the tongue of a card bracket in its well. */
export const tongueWellClearance = commonPractice(1);

/** Opening above the flange a card bracket is screwed to. */
export const bracketWingGap = {
  height: commonPractice(6, { note: 'wing and screw head' }),
  side: commonPractice(1.5, { note: 'past the wings of the outermost brackets' }),
} as const;

/** Depth of the bar of a carrying handle, and how much of its height stays open for the hand. */
export const handleBarThickness = fromMemory(12);
