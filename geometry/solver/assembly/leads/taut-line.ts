/** Pulls a line through a grid taut, so that its length is that of a lead and not of the grid. */
import { add, distance, dot, normalise, scale, subtract, type Vector3 } from '../../../space/vector';
import { pullTaut } from './lead-search';

type Sees = (a: Vector3, b: Vector3) => boolean;

/** Distance of the points in between that a line may be shortened from, mm, and how often it is tried. */
const PIECE_MM = 20;
const ROUNDS = 3;

/** Pulled taut between the corners of the grid, then between points set in between, until nothing more is gained. */
export function drawTaut(points: readonly Vector3[], sees: Sees): readonly Vector3[] {
  let line = withoutStraights(pullTaut(points, sees));
  for (let round = 0; round < ROUNDS; round++) {
    const next = withoutStraights(pullTaut(inPieces(line), sees));
    if (lengthOfLine(next) > lengthOfLine(line) - 0.1) break;
    line = next;
  }
  return line;
}

function inPieces(line: readonly Vector3[]): readonly Vector3[] {
  return line.flatMap((to, k): readonly Vector3[] => {
    const from = line[k - 1];
    if (!from) return [to];
    const count = Math.max(1, Math.ceil(distance(from, to) / PIECE_MM));
    return Array.from({ length: count }, (_, n) =>
      n === count - 1 ? to : add(from, scale(subtract(to, from), (n + 1) / count)),
    );
  });
}

/** Points between two pieces in one line say nothing, and would make every bend look tight. */
function withoutStraights(line: readonly Vector3[]): readonly Vector3[] {
  return line.filter((at, k) => {
    const [before, after] = [line[k - 1], line[k + 1]];
    if (!before || !after) return true;
    if (distance(before, at) < 1e-6) return false;
    if (distance(at, after) < 1e-6) return true;
    return dot(normalise(subtract(at, before)), normalise(subtract(after, at))) < 1 - 1e-9;
  });
}

function lengthOfLine(line: readonly Vector3[]): number {
  return line.reduce((sum, at, k) => sum + (k === 0 ? 0 : distance(line[k - 1] ?? at, at)), 0);
}
