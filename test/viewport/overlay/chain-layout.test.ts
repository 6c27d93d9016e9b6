import { describe, expect, test } from 'vitest';
import type { ChainLink, DimensionChain, Vector3 } from '../../../geometry';
import type { Sight } from '../../../src/viewport/camera/sight';
import { standardViews } from '../../../src/viewport/camera/standard-views';
import { layOutChain } from '../../../src/viewport/overlay/chain-layout';

const screen = { width: 800, height: 600 };
const room = { left: 0, top: 0, width: 800, height: 600 };
/** One millimetre is two pixels. */
const side: Sight = { ...standardViews.side, target: [0, 0, 0], height: 300 };

function chainOf(...ends: readonly (readonly [number, number])[]): DimensionChain {
  const at = (x: number): Vector3 => [x, 0, 0];
  const links = ends.map(
    ([from, to], index): ChainLink => ({
      part: 'part',
      path: `size.${index}`,
      nominal: Math.abs(to - from),
      points: [at(from), at(to)],
      faces: [],
    }),
  );
  return { clearance: 'x', direction: [1, 0, 0], links };
}

const lay = (chain: DimensionChain, sight = side, within = room) =>
  layOutChain(
    sight,
    screen,
    chain,
    chain.links.map(() => 30),
    within,
  );

const rowsIn = (chain: DimensionChain) => lay(chain)?.map(({ figure }) => Math.round(figure[1]));

describe('a chain of dimensions', () => {
  test('shares a row where one begins as the other ends, and takes another where it covers it', () => {
    const [first, second, third] = rowsIn(chainOf([-50, 0], [0, 50], [50, -50])) ?? [];
    expect(first).toBe(second);
    expect(third).not.toBe(first);
  });

  test('has its figure inside with arrowheads, or outside with strokes where there is no room', () => {
    const [long, short] = lay(chainOf([-50, 0], [0, 3])) ?? [];
    expect(long?.figure[0]).toBe(350);
    expect(long?.arrows).not.toBe('');
    // 3 mm are 6 px: the figure begins beyond the end, at 406 px.
    expect(short?.figure[0]).toBeGreaterThan(406 + 15);
    expect(short?.arrows).toBe('');
  });

  test('never lets two figures cover each other', () => {
    const drawn = lay(chainOf([-60, 0], [0, 3.6], [3.6, 7], [7, 8.6], [8.6, 15], [15, -60])) ?? [];
    drawn.forEach(({ figure: a }, index) => {
      for (const { figure: b } of drawn.slice(index + 1))
        expect(Math.abs(a[0] - b[0]) >= 30 || Math.abs(a[1] - b[1]) >= 14).toBe(true);
    });
  });

  test('stands on the other side where there is no room below, and goes away when seen end on', () => {
    const chain = chainOf([-50, 0]);
    const [below] = lay(chain) ?? [];
    const [above] = lay(chain, side, { ...room, height: 310 }) ?? [];
    expect(below?.figure[1]).toBeGreaterThan(300);
    expect(above?.figure[1]).toBeLessThan(300);
    expect(lay(chain, { ...side, ...standardViews.front })).toBeUndefined();
  });
});
