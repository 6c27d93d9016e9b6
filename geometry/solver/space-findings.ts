/** What the solver says about reserved space that is not free. */
import type { BodyBox, Feature } from '../parts/body';
import type { Scene } from '../plan/scene';
import type { ExaminedPart } from './examined-part';
import type { Finding } from './finding';
import { meetingFaces } from './meeting-faces';
import type { Memory } from './memory';
import { isUsed, neededPlugs } from './needed-plugs';
import { atStart, lowerFirst, millimetresInWords, type Name, nameOfBox, within } from './part-names';
import type { SpaceIntrusion } from './space-intrusion';

/** Kinds of feature that a plug or tube fills; the others are 'covered' when something stands in their space. */
const FILLED_BY_LEAD: ReadonlySet<Feature['kind']> = new Set<Feature['kind']>([
  'power socket',
  'tube fitting',
]);

/** Whether what stands in the space of the feature is said here, plug by plug, and not as a covered feature. */
export function isFilledByLead(feature: Feature): boolean {
  return FILLED_BY_LEAD.has(feature.kind);
}

/**
 * One finding for each space (all spaces of one socket together) and each part standing in it. Space wanted only while
 * something goes in or out belongs to the covered features.
 */
export function spaceFindings(
  scene: Scene,
  parts: readonly ExaminedPart[],
  intrusions: readonly SpaceIntrusion[],
  memory: Memory<Finding>,
): readonly Finding[] {
  const needed = neededPlugs(parts);
  const groups = new Map<string, SpaceIntrusion[]>();
  for (const intrusion of intrusions) {
    const { topics, owner, other } = intrusion;
    if (topics.some(({ feature, needs }) => !isFilledByLead(feature) || needs === 'approach')) continue;
    const [only, ...more] = topics;
    const space = scene.boxes[intrusion.space]?.body.name ?? '';
    const about = only && more.length === 0 ? only.feature.id : space;
    const id = `intrusion/${owner.placed.id}/${about}/${other.placed.id}`;
    const group = groups.get(id);
    if (group) group.push(intrusion);
    else groups.set(id, [intrusion]);
  }
  return [...groups].map(([id, group]) => {
    const worst = group.reduce((deepest, next) => (severity(next) > severity(deepest) ? next : deepest));
    const used = isUsed(needed, worst.owner, featuresOf(worst));
    return memory.recall(id, [used, ...group], () => findingOf(scene, used, id, worst, group));
  });
}

function featuresOf(intrusion: SpaceIntrusion): readonly Feature[] {
  return intrusion.topics.map((topic) => topic.feature);
}

function findingOf(
  scene: Scene,
  used: boolean,
  id: string,
  worst: SpaceIntrusion,
  group: readonly SpaceIntrusion[],
): Finding {
  const { owner, other } = worst;
  const space = scene.boxes[worst.space]?.body;
  const solid = scene.boxes[worst.solid]?.body;
  if (!space || !solid) throw new RangeError('a box of the pair is not in the scene');
  const features = featuresOf(worst);
  const [feature] = features;
  const obstacle = nameOfBox(other.placed.kind, other.name, solid);
  const said = worst.air
    ? sayAir(group, owner, space.name, obstacle)
    : sayPlug(worst, features, space, used, obstacle);
  return {
    id,
    kind: 'intrusion',
    parts: [owner.placed.id, other.placed.id],
    faces: meetingFaces(scene, worst.space, worst.solid),
    ...(feature ? { feature: feature.id } : {}),
    overlaps: group.map((intrusion) => [intrusion.space, intrusion.solid] as const),
    waysOut: [],
    ...said,
  };
}

/** Depth of an intrusion, or of the air it takes. */
function severity(intrusion: SpaceIntrusion): number {
  return intrusion.air ? intrusion.air.wanted - intrusion.air.left : -intrusion.millimetres;
}

type Said = Pick<Finding, 'weight' | 'millimetres' | 'sentence'>;

function sayPlug(
  worst: SpaceIntrusion,
  features: readonly Feature[],
  space: BodyBox,
  used: boolean,
  obstacle: Name,
): Said {
  const { millimetres, owner } = worst;
  if (space.role === 'hand space') {
    const sentence = `${atStart(obstacle)} stands where a hand has to reach ${within(owner.name)}.`;
    return { weight: 'note', millimetres, sentence };
  }
  const plug = nameOfBox(owner.placed.kind, owner.name, space);
  const [feature] = features;
  const which =
    feature && isOneOfSeveral(owner, feature)
      ? ` (${lowerFirst(feature.label).replace(/ \((.*)\)$/, ', $1')})`
      : '';
  const sentence = `${atStart(plug)}${which} has too little room: ${within(obstacle)} takes ${millimetresInWords(millimetres)} of it.`;
  return { weight: used ? 'fault' : 'caution', millimetres, sentence };
}

function isOneOfSeveral(owner: ExaminedPart, feature: Feature): boolean {
  return owner.placed.model.features.filter((other) => other.kind === feature.kind).length > 1;
}

/** Less air than this share of the wanted depth, or more than this share of the area, asks for a decision. */
const ENOUGH_DEPTH_SHARE = 0.5;
const SMALL_AREA_SHARE = 0.25;

function sayAir(group: readonly SpaceIntrusion[], owner: ExaminedPart, space: string, obstacle: Name): Said {
  const wanted = group[0]?.air?.wanted ?? 0;
  const left = Math.min(...group.map((intrusion) => intrusion.air?.left ?? wanted));
  const share = Math.min(
    1,
    group.reduce((sum, intrusion) => sum + (intrusion.air?.share ?? 0), 0),
  );
  const serious = left < ENOUGH_DEPTH_SHARE * wanted && share > SMALL_AREA_SHARE;
  const area = share < 0.995 ? ` over ${Math.max(1, Math.round(100 * share))} % of its area` : '';
  const whose = space.replace(/^breathing space,? ?/, '');
  const fan =
    whose === '' || owner.placed.kind === 'fan'
      ? within(owner.name)
      : `the ${lowerFirst(whose)} of ${within(owner.name)}`;
  return {
    weight: serious ? 'caution' : 'note',
    millimetres: left - wanted,
    sentence: `${atStart(obstacle)} leaves ${fan} ${left.toFixed(1)} mm of the ${wanted.toFixed(1)} mm of air wanted${area}.`,
  };
}
