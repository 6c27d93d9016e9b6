/** The table of precision and recall that stands in the README beside the sheets. */
import { readSheets, type Score, scoreSheet } from './score-sheets';

interface Count {
  readonly right: number;
  readonly asked: number;
  readonly missed: number;
  readonly wrong: number;
}

/** Field names of several kinds are counted together: 'eachFan.speed' is a speed. */
function fieldOf(path: string): string {
  return path
    .replace(/^(?:eachFan|fans?|limits|tubes|interior)\./, '')
    .replace(/^(power|plugs|patterns)\..*/, '$1 (counted)');
}

function count(scores: readonly Score[]): Count {
  const of = (verdict: Score['verdict']) => scores.filter((score) => score.verdict === verdict).length;
  return { right: of('right'), asked: of('asked'), missed: of('missed'), wrong: of('wrong') };
}

const percent = (part: number, whole: number) =>
  whole === 0 ? '–' : `${((100 * part) / whole).toFixed(1)} %`;

function row(name: string, { right, asked, missed, wrong }: Count): string {
  const precision = percent(right, right + wrong);
  const recall = percent(right, right + asked + missed);
  return `| ${name} | ${right} | ${asked} | ${missed} | ${wrong} | ${precision} | ${recall} |`;
}

/** Markdown; the same for the same sheets and reader. */
export function sheetReport(): string {
  const sheets = readSheets();
  const all = sheets.flatMap(scoreSheet);
  const stated = all.filter(({ isQuestion }) => !isQuestion);
  const questions = all.filter(({ isQuestion }) => isQuestion);
  const heads = [
    '| | right | asked | missed | wrong | precision | recall |',
    '| --- | --: | --: | --: | --: | --: | --: |',
  ];
  const sets = [...new Set(sheets.map(({ truth }) => truth.set))].toSorted();
  const fields = [...new Set(stated.map(({ path }) => fieldOf(path)))].toSorted();
  const asked = questions.filter(({ verdict }) => verdict === 'right').length;
  return [
    ...heads,
    ...sets.map((set) => {
      const of = sheets.filter(({ truth }) => truth.set === set).length;
      return row(`**${set}**, ${of} sheets`, count(stated.filter((score) => score.set === set)));
    }),
    row(`**all**, ${sheets.length} sheets`, count(stated)),
    ...fields.map((field) => row(field, count(stated.filter(({ path }) => fieldOf(path) === field)))),
    '',
    `Of ${questions.length} fields that a sheet leaves open, ${asked} are asked about; none is filled without asking.`,
  ].join('\n');
}
