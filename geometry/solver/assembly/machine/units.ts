/** Cuts a placed scene into what is put in as one piece. */
import type { BodyBox, Feature } from '../../../parts/body';
import type { PlacedPart, Scene } from '../../../plan/scene';
import { FACE_NAMES } from '../../../space/face-names';
import { faceNormal, type OrientedBox } from '../../../space/oriented-box';
import { dot, subtract, type Vector3 } from '../../../space/vector';
import { type ExaminedPart, examineParts } from '../../examined-part';
import { within } from '../../part-names';
import type { NeededLead } from './needed-leads';
import type { AssemblyUnit, PlugSeat, UnitKind } from './unit';

interface Draft {
  readonly id: string;
  readonly kind: UnitKind;
  readonly name: string;
  readonly part: number;
  readonly boxes: readonly number[];
  readonly onPart?: number;
  readonly plug?: Omit<PlugSeat, 'fixedTo'> & { readonly fixedToPart?: number };
}

/** Units in the order of the scene, pieces behind their part, plugs last. What never moves is in none. */
export function unitsOf(scene: Scene, leads: readonly NeededLead[]): readonly AssemblyUnit[] {
  const examined = examineParts(scene, []);
  const drafts = [...examined.flatMap((part) => draftsOf(scene, part)), ...plugDrafts(scene, leads)];
  const unitOfPart = new Map<number, number>();
  drafts.forEach((draft, index) => {
    if (draft.kind === scene.parts[draft.part]?.kind && !unitOfPart.has(draft.part))
      unitOfPart.set(draft.part, index);
  });
  return drafts.map(({ onPart, plug, ...draft }, index) => {
    const on = onPart === undefined ? undefined : unitOfPart.get(onPart);
    const fixedTo = plug?.fixedToPart === undefined ? undefined : unitOfPart.get(plug.fixedToPart);
    return {
      index,
      ...draft,
      ...(on === undefined || on === index ? {} : { on }),
      ...(plug
        ? {
            plug: {
              lead: plug.lead,
              out: plug.out,
              depth: plug.depth,
              ...(fixedTo === undefined ? {} : { fixedTo }),
            },
          }
        : {}),
    };
  });
}

function draftsOf(scene: Scene, part: ExaminedPart): Draft[] {
  const { placed, index, solids } = part;
  const bodyOf = (box: number): BodyBox | undefined => scene.boxes[box]?.body;
  if (placed.kind === 'enclosure') return panelsOf(scene, index, solids);
  const carrier = part.chain[0]?.carrier;
  const piece = (box: number): { kind: UnitKind; name: string } | undefined => {
    const body = bodyOf(box);
    if (placed.kind === 'board' && body?.element === 'm2 sink' && isFilled(scene, placed, body))
      return { kind: 'M.2 sink', name: `the ${body.name.replace('of m2', 'of M.2 socket')}` };
    if (placed.spec.kind === 'cooler' && placed.spec.style === 'tower' && body?.element === 'fan')
      return { kind: 'cooler fan', name: `${within(part.name)}’s ${body.name}` };
    return undefined;
  };
  const own: Draft = {
    id: placed.id,
    kind: placed.kind,
    name: within(part.name),
    part: index,
    boxes: solids.filter((box) => piece(box) === undefined),
    ...(carrier === undefined ? {} : { onPart: carrier }),
  };
  const pieces = solids.flatMap((box): Draft[] => {
    const found = piece(box);
    if (!found) return [];
    return [
      { id: `${placed.id}/${bodyOf(box)?.name ?? box}`, part: index, boxes: [box], onPart: index, ...found },
    ];
  });
  return [own, ...pieces];
}

/** A sink over a socket without a drive stays on the board. */
function isFilled(scene: Scene, board: PlacedPart, sink: BodyBox): boolean {
  const mount = sink.name.replace('sink of ', '');
  return scene.parts.some((part) => part.seat?.on === board.id && part.seat.mount === mount);
}

/** Panels that come off, each with the vents in it, and slot covers. */
function panelsOf(scene: Scene, part: number, solids: readonly number[]): Draft[] {
  const groups = new Map<string, number[]>();
  for (const box of solids) {
    const body = scene.boxes[box]?.body;
    if (!body?.removable) continue;
    const key = body.name.includes('slot cover') ? body.name.replace(/, piece.*$/, '') : body.element;
    groups.set(key, [...(groups.get(key) ?? []), box]);
  }
  return [...groups].map(([key, boxes]) => {
    const vents = solids.filter(
      (box) => scene.boxes[box]?.body.element === 'vent' && isInSheet(scene, box, boxes),
    );
    return {
      id: `${scene.parts[part]?.id ?? 'enclosure'}/${key}`,
      kind: key.includes('slot cover') ? 'slot cover' : 'panel',
      name: `the ${key}`,
      part,
      boxes: [...boxes, ...vents],
    };
  });
}

/** Whether a vent lies in the same sheet: level with it on both faces along the axis across the sheet. */
function isInSheet(scene: Scene, vent: number, sheet: readonly number[]): boolean {
  const [first] = sheet;
  const a = scene.boxes[vent]?.box;
  const b = first === undefined ? undefined : scene.boxes[first]?.box;
  if (!a || !b) return false;
  const thin = b.half.indexOf(Math.min(...b.half));
  return (
    Math.abs((a.half[thin] ?? 0) - (b.half[thin] ?? 0)) < 1e-6 &&
    Math.abs((a.centre[thin] ?? 0) - (b.centre[thin] ?? 0)) < 1e-6
  );
}

/** A plug for every end that is plugged; a row of modular sockets counts as one plug. */
function plugDrafts(scene: Scene, leads: readonly NeededLead[]): Draft[] {
  const drafts = new Map<string, Draft>();
  for (const lead of leads) {
    for (const [end, other] of [
      [lead.to, lead.from],
      [lead.from, lead.to],
    ] as const) {
      const part = scene.parts[end.part];
      const feature = part?.model.features.find((candidate) => candidate.id === end.feature);
      if (!part || !feature) continue;
      const id = `${part.id}/plug ${feature.id.replace('header:', '')}`;
      if (drafts.has(id)) continue;
      const draft = plugDraft(
        scene,
        part,
        feature,
        lead,
        other.feature === undefined ? other.part : undefined,
      );
      if (draft) drafts.set(id, { ...draft, id, part: end.part, onPart: end.part });
    }
  }
  return [...drafts.values()];
}

function plugDraft(
  scene: Scene,
  part: PlacedPart,
  feature: Feature,
  lead: NeededLead,
  fixedToPart: number | undefined,
): Omit<Draft, 'id' | 'part'> | undefined {
  const find = (role: string): number[] =>
    part.model.boxes.flatMap((body, k) =>
      body.role === role && feature.use.includes(body.name) ? [part.firstBox + k] : [],
    );
  const [plug] = find('plug space');
  const [bend] = find('bend space');
  const box = plug === undefined ? undefined : scene.boxes[plug]?.box;
  if (plug === undefined || !box) return undefined;
  const beyond = bend === undefined ? undefined : scene.boxes[bend]?.box;
  const out = wayOff(box, beyond?.centre);
  const depth = 2 * extentAlong(box, out);
  const isRow = feature.id.startsWith('modular row');
  return {
    kind: 'plug',
    name: isRow ? `the leads in ${feature.id.replace('modular ', 'socket ')} of the supply` : lead.name,
    boxes: [plug],
    plug: {
      lead: lead.id,
      out,
      depth,
      // A lead hangs on the supply by a flexible end: only fans hold theirs.
      ...(fixedToPart !== undefined && holdsLead(scene, fixedToPart) ? { fixedToPart } : {}),
    },
  };
}

function holdsLead(scene: Scene, part: number): boolean {
  const kind = scene.parts[part]?.kind;
  return kind === 'fan' || kind === 'cooler';
}

/** The face of the plug that looks most squarely at the bend of its lead. */
function wayOff(plug: OrientedBox, towards: Vector3 | undefined): Vector3 {
  const normals = FACE_NAMES.map((face) => faceNormal(plug, face));
  const way: Vector3 = towards ? subtract(towards, plug.centre) : [0, 0, 1];
  return normals.reduce((best, normal) => (dot(normal, way) > dot(best, way) ? normal : best));
}

function extentAlong(box: OrientedBox, direction: Vector3): number {
  const { rotation: r, half } = box;
  return [0, 1, 2].reduce((sum, k) => {
    const along =
      (r[k] ?? 0) * direction[0] + (r[k + 3] ?? 0) * direction[1] + (r[k + 6] ?? 0) * direction[2];
    return sum + Math.abs(along) * (half[k as 0 | 1 | 2] ?? 0);
  }, 0);
}
