/** Which screws hold what, and how tight. Makers' own figures prevail everywhere. */
import { commonPractice, fromMemory } from './cited-documents';
import { driveForms } from './drives';
import type { Published } from './published';
import { atxSupplyDetails } from './supply-forms';

export type ScrewUse =
  | 'board'
  | 'supply'
  | 'supply plate'
  | 'fan'
  | 'radiator'
  | 'drive 2.5'
  | 'drive 3.5'
  | 'M.2 drive'
  | 'M.2 sink'
  | 'card bracket'
  | 'cooler'
  | 'riser';

/** Thread of the screws of a use. Two threads in one box look alike: never force one. */
export const screwThreads: Readonly<Record<ScrewUse, Published<string>>> = {
  board: fromMemory('6-32 UNC or M3, by the standoffs', { note: 'the two must not be mixed' }),
  supply: atxSupplyDetails.screw,
  'supply plate': atxSupplyDetails.screw,
  fan: fromMemory('self-tapping fan screw, 5 x 10'),
  radiator: fromMemory('M3 or 6-32 UNC, by the maker'),
  'drive 2.5': driveForms['2.5 in'].thread,
  'drive 3.5': driveForms['3.5 in'].thread,
  'M.2 drive': fromMemory('M2 x 3'),
  'M.2 sink': fromMemory('M2 or M2.5'),
  'card bracket': fromMemory('6-32 UNC'),
  cooler: fromMemory('captive, by the maker'),
  riser: fromMemory('M3'),
};

/** How tight, in words that fit every sheet. */
export const tightness = {
  boardScrews: commonPractice('finger-tight, then at most a quarter turn'),
  coolerScrews: commonPractice('alternately, a few turns at a time, to the stop or the maker’s figure'),
} as const;

/** Inset of the two screws of an M.2 sink from its ends, mm. */
export const sinkScrewInset = fromMemory(4);
