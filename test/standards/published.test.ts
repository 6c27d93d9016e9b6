import { describe, expect, it } from 'vitest';
import * as assemblyPractice from '../../geometry/standards/assembly-practice';
import * as boardConnectors from '../../geometry/standards/board-connectors';
import * as boardFormFactors from '../../geometry/standards/board-form-factors';
import * as cardBracket from '../../geometry/standards/card-bracket';
import * as cardEnvelope from '../../geometry/standards/card-envelope';
import * as componentHeightZones from '../../geometry/standards/component-height-zones';
import * as drives from '../../geometry/standards/drives';
import * as expansionSlots from '../../geometry/standards/expansion-slots';
import * as fans from '../../geometry/standards/fans';
import * as generalTolerances from '../../geometry/standards/general-tolerances';
import * as m2Modules from '../../geometry/standards/m2-modules';
import * as memory from '../../geometry/standards/memory';
import * as mountingHoles from '../../geometry/standards/mounting-holes';
import * as powerConnectors from '../../geometry/standards/power-connectors';
import * as processorSockets from '../../geometry/standards/processor-sockets';
import { citing, inches, type Published } from '../../geometry/standards/published';
import * as radiators from '../../geometry/standards/radiators';
import * as rearAperture from '../../geometry/standards/rear-aperture';
import * as supplyForms from '../../geometry/standards/supply-forms';
import * as supplyGuide from '../../geometry/standards/supply-guide';

const tables = {
  assemblyPractice,
  boardConnectors,
  boardFormFactors,
  cardBracket,
  cardEnvelope,
  componentHeightZones,
  drives,
  expansionSlots,
  fans,
  generalTolerances,
  m2Modules,
  memory,
  mountingHoles,
  powerConnectors,
  processorSockets,
  radiators,
  rearAperture,
  supplyForms,
  supplyGuide,
};

function isPublished(thing: object): thing is Published<unknown> {
  return 'value' in thing && 'source' in thing && 'confidence' in thing;
}

/** Every published row reachable from a table, with its path. */
function rowsOf(thing: unknown, path: string): [string, Published<unknown>][] {
  if (typeof thing !== 'object' || thing === null) return [];
  if (isPublished(thing)) return [[path, thing]];
  return Object.entries(thing).flatMap(([key, inner]) => rowsOf(inner, `${path}.${key}`));
}

const rows = Object.entries(tables).flatMap(([name, table]) => rowsOf(table, name));

describe('every published row', () => {
  it('was found', () => {
    expect(rows.length).toBeGreaterThan(300);
  });

  it('names a document, and a revision or figure when it claims to be primary', () => {
    const bare = rows.filter(([, row]) => {
      const { document, revision, figure } = row.source;
      return (
        document === '' || (row.confidence === 'primary' && revision === undefined && figure === undefined)
      );
    });
    expect(bare.map(([path]) => path)).toEqual([]);
  });

  it('says whose hands it came through when it was not read in the document', () => {
    const unsaid = rows.filter(
      ([, { confidence, source }]) =>
        ['near-primary', 'two sources', 'one source'].includes(confidence) && source.via === undefined,
    );
    expect(unsaid.map(([path]) => path)).toEqual([]);
  });

  it('carries finite numbers and positive tolerances', () => {
    const wrong = rows.filter(([path, { value, plusMinus }]) => {
      const number = typeof value === 'number' && !Number.isFinite(value);
      return number || (plusMinus !== undefined && !(plusMinus > 0)) || path.includes('undefined');
    });
    expect(wrong.map(([path]) => path)).toEqual([]);
  });

  it('keeps ranges in order', () => {
    // Fan thicknesses are a list with the usual one first, not a range.
    const ranges = rows.filter(([path]) => !path.endsWith('.thicknesses'));
    const wrong = ranges.filter(([, { value }]) => {
      if (!Array.isArray(value) || value.length !== 2) return false;
      const [from, to]: unknown[] = value;
      return typeof from === 'number' && typeof to === 'number' && from > to;
    });
    expect(wrong.map(([path]) => path)).toEqual([]);
  });
});

describe('writing a row', () => {
  it('counts 25.4 mm to the inch (ISO 80000-3)', () => {
    expect(inches(1)).toBe(25.4);
    expect(inches(6.25)).toBeCloseTo(158.75, 9);
  });

  it('keeps document, place, hands, tolerance and note beside the value', () => {
    const cite = citing({ document: 'D', publisher: 'P', revision: '1' });
    expect(cite(3, 'one source', 'figure 2', { plusMinus: 0.1, note: 'n', via: 'v' })).toEqual({
      value: 3,
      source: { document: 'D', publisher: 'P', revision: '1', figure: 'figure 2', via: 'v' },
      confidence: 'one source',
      plusMinus: 0.1,
      note: 'n',
    });
  });
});
