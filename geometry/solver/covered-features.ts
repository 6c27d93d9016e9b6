/** Slots, sockets and headers that another part makes unusable, or usable only before that part goes in. */
import type { Feature } from '../parts/body';
import type { Scene } from '../plan/scene';
import type { ExaminedPart } from './examined-part';
import type { Finding } from './finding';
import { meetingFaces } from './meeting-faces';
import type { Memory } from './memory';
import { atStart, lowerFirst, type Name, nameOfBox, upperFirst, within } from './part-names';
import { isFilledByLead } from './space-findings';
import type { SpaceIntrusion } from './space-intrusion';

interface Hits {
  readonly owner: ExaminedPart;
  readonly feature: Feature;
  readonly use: SpaceIntrusion[];
  readonly approach: SpaceIntrusion[];
}

/** One finding for each feature that something stands before. */
export function coveredFindings(
  scene: Scene,
  parts: readonly ExaminedPart[],
  intrusions: readonly SpaceIntrusion[],
  memory: Memory<readonly Finding[]>,
): readonly Finding[] {
  const guests = guestsByMount(parts);
  const hits = new Map<string, Hits>();
  for (const intrusion of intrusions) {
    for (const { id, feature, needs } of intrusion.topics) {
      const known = hits.get(id) ?? { owner: intrusion.owner, feature, use: [], approach: [] };
      hits.set(id, known);
      known[needs].push(intrusion);
    }
  }
  return [...hits].flatMap(([id, found]) => {
    const { owner, feature, use, approach } = found;
    const guest = feature.mount === undefined ? undefined : guests.get(`${owner.placed.id}/${feature.mount}`);
    return memory.recall(id, [guest, use.length, ...use, ...approach], () =>
      sayCovered(scene, id, found, guest),
    );
  });
}

function guestsByMount(parts: readonly ExaminedPart[]): ReadonlyMap<string, ExaminedPart> {
  return new Map(
    parts.flatMap((part) =>
      part.placed.seat ? [[`${part.placed.seat.on}/${part.placed.seat.mount}`, part] as const] : [],
    ),
  );
}

function sayCovered(
  scene: Scene,
  id: string,
  { owner, feature, use, approach }: Hits,
  guest: ExaminedPart | undefined,
): readonly Finding[] {
  // What sits in the feature fills it; whether that collides with others is a matter of solids.
  const spoiling = guest ? [] : use;
  const inTheWay = (guest ? [...use, ...approach] : approach).filter(
    (hit) => hit.other !== guest && !isCarriedBy(hit.other, guest) && !comesOff(scene, hit),
  );
  // What stands in the room of a plug is said as an intrusion, with its millimetres.
  if (isFilledByLead(feature) && use.length > 0) return [];
  const hits = spoiling.length > 0 ? spoiling : inTheWay;
  if (hits.length === 0) return [];
  const worst = hits.reduce((deepest, next) => (next.millimetres < deepest.millimetres ? next : deepest));
  const covers = [...new Set(hits.map((hit) => hit.other))];
  const others = covers.filter((part) => part !== worst.other).map((part) => within(part.name));
  const cover = coverName(scene, worst);
  const label = subjectOf(feature, owner);
  const shared = {
    id,
    kind: 'covered',
    parts: [worst.other.placed.id, owner.placed.id],
    faces: meetingFaces(scene, worst.solid, worst.space),
    feature: feature.id,
    millimetres: worst.millimetres,
    overlaps: hits.map((hit) => [hit.space, hit.solid] as const),
  } as const;
  const by = [within(cover), ...others].join(' and ');
  if (spoiling.length > 0)
    return [
      {
        ...shared,
        weight: feature.required ? 'fault' : 'caution',
        sentence: `${label} is covered by ${by} and cannot be used.`,
        waysOut: [],
      },
    ];
  const usable = guest
    ? `${atStart(guest.name)} can be changed only with ${by} out.`
    : `${label} can be used only before ${by} ${others.length > 0 || isPlural(cover) ? 'go' : 'goes'} in.`;
  return [{ ...shared, weight: 'note', sentence: usable, waysOut: [] }];
}

/** Panels are off by the time anything is changed. */
function comesOff(scene: Scene, hit: SpaceIntrusion): boolean {
  return scene.boxes[hit.solid]?.body.removable === true;
}

function isCarriedBy(part: ExaminedPart, carrier: ExaminedPart | undefined): boolean {
  return carrier !== undefined && part.chain.some((link) => link.carrier === carrier.index);
}

function coverName(scene: Scene, hit: SpaceIntrusion): Name {
  const body = scene.boxes[hit.solid]?.body;
  return body ? nameOfBox(hit.other.placed.kind, hit.other.name, body) : hit.other.name;
}

function isPlural(name: Name): boolean {
  return name.text.endsWith('fins');
}

/** 'Slot 3', 'The USB 3 header': the label as the board gives it. */
function subjectOf(feature: Feature, owner: ExaminedPart): string {
  const label = upperFirst(lowerFirst(feature.label));
  return owner.placed.kind === 'board' ? label : `${label} of ${within(owner.name)}`;
}
