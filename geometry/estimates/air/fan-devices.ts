/** Case fans, alone or on a radiator, as devices. */
import type { PlacedPart, Scene } from '../../plan/scene';
import type { Bounds } from '../../space/oriented-box';
import { scale, type Vector3 } from '../../space/vector';
import { sweptDiameterOfFrame } from '../../standards/fan-breathing';
import type { AirCells } from './air-cells';
import { type Device, discAreaOf, type FanPlace, type Stream } from './devices';
import { axisOf, type LocalBox, type MachineSpace, mainAxis, middleOf, rangeOfAll } from './machine-space';
import { acrossOf } from './openings';
import { type Port, portOf } from './ports';

interface PlacedFan {
  readonly part: PlacedPart;
  readonly range: Bounds;
  readonly along: Vector3;
  readonly size: number;
  /** Radiator it sits on, if any. */
  readonly radiator: string | undefined;
}

export function fanDevices(scene: Scene, space: MachineSpace, cells: AirCells): readonly Device[] {
  const fans = scene.parts.flatMap((part): PlacedFan[] => {
    if (part.spec.kind !== 'fan') return [];
    const frame = space.boxes.find((box) => box.part === part && box.element === 'fan' && box.solid);
    if (!frame) return [];
    const carrier = scene.parts.find((other) => other.id === part.seat?.on);
    const radiator = carrier?.kind === 'radiator' ? carrier.id : undefined;
    return [{ part, range: frame, along: axisOf(space, part, [0, 0, 1]), size: part.spec.size, radiator }];
  });
  const alone = fans.filter(({ radiator }) => radiator === undefined);
  const radiators = scene.parts.filter((part) => part.kind === 'radiator');
  return [
    ...alone.map((fan) => loneFan(space, cells, fan)),
    ...radiators.map((radiator) =>
      radiatorDevice(
        space,
        cells,
        radiator,
        fans.filter((fan) => fan.radiator === radiator.id),
      ),
    ),
  ].flatMap((device) => device ?? []);
}

function loneFan(space: MachineSpace, cells: AirCells, fan: PlacedFan): Device {
  const { part, range, along, size } = fan;
  const ports = portsOf(space, cells, range, along, size, new Set([part.id]));
  const place: FanPlace = { part, size: sweptDiameterOfFrame(size), withStream: true };
  return {
    id: part.id,
    kind: 'case fan',
    part,
    label: part.label,
    streams: [{ id: part.id, fans: [place], intake: ports.intake }],
    outlets: [{ port: ports.outlet, share: 'even' }],
    discArea: discAreaOf([place]),
    at: middleOf(range),
    along,
  };
}

/** Ports before and behind a range of things in a stream along `along`. */
export function portsOf(
  space: MachineSpace,
  cells: AirCells,
  range: Bounds,
  along: Vector3,
  size: number,
  own: ReadonlySet<string>,
): { intake: Port; outlet: Port } {
  const axis = mainAxis(along);
  const sign = along[axis] > 0 ? 1 : -1;
  const wanted = size / 2;
  return {
    intake: portOf(space, cells, range, axis, sign === 1 ? -1 : 1, wanted, own),
    outlet: portOf(space, cells, range, axis, sign, wanted, own),
  };
}

/** A radiator with its fans: fans that face the same part of the core are one stream. */
function radiatorDevice(
  space: MachineSpace,
  cells: AirCells,
  radiator: PlacedPart,
  fans: readonly PlacedFan[],
): Device | undefined {
  const core = space.boxes.find((box) => box.part === radiator && box.element === 'radiator core');
  if (!core) return undefined;
  const along = fans[0]?.along ?? axisOf(space, radiator, [0, 0, 1]);
  const axis = mainAxis(along);
  const own = new Set([radiator.id, ...fans.map(({ part }) => part.id)]);
  const depth = core.max[axis] - core.min[axis];
  const groups = fans.length > 0 ? groupsAcross(fans, axis) : [[]];
  const built = groups.map((group, index) => {
    const range = stackRange(core, group, axis);
    const size = group[0]?.size ?? core.max[acrossOf(axis)[1]] - core.min[acrossOf(axis)[1]];
    const ports = portsOf(space, cells, range, along, size, own);
    const places = group.map(
      (fan): FanPlace => ({
        part: fan.part,
        size: sweptDiameterOfFrame(fan.size),
        withStream: fan.along[axis] === along[axis],
      }),
    );
    const stream: Stream = {
      id: `${radiator.id} ${index + 1}`,
      fans: places,
      intake: ports.intake,
      core: { depth, area: coreAreaOf(core, range, axis) },
    };
    return { stream, outlet: ports.outlet };
  });
  return {
    id: radiator.id,
    kind: 'radiator',
    part: radiator,
    label: radiator.label,
    streams: built.map(({ stream }) => stream),
    outlets: built.map(({ outlet }) => ({ port: outlet, share: 'even' })),
    discArea: discAreaOf(built.flatMap(({ stream }) => stream.fans)),
    at: middleOf(core),
    along: scale(along, 1),
  };
}

function groupsAcross(fans: readonly PlacedFan[], axis: 0 | 1 | 2): readonly (readonly PlacedFan[])[] {
  const groups: PlacedFan[][] = [];
  for (const fan of fans) {
    const [u, v] = acrossOf(axis);
    const at = middleOf(fan.range);
    const group = groups.find(([first]) => {
      if (!first) return false;
      const other = middleOf(first.range);
      return Math.hypot(at[u] - other[u], at[v] - other[v]) < fan.size / 2;
    });
    if (group) group.push(fan);
    else groups.push([fan]);
  }
  return groups;
}

/** What the stream of a group passes: across, the frame of its fans; along, core and fans together. */
function stackRange(core: LocalBox, group: readonly PlacedFan[], axis: 0 | 1 | 2): Bounds {
  const frames = rangeOfAll(group.map(({ range }) => range));
  const all = rangeOfAll([core, ...group.map(({ range }) => range)]) ?? core;
  if (!frames) return all;
  const min: [number, number, number] = [...frames.min];
  const max: [number, number, number] = [...frames.max];
  min[axis] = all.min[axis];
  max[axis] = all.max[axis];
  return { min, max };
}

function coreAreaOf(core: Bounds, range: Bounds, axis: 0 | 1 | 2): number {
  const [u, v] = acrossOf(axis);
  const across = (i: 0 | 1 | 2) => Math.min(core.max[i], range.max[i]) - Math.max(core.min[i], range.min[i]);
  return (Math.max(across(u), 0) * Math.max(across(v), 0)) / 1e6;
}
