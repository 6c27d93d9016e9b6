import { describe, expect, it } from 'vitest';
import {
  boxFromCorners,
  type OrientedBox,
  transformBox,
  volumeOfBox,
} from '../../geometry/space/oriented-box';
import {
  overlapCorners,
  overlapPolyhedron,
  volumeOfPolyhedron,
} from '../../geometry/space/overlap-polyhedron';
import { overlapVolume } from '../../geometry/space/overlap-volume';
import { rotationAbout, rotationFromDegrees } from '../../geometry/space/rotation';

const cube: OrientedBox = boxFromCorners([-1, -1, -1], [1, 1, 1]);
const motion = { rotation: rotationFromDegrees([12, 34, 56]), translation: [5, -6, 7] as const };

describe('overlap volume (closed forms)', () => {
  it('of a cube and itself turned 45 degrees is a regular octagon high as the cube', () => {
    const turned: OrientedBox = { ...cube, rotation: rotationAbout('z', 45) };
    // A square of side 2 and its copy share a regular octagon of inradius 1: area 8 tan(22.5 degrees).
    const expected = 2 * 8 * Math.tan(Math.PI / 8);
    expect(overlapVolume(cube, turned)).toBeCloseTo(expected, 13);
    expect(overlapVolume(transformBox(motion, cube), transformBox(motion, turned))).toBeCloseTo(expected, 12);
    expect(overlapCorners(cube, turned)).toHaveLength(16);
  });

  it('of a cube and a corner cut off by a slanted face is the tetrahedron', () => {
    // The plane x + y + z = 2.7 cuts a corner with legs of 0.3 off the cube.
    const direction = Math.sqrt(1 / 3);
    const slanted: OrientedBox = {
      centre: [
        direction * (2.7 / Math.sqrt(3) + 10),
        direction * (2.7 / Math.sqrt(3) + 10),
        direction * (2.7 / Math.sqrt(3) + 10),
      ],
      half: [10, 10, 10],
      rotation: [
        direction,
        Math.SQRT1_2,
        1 / Math.sqrt(6),
        direction,
        -Math.SQRT1_2,
        1 / Math.sqrt(6),
        direction,
        0,
        -2 / Math.sqrt(6),
      ],
    };
    const expected = 0.3 ** 3 / 6;
    expect(overlapVolume(cube, slanted)).toBeCloseTo(expected, 12);
    expect(overlapVolume(slanted, cube)).toBeCloseTo(expected, 12);
    expect(overlapCorners(cube, slanted)).toHaveLength(4);
  });

  it('of a box inside another is all of it, and of boxes that touch nothing', () => {
    const inner: OrientedBox = {
      centre: [0.1, 0, 0],
      half: [0.3, 0.2, 0.1],
      rotation: rotationFromDegrees([10, 20, 30]),
    };
    expect(overlapVolume(cube, inner)).toBeCloseTo(volumeOfBox(inner), 14);
    expect(overlapVolume(cube, boxFromCorners([1, -1, -1], [2, 1, 1]))).toBe(0);
    expect(overlapPolyhedron(cube, boxFromCorners([1, -1, -1], [2, 1, 1]))).toBeUndefined();
  });
});

describe('overlap solid', () => {
  it('is closed, convex and counter-clockwise from outside', () => {
    const other: OrientedBox = {
      centre: [0.8, 0.4, 0.3],
      half: [1, 0.7, 0.9],
      rotation: rotationFromDegrees([25, 50, 15]),
    };
    const solid = overlapPolyhedron(cube, other);
    if (solid === undefined) throw new Error('these overlap');
    const edges = solid.faces.flatMap((face) =>
      face.map((from, index) => `${from}>${face[(index + 1) % face.length]}`),
    );
    expect(new Set(edges).size).toBe(edges.length);
    for (const edge of edges) expect(edges).toContain(edge.split('>').reverse().join('>'));
    expect(solid.vertices.length - edges.length / 2 + solid.faces.length).toBe(2);
    expect(volumeOfPolyhedron(solid)).toBeCloseTo(overlapVolume(cube, other), 12);
  });
});
