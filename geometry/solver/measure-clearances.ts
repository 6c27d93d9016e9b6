/** The named clearances from one part to another. */
import type { Material } from '../parts/body';
import type { PartKind } from '../parts/part-spec';
import type { Scene, SceneBox } from '../plan/scene';
import { type FacingGap, leastFacingGap } from '../space/facing-gap';
import { faceTowards, signedDistance } from '../space/separation';
import { CONTACT_TOLERANCE_MM } from '../space/tolerance';
import type { Vector3 } from '../space/vector';
import type { BoxSelector, ClearanceRule } from './clearance-rule';
import { clearanceRules } from './clearance-rules';
import { dimensionLine } from './dimension-line';
import type { ExaminedPart } from './examined-part';
import type { Clearance } from './finding';
import { atStart, millimetresInWords, nameOfBox, upperFirst, within } from './part-names';
import { boxesMeant } from './picked-boxes';
import { directionsOf } from './rule-directions';

/** A clearance as one rule measures it between two parts. */
export interface MeasuredClearance {
  readonly clearance: Clearance;
  /**
   * The two overlap, and part more easily across the direction of the rule than along it: another rule tells that
   * story, this number only keeps farther things from being shown as the nearest.
   */
  readonly sideways: boolean;
}

/** One clearance for each rule that applies from `from` to `to` and finds them facing each other. */
export function measureClearances(
  scene: Scene,
  from: ExaminedPart,
  to: ExaminedPart,
): readonly MeasuredClearance[] {
  const found: MeasuredClearance[] = [];
  for (const rule of rulesBetween(from.placed.kind, to.placed.kind)) {
    if (!applies(scene, rule, from, to)) continue;
    const directions = directionsOf(rule, from);
    if (directions.length === 0) continue;
    const first = boxesMeant(scene, from, rule, 'from', directions);
    const second = boxesMeant(scene, to, rule, 'to', directions);
    const least = leastFacingGap(scene.packed, first, second, directions, rule.reach);
    if (least)
      found.push({
        clearance: clearanceOf(scene, rule, from, to, least, directions),
        sideways: partsSideways(scene, rule, least),
      });
  }
  return found;
}

/** Plugs go in and out along the direction of their rule and have no other way. */
function partsSideways(scene: Scene, rule: ClearanceRule, { gap, a, b }: FacingGap): boolean {
  if (gap >= 0 || rule.from.standsOut) return false;
  return signedDistance(scene.packed, a, b) > gap + CONTACT_TOLERANCE_MM;
}

const byKinds = new Map<string, readonly ClearanceRule[]>();

function rulesBetween(from: PartKind, to: PartKind): readonly ClearanceRule[] {
  const key = `${from}/${to}`;
  const known = byKinds.get(key);
  if (known) return known;
  const rules = clearanceRules.filter((rule) => rule.from.kinds.includes(from) && rule.to.kinds.includes(to));
  byKinds.set(key, rules);
  return rules;
}

export function applies(scene: Scene, rule: ClearanceRule, from: ExaminedPart, to: ExaminedPart): boolean {
  if (!rule.seatedToo && (sitsOn(from, to) || sitsOn(to, from))) return false;
  return seatedAsAsked(scene, rule.from, from) && seatedAsAsked(scene, rule.to, to);
}

function sitsOn(guest: ExaminedPart, carrier: ExaminedPart): boolean {
  return guest.chain[0]?.carrier === carrier.index;
}

function seatedAsAsked(scene: Scene, selector: BoxSelector, part: ExaminedPart): boolean {
  if (selector.on === undefined) return true;
  const link = part.chain[0];
  return link !== undefined && scene.parts[link.carrier]?.kind === selector.on;
}

function clearanceOf(
  scene: Scene,
  rule: ClearanceRule,
  from: ExaminedPart,
  to: ExaminedPart,
  least: FacingGap,
  directions: readonly Vector3[],
): Clearance {
  const a = scene.boxes[least.a];
  const b = scene.boxes[least.b];
  const direction = directions[least.direction];
  if (!a || !b || !direction) throw new RangeError('a box of the pair is not in the scene');
  const target = nameOfBox(to.placed.kind, to.name, b.body);
  return {
    id: `${rule.id}/${from.placed.id}/${to.placed.id}`,
    rule: rule.id,
    title: upperFirst(rule.title.replace('{part}', titleOf(from))),
    towards: `to ${target.text}`,
    parts: [from.placed.id, to.placed.id],
    from: { part: from.placed.id, box: a.body.name, face: faceTowards(a.box, direction, 1) },
    to: { part: to.placed.id, box: b.body.name, face: faceTowards(b.box, direction, -1) },
    direction,
    millimetres: least.gap,
    wanted: scene.wantedGaps[rule.id] ?? wantedTo(rule, from, b.body.material),
    fit: least.gap < 0 ? 'interference fit' : 'clearance fit',
    points: dimensionLine(scene.packed, least.a, least.b, direction, least.gap),
    sentence: sentenceOf(from, a, within(target), least.gap),
  };
}

function titleOf(part: ExaminedPart): string {
  return part.placed.label;
}

function wantedTo({ wanted }: ClearanceRule, from: ExaminedPart, material: Material | undefined): number {
  const { lacking } = wanted;
  if (lacking && !from.placed.model.boxes.some((body) => body.element === lacking.element))
    return lacking.millimetres;
  return material === 'glass' ? (wanted.toGlass ?? wanted.millimetres) : wanted.millimetres;
}

function sentenceOf(from: ExaminedPart, box: SceneBox, target: string, gap: number): string {
  const subject = atStart(nameOfBox(from.placed.kind, from.name, box.body));
  if (gap === 0) return `${subject} just touches ${target}.`;
  const verb = gap < 0 ? 'overlaps' : 'clears';
  return `${subject} ${verb} ${target} by ${millimetresInWords(gap)}.`;
}
