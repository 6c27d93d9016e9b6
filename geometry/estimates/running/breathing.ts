/** Who breathes whose exhaust: what every source adds to the air at every intake, K. Exact, for the model is linear. */
import { risesOf } from '../air/carry-heat';
import { heatsByNode, intakeRise } from '../heat/heat-in-place';
import type { Run } from './run';

export interface Breath {
  /** Device that draws the air, and its part. */
  readonly device: string;
  readonly part: string;
  readonly label: string;
  /** Whole rise above the room, K. */
  readonly rise: number;
  /** What air blown out beside the intakes brings back in, K. */
  readonly fromRoom: number;
  /** Share of the rise by source, the largest first. Its own heat counts too: that is re-breathing. */
  readonly from: readonly { readonly part: string; readonly label: string; readonly kelvins: number }[];
}

/** Additions smaller than this are left out, K. */
const WORTH_NAMING = 0.05;

export function breathsOf({ question, state }: Run): readonly Breath[] {
  const { scene, air, heats } = question;
  const sources = [...heats.keys()].map((id) => ({
    id,
    label: scene.parts.find((part) => part.id === id)?.label ?? id,
    rises: risesOf(state.carrier, heatsByNode(question, state.network, id)),
  }));
  return air.devices.map((device) => ({
    device: device.id,
    part: device.part.id,
    label: device.label,
    rise: intakeRise(state, device),
    fromRoom: state.drawnInRise,
    from: sources
      .map(({ id, label, rises }) => ({
        part: id,
        label,
        kelvins: intakeRise({ ...state, rises, drawnInRise: 0 }, device),
      }))
      .filter(({ kelvins }) => kelvins > WORTH_NAMING)
      .sort((a, b) => b.kelvins - a.kelvins),
  }));
}
