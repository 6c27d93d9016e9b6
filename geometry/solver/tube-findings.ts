/** Whether the tubes of a liquid cooler reach from its block to its radiator. */
import { nominal } from '../parts/dimension';
import { boundsOfBoxes } from '../space/oriented-box';
import { transformPoint } from '../space/transform';
import { distance, type Vector3 } from '../space/vector';
import type { ExaminedPart } from './examined-part';
import type { Finding } from './finding';
import { within } from './part-names';

/** Tubes are wanted longer than the straight line by this share: they leave square to both fittings and bend. */
const SLACK_SHARE = 0.1;

/**
 * Compares the straight line between the fittings with the free length of the tubes, for a plan with one liquid block
 * and one radiator; with more of either, which belong together is not known. A tube shorter than the straight line
 * cannot reach; one hardly longer cannot bend.
 */
export function tubeFindings(parts: readonly ExaminedPart[]): readonly Finding[] {
  const blocks = parts.filter(
    ({ placed: { spec } }) => spec.kind === 'cooler' && spec.style === 'liquid block',
  );
  const radiators = parts.filter((part) => part.placed.kind === 'radiator');
  const [block] = blocks;
  const [radiator] = radiators;
  if (!block || !radiator || blocks.length > 1 || radiators.length > 1) return [];
  const { spec } = block.placed;
  if (spec.kind !== 'cooler' || spec.style !== 'liquid block') return [];
  const from = fittingsOf(block);
  const to = fittingsOf(radiator);
  if (!from || !to) return [];
  const straight = distance(from, to);
  const tube = nominal(spec.tubes.length);
  const slack = tube - straight;
  if (slack >= SLACK_SHARE * straight) return [];
  return [
    {
      id: `tubes/${block.placed.id}/${radiator.placed.id}`,
      kind: 'tubes',
      weight: slack < 0 ? 'fault' : 'caution',
      parts: [block.placed.id, radiator.placed.id],
      faces: [],
      millimetres: slack,
      overlaps: [],
      sentence: sayTubes(radiator, straight, tube, slack),
      waysOut: [],
    },
  ];
}

function sayTubes(radiator: ExaminedPart, straight: number, tube: number, slack: number): string {
  const way = `it is ${straight.toFixed(1)} mm to the fittings of ${within(radiator.name)}`;
  return slack < 0
    ? `The tubes, ${tube.toFixed(1)} mm long, do not reach: ${way}.`
    : `The tubes, ${tube.toFixed(1)} mm long, have hardly room to bend: ${way} in a straight line.`;
}

/** Middle of the outer ends of the tube fittings, in the world; undefined for a part drawn without fittings. */
function fittingsOf(part: ExaminedPart): Vector3 | undefined {
  const { boxes } = part.placed.model;
  const bounds = boundsOfBoxes(
    boxes.filter((body) => body.role === 'solid' && body.element === 'tube').map((body) => body.box),
  );
  const body = boundsOfBoxes(
    boxes.filter((box) => box.role === 'solid' && box.element !== 'tube').map((box) => box.box),
  );
  if (!bounds || !body) return undefined;
  const end = (axis: 0 | 1 | 2): number => {
    if (bounds.min[axis] >= body.max[axis]) return bounds.max[axis];
    if (bounds.max[axis] <= body.min[axis]) return bounds.min[axis];
    return (bounds.min[axis] + bounds.max[axis]) / 2;
  };
  return transformPoint(part.placed.pose, [end(0), end(1), end(2)]);
}
