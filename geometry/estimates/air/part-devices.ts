/** Coolers, cards and supplies as devices. */
import { nominal, nominalOr } from '../../parts/dimension';
import type { PlacedPart, Scene } from '../../plan/scene';
import type { Bounds } from '../../space/oriented-box';
import { add, negate, scale, type Vector3 } from '../../space/vector';
import { type AirCells, cellAt, isCardBody } from './air-cells';
import { type Device, discAreaOf, type FanPlace, type OutletShare, type Stream } from './devices';
import { portsOf } from './fan-devices';
import { axisOf, isInside, type MachineSpace, mainAxis, middleOf, rangeOfAll } from './machine-space';
import { acrossOf } from './openings';
import { type Port, portOf } from './ports';

export function partDevices(scene: Scene, space: MachineSpace, cells: AirCells): readonly Device[] {
  return scene.parts.flatMap((part) => {
    if (part.spec.kind === 'cooler') return coolerDevice(space, cells, part) ?? [];
    if (part.spec.kind === 'card') return cardDevice(space, cells, part) ?? [];
    return part.spec.kind === 'supply' ? (supplyDevice(space, cells, part) ?? []) : [];
  });
}

/** A cell reached at a point beside a device, with nothing between. */
function cellPort(space: MachineSpace, cells: AirCells, at: Vector3): Port {
  const { min, max } = space.interior;
  const inside: Vector3 = [
    Math.min(Math.max(at[0], min[0] + 1), max[0] - 1),
    Math.min(Math.max(at[1], min[1] + 1), max[1] - 1),
    Math.min(Math.max(at[2], min[2] + 1), max[2] - 1),
  ];
  const point: Bounds = { min: inside, max: inside };
  return {
    cell: cellAt(cells, inside),
    at: inside,
    toRoom: [],
    toCell: [],
    blocked: false,
    gap: 0,
    wanted: 0,
    curtain: undefined,
    swept: point,
  };
}

/** How far beside a part its leaving air is taken to be, mm. */
const BESIDE = 22;

function coolerDevice(space: MachineSpace, cells: AirCells, part: PlacedPart): Device | undefined {
  const { spec } = part;
  if (spec.kind !== 'cooler' || spec.style === 'liquid block') return undefined;
  const fins = space.boxes.filter((box) => box.part === part && box.element === 'fin stack');
  const fans = space.boxes.filter((box) => box.part === part && box.element === 'fan' && box.solid);
  const range = rangeOfAll([...fins, ...fans]);
  const finRange = rangeOfAll(fins);
  if (!range || !finRange) return undefined;
  const along = axisOf(space, part, spec.style === 'tower' ? [0, -1, 0] : [0, 0, -1]);
  const axis = mainAxis(along);
  const [u, v] = acrossOf(axis);
  const depth = fins.reduce((sum, box) => sum + box.max[axis] - box.min[axis], 0);
  const sizes = spec.style === 'tower' ? spec.fans.map(({ size }) => size) : [spec.fan.size];
  const places = sizes.map((size): FanPlace => ({ part, size, withStream: true }));
  const ports = portsOf(space, cells, range, along, sizes[0] ?? 120, new Set([part.id]));
  const stream: Stream = {
    id: part.id,
    fans: places,
    intake: ports.intake,
    fins: { depth, area: ((finRange.max[u] - finRange.min[u]) * (finRange.max[v] - finRange.min[v])) / 1e6 },
  };
  const outlets =
    spec.style === 'tower'
      ? [{ port: ports.outlet, share: 'even' as const }]
      : besideOf(space, cells, finRange, axis).map((port) => ({ port, share: 'even' as const }));
  return {
    id: part.id,
    kind: 'cooler',
    part,
    label: part.label,
    streams: [stream],
    outlets,
    discArea: discAreaOf(places.slice(0, 1)),
    at: middleOf(range),
    along,
  };
}

/** Cells at the four sides of a range, across `axis`. */
function besideOf(space: MachineSpace, cells: AirCells, range: Bounds, axis: 0 | 1 | 2): readonly Port[] {
  const middle = middleOf(range);
  return acrossOf(axis).flatMap((side) =>
    ([1, -1] as const).map((sign) => {
      const at: [number, number, number] = [...middle];
      at[side] = sign > 0 ? range.max[side] + BESIDE : range.min[side] - BESIDE;
      return cellPort(space, cells, at);
    }),
  );
}

function cardDevice(space: MachineSpace, cells: AirCells, part: PlacedPart): Device | undefined {
  const { spec } = part;
  if (spec.kind !== 'card' || spec.fans === undefined) return undefined;
  const fans = space.boxes.filter((box) => box.part === part && box.element === 'fan' && box.solid);
  const body = rangeOfAll(space.boxes.filter((box) => box.part === part && isCardBody(box)));
  if (!body || fans.length === 0) return undefined;
  const along = axisOf(space, part, [0, 1, 0]);
  const axis = mainAxis(along);
  const intakeSign = along[axis] > 0 ? -1 : 1;
  const diameter = nominal(spec.fans.diameter);
  const own = new Set([part.id]);
  const streams = fans.map((box, index): Stream => {
    const intake = portOf(space, cells, box, axis, intakeSign, diameter / 2, own);
    return { id: `${part.id} fan ${index + 1}`, fans: [{ part, size: diameter, withStream: true }], intake };
  });
  return {
    id: part.id,
    kind: 'card',
    part,
    label: part.label,
    streams,
    outlets: cardOutlets(space, cells, part, body, along),
    discArea: discAreaOf(streams.flatMap((stream) => stream.fans)),
    at: middleOf(body),
    along,
  };
}

/** A card's air leaves along its two long edges, and behind the end of its circuit board through the backplate. */
function cardOutlets(
  space: MachineSpace,
  cells: AirCells,
  part: PlacedPart,
  body: Bounds,
  along: Vector3,
): readonly { port: Port; share: OutletShare }[] {
  const { spec } = part;
  if (spec.kind !== 'card') return [];
  const away = axisOf(space, part, [0, 0, 1]);
  const forward = axisOf(space, part, [1, 0, 0]);
  const edge = (direction: Vector3, share: OutletShare) =>
    [-1, 1].map((step) => {
      const axis = mainAxis(direction);
      const half = (body.max[axis] - body.min[axis]) / 2 + BESIDE;
      const length = body.max[mainAxis(forward)] - body.min[mainAxis(forward)];
      const at = add(add(middleOf(body), scale(direction, half)), scale(forward, (step * length) / 4));
      return { port: cellPort(space, cells, at), share };
    });
  const length = nominal(spec.length);
  const beyond = length - nominalOr(spec.boardLength, length);
  const through = Math.max(0, beyond / length);
  const axis = mainAxis(along);
  const half = (body.max[axis] - body.min[axis]) / 2 + BESIDE;
  const atTip = add(add(middleOf(body), scale(along, half)), scale(forward, (length - beyond) / 2));
  return [
    ...edge(away, 'from the board'),
    ...edge(negate(away), 'to the board'),
    ...(through > 0.05 ? [{ port: cellPort(space, cells, atTip), share: { through } }] : []),
  ];
}

function supplyDevice(space: MachineSpace, cells: AirCells, part: PlacedPart): Device | undefined {
  const { spec } = part;
  if (spec.kind !== 'supply' || spec.fan === undefined) return undefined;
  const box = space.boxes.find((one) => one.part === part && one.element === 'supply case');
  if (!box) return undefined;
  const looks = axisOf(space, part, directionOf(spec.fan.side));
  const axis = mainAxis(looks);
  const own = new Set([part.id, part.seat?.on ?? part.id].filter((id) => id !== space.enclosure.id));
  const size = nominal(spec.fan.size);
  const face = discFace(box, axis, size);
  const intake = portOf(space, cells, face, axis, looks[axis] > 0 ? 1 : -1, size / 2, own);
  const out = axisOf(space, part, [-1, 0, 0]);
  const outAxis = mainAxis(out);
  const outlet = portOf(space, cells, box, outAxis, out[outAxis] > 0 ? 1 : -1, size / 2, own);
  return {
    id: part.id,
    kind: 'supply',
    part,
    label: part.label,
    streams: [{ id: part.id, fans: [{ part, size, withStream: true }], intake }],
    outlets: [{ port: besideWall(space, outlet, outAxis), share: 'even' }],
    discArea: discAreaOf([{ part, size, withStream: true }]),
    at: middleOf(box),
    along: negate(looks),
  };
}

/** A screw face held a plate's thickness off the wall still blows straight out of the supply's opening. */
const PLATE_MM = 5;

function besideWall(space: MachineSpace, port: Port, axis: 0 | 1 | 2): Port {
  const { min, max } = space.interior;
  const near = Math.min(Math.abs(port.at[axis] - min[axis]), Math.abs(max[axis] - port.at[axis]));
  const out = port.cell === undefined || near <= PLATE_MM || !isInside(space.interior, port.at);
  return out ? { ...port, cell: undefined, curtain: undefined, toRoom: [], blocked: false } : port;
}

function discFace(box: Bounds, axis: 0 | 1 | 2, size: number): Bounds {
  const middle = middleOf(box);
  const min: [number, number, number] = [...box.min];
  const max: [number, number, number] = [...box.max];
  for (const across of acrossOf(axis)) {
    const half = Math.min(size, box.max[across] - box.min[across]) / 2;
    min[across] = middle[across] - half;
    max[across] = middle[across] + half;
  }
  return { min, max };
}

function directionOf(side: '-y' | '+y' | '-z' | '+z'): Vector3 {
  const sign = side.startsWith('-') ? -1 : 1;
  return side.endsWith('y') ? [0, sign, 0] : [0, 0, sign];
}
