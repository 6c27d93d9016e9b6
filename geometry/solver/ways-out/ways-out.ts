/** What could be done about a finding: cheap trials on the scene as it is, best first. */

import { nominal } from '../../parts/dimension';
import type { Scene } from '../../plan/scene';
import { leastFacingGap } from '../../space/facing-gap';
import { axisOfRotation } from '../../space/rotation';
import { negate } from '../../space/vector';
import type { ExaminedPart } from '../examined-part';
import type { Clearance, Finding } from '../finding';
import { millimetresInWords, within } from '../part-names';
import { reachOf } from '../picked-boxes';
import { isNearestOnly } from '../select-clearances';
import { sayAdjustment } from './adjustment';
import { dimensionLimit, type PartLookup, sayLimitThatKeeps } from './dimension-limit';
import { sayOtherSeat } from './other-seat';
import { sayDirection } from './world-words';

/** All that the ways out are looked for in. */
export interface Surroundings {
  readonly scene: Scene;
  readonly parts: readonly ExaminedPart[];
  /** All clearances along their rule, also those that are not shown. */
  readonly measured: readonly Clearance[];
  /** Those that are shown, with their limits. */
  readonly shown: readonly Clearance[];
}

/** The finding with its ways out. */
export function withWaysOut(around: Surroundings, finding: Finding): Finding {
  if (finding.waysOut.length > 0) return finding;
  const waysOut = waysOutOf(around, finding).filter((way) => way !== undefined);
  return waysOut.length === 0 ? finding : { ...finding, waysOut: [...new Set(waysOut)] };
}

function waysOutOf(around: Surroundings, finding: Finding): readonly (string | undefined)[] {
  switch (finding.kind) {
    case 'interference':
      return freeingTwo(around, finding);
    case 'intrusion':
      return finding.weight === 'fault' ? freeingSpace(around, finding) : [];
    case 'tight':
      return keepingWanted(around, finding);
    case 'covered':
      return finding.weight === 'note' ? [] : uncovering(around, finding);
    default:
      return [];
  }
}

function lookup({ scene, parts }: Surroundings): PartLookup {
  return (id) => {
    const index = scene.indexById.get(id);
    return index === undefined ? undefined : parts[index];
  };
}

function freeingTwo(around: Surroundings, finding: Finding): readonly (string | undefined)[] {
  const { scene, parts } = around;
  const [mover, obstacle] = finding.parts.map(lookup(around));
  if (!mover || !obstacle) return [];
  return [
    sayAdjustment(scene, parts, mover, obstacle.solids),
    sayAdjustment(scene, parts, obstacle, mover.solids),
    ...limitsBetween(around, finding),
    sayOtherSeat(scene, parts, mover),
    canMove(obstacle) ? sayOtherSeat(scene, parts, obstacle) : undefined,
    sayFreeMove(mover, finding),
  ];
}

/** Enclosure, board and processor decide where everything else goes. */
function canMove(part: ExaminedPart): boolean {
  const { kind } = part.placed;
  return kind !== 'enclosure' && kind !== 'board' && kind !== 'processor';
}

function sayFreeMove(mover: ExaminedPart, finding: Finding): string | undefined {
  if (mover.placed.seat || !finding.escape) return undefined;
  const { direction, distance } = finding.escape;
  const where = sayDirection(mover.enclosureAxes, direction);
  return `Move ${within(mover.name)} by ${millimetresInWords(distance)}${where}.`;
}

/** Limits on the dimensions whose clearance between the two parts is negative. */
function limitsBetween(around: Surroundings, finding: Finding): readonly (string | undefined)[] {
  return around.measured
    .filter(
      ({ millimetres, parts }) => millimetres < 0 && parts.every((part) => finding.parts.includes(part)),
    )
    .map(
      (between) =>
        around.shown.find(
          ({ rule, parts: [from, to] }) =>
            rule === between.rule &&
            from === between.parts[0] &&
            (to === between.parts[1] || isNearestOnly(rule)),
        )?.limit,
    );
}

function freeingSpace(around: Surroundings, finding: Finding): readonly (string | undefined)[] {
  const { scene, parts } = around;
  const [owner, other] = finding.parts.map(lookup(around));
  if (!owner || !other) return [];
  return [
    sayShorterPlug(around, owner, finding),
    ...limitsBetween(around, finding),
    sayOtherSeat(scene, parts, owner),
    canMove(other) ? sayOtherSeat(scene, parts, other) : undefined,
  ];
}

/** 'A plug and lead that need no more than 34.0 mm fit.': the room there is, from the part to what is in the way. */
function sayShorterPlug(around: Surroundings, owner: ExaminedPart, finding: Finding): string | undefined {
  const clearance = around.shown.find(
    ({ millimetres, parts: [from, to], from: { box } }) =>
      millimetres < 0 &&
      from === finding.parts[0] &&
      to === finding.parts[1] &&
      owner.placed.model.boxes.some((body) => body.name === box && body.role !== 'solid'),
  );
  if (!clearance) return undefined;
  const { scene } = around;
  const reach = (numbers: readonly number[]): number =>
    Math.max(
      ...numbers.flatMap((number) => {
        const entry = scene.boxes[number];
        return entry ? [reachOf(entry.box, clearance.direction)] : [];
      }),
    );
  const plugs = owner.reserved.filter((number) => scene.boxes[number]?.body.name === clearance.from.box);
  const room = Math.floor((reach(plugs) - reach(owner.solids) + clearance.millimetres) * 10 + 1e-6) / 10;
  return room > 0 ? `A plug and lead that need no more than ${room.toFixed(1)} mm fit.` : undefined;
}

function keepingWanted(around: Surroundings, finding: Finding): readonly (string | undefined)[] {
  const clearance = around.shown.find(({ id }) => finding.id === `tight/${id}`);
  const limit = clearance && dimensionLimit(clearance, undefined, lookup(around));
  return [limit && clearance ? sayLimitThatKeeps(limit, clearance.wanted) : undefined];
}

function uncovering(around: Surroundings, finding: Finding): readonly (string | undefined)[] {
  const { scene, parts } = around;
  const [cover, owner] = finding.parts.map(lookup(around));
  if (!cover || !owner) return [];
  const spaces = finding.overlaps.map(([space]) => space);
  return [sayAdjustment(scene, parts, cover, spaces), sayThinnerCard(scene, finding, cover, spaces)];
}

const thinner = new WeakMap<Finding, { readonly way: string | undefined }>();

/** 'A card at most 40.6 mm thick leaves it free.': how far its fan side reaches into the space. */
function sayThinnerCard(
  scene: Scene,
  finding: Finding,
  cover: ExaminedPart,
  spaces: readonly number[],
): string | undefined {
  // The finding stays the same object for as long as what it was made from does.
  const known = thinner.get(finding);
  if (known) return known.way;
  const way = thinnerCard(scene, cover, spaces);
  thinner.set(finding, { way });
  return way;
}

function thinnerCard(scene: Scene, cover: ExaminedPart, spaces: readonly number[]): string | undefined {
  const { spec, pose } = cover.placed;
  if (spec.kind !== 'card') return undefined;
  const fanSide = negate(axisOfRotation(pose.rotation, 'y'));
  const gap = leastFacingGap(scene.packed, cover.solids, spaces, [fanSide]);
  const thickness = nominal(spec.thickness) + (gap?.gap ?? 0);
  const thinnest = Math.floor(thickness * 10 + 1e-6) / 10;
  return gap && thinnest > 0 ? `A card at most ${thinnest.toFixed(1)} mm thick leaves it free.` : undefined;
}
