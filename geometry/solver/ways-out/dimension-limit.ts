/** How large a dimension may become before something binds, and what binds behind that. */
import { nominal } from '../../parts/dimension';
import type { PartKind, PartSpec } from '../../parts/part-spec';
import { axisOfRotation } from '../../space/rotation';
import { dot } from '../../space/vector';
import type { ClearanceRule, LimitedField } from '../clearance-rule';
import { clearanceRules } from '../clearance-rules';
import type { ExaminedPart } from '../examined-part';
import type { Clearance } from '../finding';
import { type Name, nameOfBox, within } from '../part-names';

export type PartLookup = (id: string) => ExaminedPart | undefined;

export interface DimensionLimit {
  readonly kind: PartKind;
  readonly field: LimitedField;
  /** Largest value without overlap, mm. */
  readonly most: number;
  /** Largest value that keeps the wanted gap, mm. */
  readonly keepsWanted: number;
  readonly binding: Name;
  /** Largest value with the binding part taken out, when it can be. */
  readonly without?: number;
}

const rulesById = new Map(clearanceRules.map((rule) => [rule.id, rule]));

/** Kinds a builder may leave out to make room. */
const CAN_BE_LEFT_OUT: ReadonlySet<PartKind> = new Set<PartKind>(['fan', 'radiator', 'drive', 'memory']);

/**
 * The limit that a clearance puts on the dimension it depends on; `behind` is what the same rule meets next. Undefined
 * when no single dimension decides.
 */
export function dimensionLimit(
  clearance: Clearance,
  behind: Clearance | undefined,
  partOf: PartLookup,
): DimensionLimit | undefined {
  const rule = rulesById.get(clearance.rule);
  if (!rule?.limits) return undefined;
  const [ofGrowing, ofOther] = rule.limits.of === 'from' ? ([0, 1] as const) : ([1, 0] as const);
  const grows = partOf(clearance.parts[ofGrowing]);
  const obstacle = partOf(clearance.parts[ofOther]);
  const value = grows && dimensionOf(grows.placed.spec, rule.limits.field);
  if (!grows || value === undefined || !dependsOn(rule, clearance, grows)) return undefined;
  const face = rule.limits.of === 'from' ? clearance.to : clearance.from;
  const body = obstacle?.placed.model.boxes.find((box) => box.name === face.box);
  if (!obstacle || !body) return undefined;
  return {
    kind: grows.placed.kind,
    field: rule.limits.field,
    most: value + clearance.millimetres,
    keepsWanted: value + clearance.millimetres - clearance.wanted,
    binding: nameOfBox(obstacle.placed.kind, obstacle.name, body),
    ...(behind && CAN_BE_LEFT_OUT.has(obstacle.placed.kind) ? { without: value + behind.millimetres } : {}),
  };
}

/** Whether the face that sets the gap really moves with the dimension. */
function dependsOn(rule: ClearanceRule, clearance: Clearance, grows: ExaminedPart): boolean {
  const face = rule.limits?.of === 'to' ? clearance.to : clearance.from;
  const body = grows.placed.model.boxes.find((box) => box.name === face.box);
  if (grows.placed.kind === 'cooler') return body?.element === 'fin stack' || body?.element === 'pump block';
  if (grows.placed.kind !== 'memory') return body !== undefined;
  const up = axisOfRotation(grows.placed.pose.rotation, 'z');
  return Math.abs(dot(up, clearance.direction)) > 0.999;
}

function dimensionOf(spec: PartSpec, field: LimitedField): number | undefined {
  if (spec.kind === 'card') return field === 'depth' ? undefined : nominal(spec[field]);
  if (spec.kind === 'cooler' && field === 'height') return nominal(spec.height);
  if (spec.kind === 'memory' && field === 'height' && spec.height !== undefined) return nominal(spec.height);
  if (spec.kind === 'supply' && field === 'depth' && spec.depth !== undefined) return nominal(spec.depth);
  return undefined;
}

const WORDS: Readonly<Record<LimitedField, string>> = {
  length: 'long',
  height: 'high',
  thickness: 'thick',
  depth: 'deep',
};

/** 'A card up to 312.0 mm long fits; the front fan binds; without it, 337.0 mm.' */
export function sayLimit(limit: DimensionLimit): string | undefined {
  if (limit.most <= 0) return undefined;
  const without = limit.without === undefined ? '' : `; without it, ${roundedDown(limit.without)} mm`;
  return `${aPart(limit.kind)} up to ${size(limit.most, limit.field)} fits; ${within(limit.binding)} binds${without}.`;
}

/** 'A cooler up to 153.1 mm high keeps the 3.0 mm wanted.' */
export function sayLimitThatKeeps(limit: DimensionLimit, wanted: number): string | undefined {
  if (limit.keepsWanted <= 0) return undefined;
  return `${aPart(limit.kind)} up to ${size(limit.keepsWanted, limit.field)} keeps the ${wanted.toFixed(1)} mm wanted.`;
}

function aPart(kind: PartKind): string {
  return kind === 'memory' ? 'A memory module' : `A ${kind}`;
}

/** Rounded down, so that what is promised does fit. */
function size(value: number, field: LimitedField): string {
  return `${roundedDown(value)} mm ${WORDS[field]}`;
}

function roundedDown(value: number): string {
  return (Math.floor(value * 10 + 1e-6) / 10).toFixed(1);
}
