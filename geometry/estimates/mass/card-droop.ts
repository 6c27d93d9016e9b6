/** How far the tip of a card sinks under its own weight, mm: what a clearance below it must be able to take. */
import { nominal } from '../../parts/dimension';
import type { PlacedPart, Scene } from '../../plan/scene';
import { rotateVector, transposeRotation } from '../../space/rotation';
import { FREE_FALL } from '../../standards/standard-atmosphere';
import type { AssumptionValues } from '../assumptions';
import { cantileverDroop, PROP_SHARE, proppedSag, stripMoment } from './cantilever';
import { partMasses } from './masses';

export interface CardDroop {
  readonly card: PlacedPart;
  /** At the tip, downwards, mm. */
  readonly free: number;
  /** Largest sag between slot and a prop under the tip, mm. */
  readonly propped: number;
  /** Load on that prop, N. */
  readonly propLoad: number;
  /** Length beyond the slot, mm, and the load on it, N. */
  readonly overhang: number;
  readonly load: number;
}

/** Moduli, N/mm2; from memory: aluminium. */
const ALUMINIUM = 69_000;

/** Thickness of a card's circuit board, mm: CEM 3.0. */
const BOARD_THICKNESS = 1.57;

export function cardDroops(scene: Scene, values: AssumptionValues): readonly CardDroop[] {
  const masses = partMasses(scene, values);
  return scene.parts.flatMap((part) => {
    const mass = masses.find((one) => one.part === part);
    return mass ? (droopOf(part, mass.grams, values) ?? []) : [];
  });
}

function droopOf(card: PlacedPart, grams: number, values: AssumptionValues): CardDroop | undefined {
  const { spec } = card;
  if (spec.kind !== 'card') return undefined;
  const fingers = card.model.boxes.find(({ name }) => name === 'contact fingers');
  if (!fingers) return undefined;
  const length = nominal(spec.length);
  const overhang = Math.max(length - (fingers.box.centre[0] + fingers.box.half[0]), 0);
  // Only the pull across the circuit board bends it; a card that hangs or stands on edge does not droop.
  const down = rotateVector(transposeRotation(card.pose.rotation), [0, -1, 0]);
  const across = Math.abs(down[1]);
  const load = (grams / 1000) * FREE_FALL * across * (overhang / length);
  const height = nominal(spec.height);
  const boardHeight = spec.boardHeight === undefined ? Math.min(height, 111.15) : nominal(spec.boardHeight);
  const plated = spec.backplate === undefined || nominal(spec.backplate) > 1;
  const stiffness =
    values.boardStiffness * stripMoment(boardHeight, BOARD_THICKNESS) +
    (plated ? ALUMINIUM * stripMoment(height, values.plateThickness) : 0);
  const bracketTurn = values.bracketYield * ((load * overhang) / 2 / 1000);
  return {
    card,
    free: cantileverDroop(load, overhang, stiffness) + bracketTurn * overhang,
    propped: proppedSag(load, overhang, stiffness),
    propLoad: load * PROP_SHARE,
    overhang,
    load,
  };
}
