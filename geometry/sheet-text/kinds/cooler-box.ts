/** The three sides of a cooler: the height is safe when it is lettered, the other two depend on how it stands. */
import type { BoxAnswer, BoxFill, Measured } from '../box';
import type { Clause } from '../clauses';
import { isPlausible } from '../plausible';
import type { Side } from '../sides';

const ALONG = 'Is the depth that of the fins alone, without the fan?';
const WHICH = 'Which side of the cooler is which?';
const WITH_FAN = 'These sides include the fan. Are they also those of the fins alone?';

export function arrangeCooler(
  set: readonly Measured[],
  sides: readonly Side[],
  { atoms }: Clause,
): readonly BoxAnswer[] {
  const at = (side: NonNullable<Side>) => set[sides.indexOf(side)];
  const height = at('height');
  const width = at('width');
  const along = at('depth') ?? at('length');
  if (!height || !width || !along) return plausibleOnly(anyWayRound(set));
  const isBare = atoms.has('without fan') || atoms.has('block') || atoms.has('pump');
  const isSure = at('depth') !== undefined || width.value === along.value;
  const named = answer([
    ['height', height],
    ['width', width],
    ['depth', along],
  ]);
  if (atoms.has('with fan')) return plausibleOnly([{ ...named, ask: WITH_FAN }]);
  if (isBare && isSure) return plausibleOnly([named]);
  if (isBare || !isSure) {
    const turned = answer([
      ['height', height],
      ['width', along],
      ['depth', width],
    ]);
    return plausibleOnly([{ ...named, ask: WHICH, unsure: ['width', 'depth'] }, turned]);
  }
  return plausibleOnly([{ ...named, ask: ALONG, unsure: ['depth'] }]);
}

function answer(sides: readonly (readonly [string, Measured])[]): BoxAnswer {
  return {
    fills: sides.map(([path, measured]): BoxFill => ({ path, measured })),
    because: 'by the letters of the sides',
  };
}

function anyWayRound([a, b, c]: readonly Measured[]): readonly BoxAnswer[] {
  if (!a || !b || !c) return [];
  const orders = [
    [a, b, c],
    [a, c, b],
    [b, a, c],
    [b, c, a],
    [c, a, b],
    [c, b, a],
  ] as const;
  return orders.map(([height, width, depth]) => ({
    ...answer([
      ['height', height],
      ['width', width],
      ['depth', depth],
    ]),
    ask: WHICH,
  }));
}

function plausibleOnly(answers: readonly BoxAnswer[]): readonly BoxAnswer[] {
  return answers.filter(({ fills }) =>
    fills.every(({ path, measured }) => isPlausible('cooler', path, measured.value)),
  );
}
