/** Where a riser holds the card behind the board, and what the limits of that card say about walls. */
import { enclosureSheets } from '../../standards/assembly-practice';
import { keyNotchY } from '../../standards/expansion-slots';
import { rearPanelInnerFaceY } from '../../standards/rear-aperture';
import type { EnclosureSpec } from '../enclosure/fields';
import { behindRiserCard, belowRiser, SEAT_BEHIND_TRAY_MM } from './board-walls';
import type { PublishedLimits } from './limits';
import { asDimension, assumed, type Reckoned } from './reckoning';

/** Finger tips below the top wall: cable, plug and socket of the riser. Usual in such enclosures, no source. */
const socketBelowTop = assumed(20, 5, 'riser under the top');

export interface RiserPlace {
  readonly riser: EnclosureSpec['riser'];
  /** Inner height, where the height of the card says it. */
  readonly height: Reckoned | undefined;
  /** Rear face of the tray to the back panel, where the thickness of the card says it. */
  readonly behind: Reckoned | undefined;
}

/** Undefined for layouts without a riser. */
export function riserPlace(limits: PublishedLimits): RiserPlace | undefined {
  if (limits.layout !== 'card behind the board on a riser') return undefined;
  const { cardHeight, cardThickness, slots } = limits;
  return {
    riser: {
      face: 'top',
      at: [
        keyNotchY.value - rearPanelInnerFaceY.value,
        -enclosureSheets.structuralPlate.value - SEAT_BEHIND_TRAY_MM,
      ],
      inset: asDimension(socketBelowTop),
      slots: Math.min(4, Math.max(1, slots)),
    },
    height: cardHeight === undefined ? undefined : belowRiser(cardHeight, socketBelowTop),
    behind: cardThickness === undefined ? undefined : behindRiserCard(cardThickness),
  };
}
