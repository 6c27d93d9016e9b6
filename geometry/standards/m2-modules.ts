/** M.2 modules and their sockets, mm. */
import { fromMemory, m2Specification, noStandard } from './cited-documents';
import { citing, type Published } from './published';

const m2 = citing(m2Specification);
const drawn = citing(noStandard);

export type M2Length = 30 | 42 | 60 | 80 | 110;

export const m2Lengths: readonly M2Length[] = [30, 42, 60, 80, 110];

export const m2Module = {
  width: m2(22, 'two sources', undefined, { via: 'an article and a white paper' }),
  boardThickness: m2(0.8, 'two sources', undefined, { via: 'two part models', note: 'one measures 0.79' }),
  highestPartEitherSide: m2(1.5, 'one source', undefined, { via: "a module's manual" }),
} as const;

/** Part heights above the top and bottom of the module's board, by thickness code. */
export const m2ThicknessCodes: Published<Readonly<Record<string, { top: number; bottom: number }>>> =
  fromMemory(
    {
      S1: { top: 1.2, bottom: 0 },
      S2: { top: 1.35, bottom: 0 },
      S3: { top: 1.5, bottom: 0 },
      D1: { top: 1.2, bottom: 1.35 },
      D2: { top: 1.35, bottom: 1.35 },
      D3: { top: 1.5, bottom: 1.35 },
      D4: { top: 1.5, bottom: 0.7 },
      D5: { top: 1.5, bottom: 1.5 },
    },
    { note: 'the specification names the codes; the table itself was not read' },
  );

/** Socket on the board and the stud that holds the far end. */
export const m2Socket = {
  width: drawn(22, 'one source', undefined, { via: 'one footprint' }),
  depth: drawn(7.975, 'one source', undefined, { via: 'one footprint', note: 'for H4.2; another model 6.5' }),
  heights: m2([2.3, 2.5, 2.8, 3.2, 4.2] as const, 'primary', 'list of host connectors', {
    note: '2.3 and 2.5 single sided, the others double sided',
  }),
  studDiameter: drawn(4, 'one source', undefined, { via: 'one part model' }),
  studHeight: drawn(2.5, 'one source', undefined, { via: 'one part model' }),
  /** The stud's centre stands this much less than the module's nominal length from the socket's alignment posts. */
  studShorterThanLength: m2(1.75, 'two sources', 'figure 38', { via: 'a quotation and a socket data sheet' }),
} as const;

/** From the socket's alignment-post line to the stud's centre. */
export function m2StudDistance(length: M2Length): number {
  return length - m2Socket.studShorterThanLength.value;
}
