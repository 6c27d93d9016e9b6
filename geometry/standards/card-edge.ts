/** The contact tongue of a card's edge connector along the card, mm from the key-notch centre. */
import { cardElectromechanical, fromMemory, ssiElectronicsBay } from './cited-documents';
import { type SlotWidth, slotConnectors } from './expansion-slots';
import { citing, type Range } from './published';

export const cardEdge = {
  keyToFirstContact: citing(ssiElectronicsBay)(11.65, 'primary', 'figure 2', {
    note: 'toward the bracket; 11 contacts of 1.00 mm pitch and 0.65',
  }),
  contactPitch: fromMemory(1),
  lastContactToFarPost: fromMemory(1.8, { note: 'x1: 18 contacts a side put the last 7.35 past the key' }),
} as const;

/** Extent of the tongue along the card from the key-notch centre, away from the bracket positive. */
export function contactTongue(width: SlotWidth) {
  const half = cardEdge.contactPitch.value / 2;
  return citing(cardElectromechanical)<Range>(
    [
      -cardEdge.keyToFirstContact.value - half,
      slotConnectors[width].keyToFarPost.value - cardEdge.lastContactToFarPost.value + half,
    ],
    'derived',
    'figure 6-1',
    { note: 'contacts and half a pitch at each end' },
  );
}

/** Depth of the layer the fans of a card take, from the face of the shroud. */
export const cardFanDepth = fromMemory(12, { note: 'slim fans of graphics cards are 10 to 15 thick' });
