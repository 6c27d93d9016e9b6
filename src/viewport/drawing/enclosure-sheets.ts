/**
 * How the sheets of an enclosure are filled: what faces inwards is paper, so that far walls close the picture; what
 * faces outwards stays open, so that one looks past near walls into the machine. Only the tray has two inner faces.
 */
import type { BodyBox, Element, Vector3 } from '../../../geometry';
import { type BoxFace, boxFace, type FaceNumber, halfOf, pointOn, thinnestAxis } from './box-face';
import type { FillKind, FillList } from './stroke-list';

const sheetElements: ReadonlySet<Element> = new Set<Element>([
  'side panel',
  'back panel',
  'front wall',
  'rear wall',
  'top wall',
  'floor',
  'tray',
  'vent',
]);

export function isSheet(body: Pick<BodyBox, 'element'>): boolean {
  return sheetElements.has(body.element);
}

export interface EnclosureSheets {
  fill(body: BodyBox, fills: FillList): void;
  /** The face of a sheet that looks out of the enclosure; undefined for the tray, which is inside. */
  outerFace(body: BodyBox): BoxFace | undefined;
}

export function enclosureSheets(solids: readonly BodyBox[]): EnclosureSheets {
  const middle = middleOf(solids.filter((body) => isSheet(body) && body.element !== 'tray'));
  const outerFace = (body: BodyBox): BoxFace | undefined => {
    if (body.element === 'tray') return undefined;
    const axis = thinnestAxis(body.box);
    const outwards = body.box.centre[axis] > middle[axis] ? 1 : 0;
    return boxFace(body.box, (2 * axis + outwards) as FaceNumber);
  };
  return {
    outerFace,
    fill(body, fills) {
      const outer = outerFace(body);
      const axis = thinnestAxis(body.box);
      for (const number of [2 * axis, 2 * axis + 1] as FaceNumber[]) {
        const face = boxFace(body.box, number);
        const kind = sheetFill(body, number === outer?.number);
        if (kind) addFace(face, kind, fills);
      }
      if (!outer) fillRims(body, axis, fills);
    },
  };
}

function sheetFill(body: BodyBox, outside: boolean): FillKind | undefined {
  if (body.material === 'mesh') return outside ? 'sheer mesh' : 'mesh';
  if (outside) return undefined;
  return body.material === 'glass' ? 'sheer' : 'ground';
}

/** The tray is seen from its edge too. */
function fillRims(body: BodyBox, across: 0 | 1 | 2, fills: FillList): void {
  for (const axis of [0, 1, 2] as const) {
    if (axis === across || halfOf(body.box, axis) <= 0) continue;
    for (const sense of [0, 1]) addFace(boxFace(body.box, (2 * axis + sense) as FaceNumber), 'ground', fills);
  }
}

function addFace(face: BoxFace, kind: FillKind, fills: FillList): void {
  const times = (v: Vector3, factor: number): Vector3 => [v[0] * factor, v[1] * factor, v[2] * factor];
  fills.add(
    pointOn(face, -face.halfAlong, -face.halfAcross),
    times(face.along, 2 * face.halfAlong),
    times(face.across, 2 * face.halfAcross),
    kind,
  );
}

function middleOf(bodies: readonly BodyBox[]): Vector3 {
  const min: [number, number, number] = [Infinity, Infinity, Infinity];
  const max: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const { box } of bodies) {
    for (const axis of [0, 1, 2] as const) {
      min[axis] = Math.min(min[axis], box.centre[axis]);
      max[axis] = Math.max(max[axis], box.centre[axis]);
    }
  }
  return [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, (min[2] + max[2]) / 2];
}
