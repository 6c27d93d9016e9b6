/** What two parts have to do with each other, from their bodies and poses alone: remembered until one of them changes. */
import type { Scene } from '../plan/scene';
import { type BodyScan, clearBodyScan, createBodyScan, scanBodies, visitOverlaps } from '../space/body-scan';
import type { ExaminedPart } from './examined-part';
import type { Finding } from './finding';
import { zoneFinding } from './height-zones';
import { interferenceOf } from './interference';
import { type MeasuredClearance, measureClearances } from './measure-clearances';
import { type SpaceIntrusion, spaceIntrusion } from './space-intrusion';

/** Free travel of the first part against the second, in the order of `FACE_NAMES`; Infinity when they never meet. */
export interface PairTravel {
  readonly distance: readonly number[];
  /** Numbers into `Scene.boxes`, -1 for none. */
  readonly box: readonly number[];
  readonly otherBox: readonly number[];
}

export interface PairFacts {
  readonly first: ExaminedPart;
  readonly second: ExaminedPart;
  /** Undefined when the two never meet, whichever way one goes. */
  readonly travel: PairTravel | undefined;
  /** Interference and height zones, still without ways out. */
  readonly findings: readonly Finding[];
  readonly intrusions: readonly SpaceIntrusion[];
  readonly clearances: readonly MeasuredClearance[];
}

const scan: BodyScan = createBodyScan();

/** Looks at two different parts; `first` comes before `second` in the scene. */
export function examinePair(scene: Scene, first: ExaminedPart, second: ExaminedPart): PairFacts {
  clearBodyScan(scan);
  const apart = partsThatMayMeet(scene, first, second);
  for (const [mine, theirs] of apart) scanBodies(scene.packed, mine, theirs, second.solidBounds, scan);
  return {
    first,
    second,
    travel: travelOf(scan),
    findings: findingsBetween(scene, first, second, scan.overlaps),
    intrusions: [...intrusionsInto(scene, first, second), ...intrusionsInto(scene, second, first)],
    clearances: [...measureClearances(scene, first, second), ...measureClearances(scene, second, first)],
  };
}

function travelOf({ distance, box, otherBox }: BodyScan): PairTravel | undefined {
  if (box.every((entry) => entry < 0)) return undefined;
  return { distance: [...distance], box: [...box], otherBox: [...otherBox] };
}

/**
 * Lists of boxes to hold against each other. Hardware that engages is left out against the boxes made to receive it,
 * when one part sits on the other.
 */
function partsThatMayMeet(
  scene: Scene,
  first: ExaminedPart,
  second: ExaminedPart,
): readonly (readonly [readonly number[], readonly number[]])[] {
  const firstIn = receivingBoxes(scene, first, second);
  if (firstIn.size > 0) {
    const around = second.solids.filter((box) => !firstIn.has(box));
    const outside = first.solids.filter((box) => !first.engaging.includes(box));
    return [
      [outside, second.solids],
      [first.engaging, around],
    ];
  }
  const secondIn = receivingBoxes(scene, second, first);
  if (secondIn.size > 0) {
    const around = first.solids.filter((box) => !secondIn.has(box));
    const outside = second.solids.filter((box) => !second.engaging.includes(box));
    return [
      [first.solids, outside],
      [around, second.engaging],
    ];
  }
  return [[first.solids, second.solids]];
}

const NO_BOXES: ReadonlySet<number> = new Set();

/** Boxes of the carrier that the guest's engaging hardware may enter. */
function receivingBoxes(scene: Scene, guest: ExaminedPart, carrier: ExaminedPart): ReadonlySet<number> {
  const link = guest.chain[0];
  if (link?.carrier !== carrier.index || guest.engaging.length === 0) return NO_BOXES;
  return new Set(
    carrier.solids.filter((box) => scene.boxes[box]?.body.receives?.includes(link.mount.id) ?? false),
  );
}

function intrusionsInto(scene: Scene, owner: ExaminedPart, other: ExaminedPart): readonly SpaceIntrusion[] {
  if (owner.reserved.length === 0) return [];
  const found: SpaceIntrusion[] = [];
  visitOverlaps(scene.packed, owner.reserved, other.solids, other.solidBounds, (space, solid) => {
    const intrusion = spaceIntrusion(scene, owner, space, other, solid);
    if (intrusion) found.push(intrusion);
  });
  return found;
}

function findingsBetween(
  scene: Scene,
  first: ExaminedPart,
  second: ExaminedPart,
  overlaps: readonly number[],
): readonly Finding[] {
  const findings = [
    interferenceOf(scene, first, second, overlaps),
    first.placed.kind === 'board' ? zoneFinding(scene, first, second) : undefined,
    second.placed.kind === 'board' ? zoneFinding(scene, second, first) : undefined,
  ];
  return findings.filter((finding) => finding !== undefined);
}
