import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { isSeated, type PartSpec, type Plan, type SeatedPlacement } from '../../../geometry';
import { editPlan, openPlan, planStore, undo } from '../../../src/store/plan-store';
import { solutionStore } from '../../../src/store/solution-store';
import { projectPoint } from '../../../src/viewport/camera/sight';
import { pickPart } from '../../../src/viewport/pointer/pick-part';
import { canBeTaken, takeFromMachine, takeFromShelf } from '../../../src/viewport/pointer/take-part';
import {
  beginShelfDrag,
  cancelShelfDrag,
  dropShelfDrag,
  moveShelfDrag,
} from '../../../src/viewport/shelf-drag';
import { openViewportSession, ViewportSession } from '../../../src/viewport/viewport-session';

const enclosure: PartSpec = {
  kind: 'enclosure',
  maker: 'Test',
  model: 'Three seats',
  interior: { length: 400, height: 400, trayToSide: 180, behindTray: 20 },
  board: { standoff: 6.5, holes: 'BCFHJLMRS', slots: 4 },
  supplyBays: [],
  fanSeats: [
    { id: 'upper', sizes: [120], face: 'front', at: [300, 90] },
    { id: 'lower', sizes: [120], face: 'front', at: [100, 90] },
    { id: 'rear', sizes: [120], face: 'rear', at: [300, 90] },
  ],
};
const fan: PartSpec = { kind: 'fan', maker: 'Test', model: 'Fan', size: 120 };
const widerRear = <T extends { readonly id: string }>(place: T) =>
  place.id === 'rear' ? { ...place, sizes: [120, 140] as (120 | 140)[] } : place;
const otherFan: PartSpec = { ...fan, model: 'Other fan', thickness: 15 };

const seat = (mount: string): SeatedPlacement => ({ on: 'enclosure', mount, foot: 'blows in' });
const plan: Plan = {
  format: 1,
  name: 'Three seats',
  parts: {
    enclosure: { spec: enclosure, placement: { at: [0, 0, 0] } },
    fan: { spec: fan, placement: seat('fan upper') },
    'fan-2': { spec: fan, placement: seat('fan rear') },
  },
};

let session: ViewportSession;
let close: () => void;

beforeEach(() => {
  const canvas = document.createElement('canvas');
  canvas.getBoundingClientRect = () => new DOMRect(0, 0, 800, 600);
  session = new ViewportSession(canvas);
  openPlan('test', withMounts(plan));
  session.bounds = { min: [0, 0, 0], max: [400, 400, 180] };
  session.setScreen({ width: 800, height: 600 });
  session.lookFrom('side', true);
  close = openViewportSession(session);
});
afterEach(() => close());

/** The mounts by the names the enclosure gives them, whatever prefix it puts before the seat's own. */
function withMounts(wanted: Plan): Plan {
  openPlan('look', { ...wanted, parts: { enclosure: wanted.parts.enclosure! } });
  const { scene } = solutionStore.getState();
  const mounts = scene.parts[0]!.model.mounts.map(({ id }) => id);
  const parts = Object.entries(wanted.parts).map(([id, part]) => {
    const { placement } = part;
    if (!isSeated(placement)) return [id, part];
    const word = placement.mount.split(' ')[1]!;
    const mount = mounts.find((name) => name.includes(word))!;
    return [id, { ...part, placement: { ...placement, mount } }];
  });
  return { ...wanted, parts: Object.fromEntries(parts) };
}

/** Pixel of the middle of a seat. */
function pixelOf(word: 'upper' | 'lower' | 'rear') {
  const at = { upper: [380, 300, 90], lower: [380, 100, 90], rear: [20, 300, 90] } as const;
  return projectPoint(session.sight, session.screen, at[word]).at;
}
const placementOf = (id: string, shown = planStore.getState().plan) => shown.parts[id]?.placement;
const previewed = (id: string) => placementOf(id, planStore.getState().preview ?? planStore.getState().plan);
const steps = () => planStore.temporal.getState().pastStates.length;
const grabbed = [380, 300, 90] as const;

describe('a part taken from its place', () => {
  test('seats itself on the free mount nearest to the pointer, keeping the way it blows', () => {
    const hand = takeFromMachine(session, 'fan', grabbed);
    hand?.moveTo(pixelOf('lower'), false);
    expect(previewed('fan')).toMatchObject({ mount: expect.stringContaining('lower'), foot: 'blows in' });
    hand?.drop();
    expect(placementOf('fan')).toMatchObject({ mount: expect.stringContaining('lower') });
    expect(steps()).toBe(1);
    undo();
    expect(placementOf('fan')).toMatchObject({ mount: expect.stringContaining('upper') });
  });

  test('changes places with the part on a mount that is taken, as one step', () => {
    const hand = takeFromMachine(session, 'fan', grabbed);
    hand?.moveTo(pixelOf('rear'), false);
    hand?.drop();
    expect(placementOf('fan')).toMatchObject({ mount: expect.stringContaining('rear'), foot: 'blows in' });
    expect(placementOf('fan-2')).toMatchObject({ mount: expect.stringContaining('upper'), foot: 'blows in' });
    expect(steps()).toBe(1);
    undo();
    expect(placementOf('fan-2')).toMatchObject({ mount: expect.stringContaining('rear') });
  });

  test('leaves alone a part that does not fit the mount it would get', () => {
    const wide: PartSpec = { ...enclosure, fanSeats: enclosure.fanSeats?.map(widerRear) };
    const parts = {
      ...plan.parts,
      enclosure: { spec: wide, placement: { at: [0, 0, 0] as [number, number, number] } },
    };
    const large = { spec: { ...fan, size: 140 } as PartSpec, placement: seat('fan rear') };
    openPlan('test', withMounts({ ...plan, parts: { ...parts, 'fan-2': large } }));
    const hand = takeFromMachine(session, 'fan', grabbed);
    hand?.moveTo(pixelOf('rear'), false);
    expect(previewed('fan')).toMatchObject({ mount: expect.stringContaining('upper') });
    hand?.cancel();
  });

  test('brought back home it leaves no step', () => {
    const hand = takeFromMachine(session, 'fan', grabbed);
    hand?.moveTo(pixelOf('lower'), false);
    hand?.moveTo(pixelOf('upper'), false);
    expect(planStore.getState().preview).toBeUndefined();
    hand?.drop();
    expect(steps()).toBe(0);
  });

  test('let go by Escape it leaves no trace', () => {
    const before = planStore.getState().plan;
    const hand = takeFromMachine(session, 'fan', grabbed);
    hand?.moveTo(pixelOf('lower'), false);
    expect(session.ghosts?.places.length).toBeGreaterThan(0);
    hand?.cancel();
    hand?.moveTo(pixelOf('lower'), false);
    hand?.drop();
    expect(planStore.getState().plan).toBe(before);
    expect(planStore.getState().preview).toBeUndefined();
    expect(session.ghosts).toBeUndefined();
  });

  test('free, it stands on whole millimetres in the plane of the drawing', () => {
    const hand = takeFromMachine(session, 'fan', grabbed);
    hand?.moveTo([420, 311], true);
    const placement = previewed('fan');
    if (!placement || isSeated(placement)) throw new Error('not free');
    expect(placement.at[0]).toBe(Math.round(placement.at[0]));
    expect(placement.at[1]).toBe(Math.round(placement.at[1]));
    hand?.cancel();
  });

  test('previews only when its place changes', () => {
    const hand = takeFromMachine(session, 'fan', grabbed);
    let changes = 0;
    const stop = planStore.subscribe(() => changes++);
    const [x, y] = pixelOf('lower');
    for (let step = 0; step < 20; step++) hand?.moveTo([x + step / 4, y], false);
    expect(changes).toBe(1);
    stop();
    hand?.cancel();
  });

  test('is given up when the plan changes under it', () => {
    const hand = takeFromMachine(session, 'fan', grabbed);
    hand?.moveTo(pixelOf('lower'), false);
    editPlan((open) => ({ ...open, name: 'Changed meanwhile' }));
    expect(session.ghosts).toBeUndefined();
    hand?.drop();
    expect(placementOf('fan')).toMatchObject({ mount: expect.stringContaining('upper') });
    expect(planStore.getState().plan.name).toBe('Changed meanwhile');
  });

  test('is never the enclosure', () => {
    expect(canBeTaken(solutionStore.getState().scene, 'enclosure')).toBe(false);
    expect(takeFromMachine(session, 'enclosure', grabbed)).toBeUndefined();
  });
});

describe('a part dragged from the shelf', () => {
  test('is added on a free mount and replaces a part of its kind on a taken one', () => {
    beginShelfDrag(otherFan, 'other-fan');
    expect(moveShelfDrag(...pixelOf('lower'))).toBe(true);
    expect(previewed('fan-3')).toMatchObject({ mount: expect.stringContaining('lower') });
    moveShelfDrag(...pixelOf('rear'));
    expect(previewed('fan-3')).toBeUndefined();
    expect(planStore.getState().preview?.parts['fan-2']?.spec.model).toBe('Other fan');
    expect(dropShelfDrag()).toBe(true);
    expect(planStore.getState().plan.parts['fan-2']).toMatchObject({ shelf: 'other-fan' });
    expect(steps()).toBe(1);
  });

  test('off the canvas nothing is previewed, and dropping there does nothing', () => {
    beginShelfDrag(otherFan, 'other-fan');
    moveShelfDrag(...pixelOf('lower'));
    expect(moveShelfDrag(-20, 300)).toBe(false);
    expect(planStore.getState().preview).toBeUndefined();
    expect(dropShelfDrag()).toBe(false);
    expect(steps()).toBe(0);
  });

  test('cancelled it leaves no trace', () => {
    beginShelfDrag(otherFan, 'other-fan');
    moveShelfDrag(...pixelOf('lower'));
    cancelShelfDrag();
    expect(planStore.getState().preview).toBeUndefined();
    expect(moveShelfDrag(...pixelOf('lower'))).toBe(false);
  });

  test('stands free under the pointer when nothing takes it', () => {
    const memory: PartSpec = { kind: 'memory', maker: 'Test', model: 'Module', form: 'DIMM', thickness: 7 };
    const taken = takeFromShelf(session, memory, undefined, [400, 300]);
    expect(taken?.free).toBe(true);
    taken?.hand.moveTo([400, 300], true);
    expect(isSeated(previewed('memory') ?? seat('none'))).toBe(false);
    taken?.hand.cancel();
  });
});

describe('picking', () => {
  const pick = (pixel: readonly [number, number], cut?: readonly [number, number, number, number]) => {
    const origin = { x: 0, y: 0, z: 0 };
    const per = session.sight.height / session.screen.height;
    origin.x = session.sight.target[0] + (pixel[0] - 400) * per;
    origin.y = session.sight.target[1] + (300 - pixel[1]) * per;
    const ray = { origin: [origin.x, origin.y, 1000], direction: [0, 0, -1] } as const;
    return pickPart(solutionStore.getState().scene, ray, cut);
  };

  test('looks past the near side panel at the fan behind it', () => {
    expect(pick(pixelOf('upper'))?.part).toBe('fan');
    expect(pick(pixelOf('upper'))?.at[2]).toBeCloseTo(150, 6);
  });

  test('meets the far wall where nothing else is', () => {
    expect(pick([400, 300])?.part).toBe('enclosure');
    expect(pick([-4000, 300])).toBeUndefined();
  });

  test('meets a cut fan in its cut face', () => {
    expect(pick(pixelOf('upper'), [0, 0, 1, 100])?.at[2]).toBeCloseTo(100, 6);
    expect(pick(pixelOf('upper'), [0, 0, 1, 10])?.part).toBe('enclosure');
  });
});
