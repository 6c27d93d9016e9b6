/** Parts that are not where their mount wants them, and standoffs that do not match the board. */

import { matchHoles } from '../plan/mounting';
import type { PlacedPart, PlacementProblem, Scene } from '../plan/scene';
import { compose, invert } from '../space/transform';
import type { ExaminedPart } from './examined-part';
import type { Finding } from './finding';
import { atStart, within } from './part-names';

/** What the placer could not do, in plain words. */
export function seatFindings(scene: Scene, parts: readonly ExaminedPart[]): readonly Finding[] {
  return scene.problems.map((problem) => {
    const part = named(scene, parts, problem.part);
    const carrier = problem.on === undefined ? undefined : named(scene, parts, problem.on);
    const mount = mountLabel(scene, problem);
    return {
      id: `seat/${problem.part}/${problem.kind}`,
      kind: 'seat',
      weight: 'fault',
      parts: [problem.part, ...(problem.on !== undefined && carrier ? [problem.on] : [])],
      faces: [],
      overlaps: [],
      ...sayProblem(problem, part ? atStart(part.name) : problem.part, mount, carrier),
    };
  });
}

function named(scene: Scene, parts: readonly ExaminedPart[], id: string): ExaminedPart | undefined {
  const index = scene.indexById.get(id);
  return index === undefined ? undefined : parts[index];
}

function mountLabel(scene: Scene, problem: PlacementProblem): string {
  const index = problem.on === undefined ? undefined : scene.indexById.get(problem.on);
  const carrier = index === undefined ? undefined : scene.parts[index];
  const mount = carrier?.model.mounts.find((candidate) => candidate.id === problem.mount);
  return mount?.label ?? problem.mount ?? 'its mount';
}

function sayProblem(
  problem: PlacementProblem,
  part: string,
  mount: string,
  carrier: ExaminedPart | undefined,
): Pick<Finding, 'sentence' | 'waysOut'> {
  const on = carrier ? within(carrier.name) : 'a part';
  const place = `“${mount}” of ${on}`;
  switch (problem.kind) {
    case 'carrier missing':
      return {
        sentence: `${part} is meant to sit on a part that is not in the plan.`,
        waysOut: ['Mount it elsewhere, or add the part that carries it.'],
      };
    case 'mount missing':
      return {
        sentence: `${part} is meant to sit on “${mount}”, which ${on} does not have.`,
        waysOut: ['Mount it elsewhere.'],
      };
    case 'foot does not fit':
      return {
        sentence: `${part} does not fit ${place}: the fastening is another one.`,
        waysOut: ['Mount it on a place that takes it, or use an adapter.'],
      };
    case 'holes do not meet':
      return {
        sentence: `${part} does not fit ${place}: the screw holes do not meet.`,
        waysOut: ['Turn it, or mount it on a place with its hole pattern.'],
      };
    case 'mount taken':
      return {
        sentence: `${part} shares ${place} with another part.`,
        waysOut: ['Mount one of the two elsewhere.'],
      };
    case 'carried in a circle':
      return {
        sentence: `${part} and ${on} are meant to carry each other.`,
        waysOut: ['Mount one of the two elsewhere.'],
      };
    case 'turn not allowed':
      return {
        sentence: `${part} cannot be turned that way on ${place}.`,
        waysOut: ['Turn it to one of the positions its screws allow.'],
      };
  }
}

/** Compares the holes of every seated board with the standoffs under it. */
export function standoffFindings(parts: readonly ExaminedPart[]): readonly Finding[] {
  return parts.flatMap((part) => (part.placed.kind === 'board' ? standoffsUnder(parts, part) : []));
}

function standoffsUnder(parts: readonly ExaminedPart[], board: ExaminedPart): readonly Finding[] {
  const link = board.chain[0];
  const carrier = link && parts[link.carrier];
  const foot = board.placed.model.feet.find((candidate) => candidate.id === board.placed.seat?.foot);
  if (!link || !carrier || !foot) return [];
  const { missing, extra } = matchHoles(
    link.mount,
    foot,
    board.placed.seat?.turn ?? 0,
    shiftOf(carrier.placed, board.placed, link.mount.frame, foot.frame),
  );
  const shared = {
    kind: 'standoff',
    weight: 'fault',
    parts: [carrier.placed.id, board.placed.id],
    faces: [],
    overlaps: [],
  } as const;
  return [
    ...missing.map((hole) => ({
      ...shared,
      id: `standoff/${board.placed.id}/missing ${hole.id}`,
      sentence: `No standoff stands under hole ${hole.id} of ${within(board.name)}; the board needs one there.`,
      waysOut: [`Fit a standoff under hole ${hole.id}.`],
    })),
    ...extra.map((point) => ({
      ...shared,
      id: `standoff/${board.placed.id}/extra ${point.id}`,
      sentence: `The standoff at ${point.id} stands under ${within(board.name)} where it has no hole; it can short the board.`,
      waysOut: [`Take out the standoff at ${point.id}.`],
    })),
  ];
}

/** The shift of the seat, which the pose already holds: where the foot's origin lies in the mount's frame. */
function shiftOf(
  carrier: PlacedPart,
  guest: PlacedPart,
  mount: PlacedPart['pose'],
  foot: PlacedPart['pose'],
): PlacedPart['pose']['translation'] {
  return compose(invert(compose(carrier.pose, mount)), compose(guest.pose, foot)).translation;
}
