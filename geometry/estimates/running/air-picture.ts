/** Air for the drawing: arrows in the world frame, mm, sized by flow and coloured by temperature. */
import { transformDirection, transformPoint } from '../../space/transform';
import { normalise, subtract, type Vector3 } from '../../space/vector';
import { SECONDS_PER_HOUR } from '../air/air-laws';
import { cellNode, ROOM } from '../air/build-network';
import { flowOf } from '../heat/heat-in-place';
import { exchangeOf } from './air-figures';
import type { Run } from './run';

export interface AirArrow {
  readonly kind: 'fan' | 'opening' | 'inside';
  /** Where it stands and the way the air goes (unit vector), world frame. */
  readonly at: Vector3;
  readonly along: Vector3;
  /** m3/h */
  readonly flow: number;
  /** Of the air in it, deg C. */
  readonly celsius: number;
  readonly label: string;
  readonly part?: string;
}

export interface AirPicture {
  readonly arrows: readonly AirArrow[];
  readonly coldest: number;
  readonly warmest: number;
  readonly largestFlow: number;
}

/** Arrows that carry less than this share of all the air are left out. */
const WORTH_DRAWING = 0.02;

export function airPicture(run: Run): AirPicture {
  const { question, state } = run;
  const { drawnByFans, drawnElsewhere } = exchangeOf(run);
  const least = WORTH_DRAWING * (drawnByFans + drawnElsewhere);
  const arrows = [...deviceArrows(run), ...openingArrows(run), ...insideArrows(run)].filter(
    ({ flow }) => flow / SECONDS_PER_HOUR >= least,
  );
  const temperatures = arrows.map(({ celsius }) => celsius);
  return {
    arrows,
    coldest: Math.min(question.room + state.drawnInRise, ...temperatures),
    warmest: Math.max(question.room + state.drawnInRise, ...temperatures),
    largestFlow: Math.max(0, ...arrows.map(({ flow }) => flow)),
  };
}

function arrow(
  { question, state }: Run,
  kind: AirArrow['kind'],
  at: Vector3,
  along: Vector3,
  flow: number,
  from: number,
  label: string,
  part?: string,
): AirArrow {
  const { pose } = question.air.space.enclosure;
  const way: Vector3 = flow >= 0 ? along : [-along[0], -along[1], -along[2]];
  return {
    kind,
    at: transformPoint(pose, at),
    along: transformDirection(pose, way),
    flow: Math.abs(flow) * SECONDS_PER_HOUR,
    celsius: question.room + state.drawnInRise + (from === ROOM ? 0 : (state.rises[from] ?? 0)),
    label,
    ...(part === undefined ? {} : { part }),
  };
}

function deviceArrows(run: Run): readonly AirArrow[] {
  const { question, state } = run;
  return question.air.devices.flatMap((device) => [
    ...device.streams.flatMap(({ id, intake }) => {
      const node = state.network.intakeNode.get(id);
      if (node === undefined) return [];
      return [
        arrow(run, 'fan', intake.at, device.along, flowOf(state, id), node, device.label, device.part.id),
      ];
    }),
  ]);
}

function openingArrows(run: Run): readonly AirArrow[] {
  const { question, state } = run;
  const { interior } = question.air.space;
  const sums = new Map<string, { at: Vector3; out: Vector3; flow: number; cell: number; name: string }>();
  let index = 0;
  state.network.links.forEach((link, i) => {
    if (link.role.kind !== 'opening') return;
    const opening = question.air.openings[index++];
    if (!opening) return;
    const key = `${opening.name} ${opening.cell}`;
    const known = sums.get(key);
    const flow = state.solution.flows[i] ?? 0;
    const out = outwards(interior.min, interior.max, opening.at);
    if (known) known.flow += flow;
    else sums.set(key, { at: opening.at, out, flow, cell: opening.cell, name: opening.name });
  });
  return [...sums.values()].map(({ at, out, flow, cell, name }) =>
    arrow(run, 'opening', at, out, flow, flow >= 0 ? cellNode(cell) : ROOM, name),
  );
}

function outwards(min: Vector3, max: Vector3, at: Vector3): Vector3 {
  let best: Vector3 = [0, 1, 0];
  let nearest = Number.POSITIVE_INFINITY;
  for (const axis of [0, 1, 2] as const) {
    for (const [plane, sign] of [
      [min[axis], -1],
      [max[axis], 1],
    ] as const) {
      const distance = Math.abs(at[axis] - plane);
      if (distance >= nearest) continue;
      nearest = distance;
      best = [axis === 0 ? sign : 0, axis === 1 ? sign : 0, axis === 2 ? sign : 0];
    }
  }
  return best;
}

function insideArrows(run: Run): readonly AirArrow[] {
  const { question, state } = run;
  const { cells, middles } = question.air;
  return cells.links.flatMap(({ a, b, at }, i) => {
    const flow = state.solution.flows[i] ?? 0;
    const [from, to] = [middles[a], middles[b]];
    if (!from || !to) return [];
    const along = normalise(subtract(to, from));
    return [arrow(run, 'inside', at, along, flow, cellNode(flow >= 0 ? a : b), 'air inside')];
  });
}
