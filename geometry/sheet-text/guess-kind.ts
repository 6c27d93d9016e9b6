/** Which kind of part a text is a sheet of, by its words. A guess: it is shown and asked, never acted upon. */
import type { PartKind } from '../parts/part-spec';
import { foldText } from './fold-text';
import { LARGEST_SHEET_TEXT } from './reading';

/** Words that speak for a kind, folded, each with its weight. Words that many kinds share speak for none. */
const signs: Readonly<Partial<Record<PartKind, readonly (readonly [word: string, weight: number])[]>>> = {
  card: [
    ['graphics', 2],
    ['grafikkarte', 3],
    ['gpu', 2],
    ['tgp', 3],
    ['displayport', 2],
    ['card', 1],
    ['slots', 1],
    ['pci', 1],
  ],
  cooler: [
    ['cooler', 2],
    ['kuhler', 2],
    ['heatsink', 2],
    ['kuhlkorper', 2],
    ['tdp', 1],
    ['tower', 2],
    ['heatpipes', 2],
    ['pump', 2],
    ['dissipatore', 2],
    ['ventirad', 2],
  ],
  supply: [
    ['psu', 2],
    ['netzteil', 2],
    ['sfx', 3],
    ['modular', 2],
    ['atx12v', 3],
    ['efficiency', 1],
    ['supply', 1],
    ['sata', 1],
    ['alimentation', 1],
  ],
  fan: [
    ['rpm', 1],
    ['airflow', 1],
    ['static', 1],
    ['bearing', 2],
    ['lufter', 1],
    ['cfm', 1],
    ['fan', 1],
  ],
  radiator: [
    ['radiator', 3],
    ['radiateur', 3],
    ['radiatore', 3],
  ],
  board: [
    ['motherboard', 3],
    ['mainboard', 3],
    ['chipset', 3],
    ['socket', 1],
    ['microatx', 2],
    ['itx', 2],
  ],
  memory: [
    ['dimm', 3],
    ['udimm', 3],
    ['sodimm', 3],
    ['timings', 3],
    ['module', 1],
  ],
  drive: [
    ['ssd', 3],
    ['nvme', 3],
    ['hdd', 3],
    ['tbw', 2],
    ['drive', 1],
    ['festplatte', 3],
  ],
  processor: [
    ['cores', 3],
    ['threads', 3],
    ['cache', 2],
    ['processor', 1],
    ['kerne', 3],
  ],
  enclosure: [
    ['case', 2],
    ['chassis', 3],
    ['enclosure', 3],
    ['clearance', 2],
    ['panel', 1],
    ['tray', 2],
  ],
};

const LEAST_WEIGHT = 3;

/** Undefined when no kind, or more than one, stands out. */
export function guessKind(text: string): PartKind | undefined {
  const words = new Set(foldText(text.slice(0, LARGEST_SHEET_TEXT)).match(/[a-z0-9]{3,20}/g) ?? []);
  const weights = (Object.entries(signs) as [PartKind, readonly (readonly [string, number])[]][])
    .map(([kind, all]) => ({
      kind,
      weight: all.reduce((sum, [word, weight]) => sum + (words.has(word) ? weight : 0), 0),
    }))
    .toSorted((a, b) => b.weight - a.weight);
  const [first, second] = weights;
  if (!first || first.weight < LEAST_WEIGHT || first.weight === second?.weight) return undefined;
  return first.kind;
}
