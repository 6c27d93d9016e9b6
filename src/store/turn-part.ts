/** Turning a part by the next quarter that its place allows. */
import { compose, freePart, isSeated, movePart, type Plan, rotationAbout, type Scene } from '../../geometry';
import type { StandardView } from './view-store';

/** The axis that points at the eye; the drawing in perspective turns about the vertical. */
const TURN_AXIS: Readonly<Record<StandardView, 'x' | 'y' | 'z'>> = {
  'three-quarter': 'y',
  side: 'z',
  back: 'z',
  front: 'x',
  rear: 'x',
  top: 'y',
  floor: 'y',
};

/**
 * A seated part takes the mount's next allowed turn; a free one turns 90 degrees about the world axis that faces the
 * eye, with its origin where it was. Undefined when the mount allows no other turn.
 */
export function turnPart(plan: Plan, scene: Scene, id: string, view: StandardView): Plan | undefined {
  const part = plan.parts[id];
  const placed = scene.parts[scene.indexById.get(id) ?? -1];
  if (!part || !placed) return undefined;
  const { placement } = part;
  if (!isSeated(placement)) {
    const turn = { rotation: rotationAbout(TURN_AXIS[view], 90), translation: [0, 0, 0] as const };
    const { rotation } = compose(turn, placed.pose);
    return freePart(plan, id, { rotation, translation: placed.pose.translation });
  }
  const carrier = scene.parts[scene.indexById.get(placement.on) ?? -1];
  const turns = carrier?.model.mounts.find((mount) => mount.id === placement.mount)?.turns ?? [0];
  const at = turns.indexOf(placement.turn ?? 0);
  const next = turns[(at + 1) % turns.length];
  if (next === undefined || next === (placement.turn ?? 0)) return undefined;
  const { turn: _, ...seat } = placement;
  return movePart(plan, id, next === 0 ? seat : { ...seat, turn: next });
}
