/** Values in words, plugs, module names and lanes: everything on a sheet that is no figure with a unit. */
import type { PartKind } from '../parts/part-spec';
import type { Clause } from './clauses';
import type { Candidate, ClauseFinding } from './findings';
import type { SheetValue } from './reading';
import type { Atom } from './words/atoms';
import type { Slot } from './words/value-words';

/** Reads what is not a figure; an empty list when there is nothing of the kind. */
export function readWords(kind: PartKind, clause: Clause): readonly ClauseFinding[] {
  return [
    ...plugs(kind, clause),
    ...formValues(kind, clause),
    ...modularValue(kind, clause),
    ...moduleName(kind, clause),
    ...lanes(kind, clause),
    ...slotCounts(kind, clause),
    ...fanRows(kind, clause),
    ...moduleCapacity(kind, clause),
  ];
}

function fact(clause: Clause, path: string, value: SheetValue, rule: string): ClauseFinding {
  const candidate: Candidate = { path, value, halfStep: 0, span: clause.span, rule };
  return { type: 'fact', candidates: [candidate] };
}

function open(clause: Clause, path: string, ask: string, values: readonly SheetValue[]): ClauseFinding {
  return {
    type: 'open',
    ask,
    span: clause.span,
    yieldsTo: 'any',
    answers: values.map((value) => [{ path, value, halfStep: 0, span: clause.span, rule: 'your answer' }]),
  };
}

function onlyHas(clause: Clause, also: readonly Atom[]): boolean {
  return [...clause.atoms].every((atom) => also.includes(atom));
}

const PLUG_LABELS: readonly Atom[] = [
  'connector',
  'power',
  'supply',
  'card',
  'processor',
  'board',
  'cable',
  'count',
  'drive',
  'recommended',
];

function plugs(kind: PartKind, clause: Clause): readonly ClauseFinding[] {
  if (kind !== 'card' && kind !== 'supply') return [];
  if (!onlyHas(clause, PLUG_LABELS)) return [];
  const count =
    clause.count ??
    clause.amounts.find((amount) => amount.figures.length === 1 && isBare(amount.figures[0]))?.figures[0]
      ?.readings[0]?.value ??
    1;
  if (!Number.isInteger(count) || count < 1 || count > 12) return [];
  const [pins, second] = clause.pins;
  if (pins === undefined && kind === 'supply') {
    const named = clause.values.find(({ slot }) => slot === 'plug');
    const isCounted = clause.count !== undefined || clause.amounts.length === 1;
    return named && isCounted ? [fact(clause, `plugs.${named.value}`, count, 'plugs by their name')] : [];
  }
  if (pins === undefined || second !== undefined) return [];
  const type = kind === 'card' ? cardSocket(pins) : supplyPlug(pins, clause);
  if (type === undefined) return [];
  return [fact(clause, `${kind === 'card' ? 'power' : 'plugs'}.${type}`, count, 'counted by their pins')];
}

function isBare(figure: { readonly unit: unknown } | undefined): boolean {
  return figure !== undefined && figure.unit === undefined;
}

function cardSocket(pins: string): string | undefined {
  if (pins === '12+4' || pins === '16') return 'card 16-pin';
  return pins === '6' || pins === '8' ? `card ${pins}-pin` : undefined;
}

/** The bare eight pins of a supply may be the processor's or a card's: they need a word. */
function supplyPlug(pins: string, clause: Clause): string | undefined {
  const says = (slot: Slot, value: string) =>
    clause.values.some((one) => one.slot === slot && one.value === value);
  const isProcessor = says('mark', 'processor') || clause.atoms.has('processor');
  const isCard = says('mark', 'card') || clause.atoms.has('card');
  if (pins === '24' || pins === '20+4') return 'main 24-pin';
  if (pins === '16' || pins === '12+4') return 'card 16-pin';
  if (pins === '6+2') return 'card 8-pin';
  if (pins === '4+4') return 'processor 8-pin';
  if (pins === '8')
    return isProcessor === isCard ? undefined : isProcessor ? 'processor 8-pin' : 'card 8-pin';
  if (pins === '6') return isCard ? 'card 6-pin' : undefined;
  if (pins === '4')
    return says('plug', 'peripheral 4-pin')
      ? 'peripheral 4-pin'
      : isProcessor
        ? 'processor 4-pin'
        : undefined;
  return undefined;
}

interface FormRule {
  readonly slot: Slot;
  readonly path: string;
  readonly also: readonly Atom[];
  readonly rule: string;
}

const formRules: Readonly<Partial<Record<PartKind, readonly FormRule[]>>> = {
  supply: [
    {
      slot: 'supply form',
      path: 'form',
      also: ['form', 'type', 'supply', 'size', 'power'],
      rule: 'form of the supply',
    },
    { slot: 'grade', path: 'grade', also: ['efficiency', 'supply'], rule: 'efficiency level' },
  ],
  board: [
    { slot: 'board form', path: 'form', also: ['form', 'type', 'board', 'size'], rule: 'form of the board' },
    { slot: 'supply form', path: 'form', also: ['form', 'type', 'board', 'size'], rule: 'form of the board' },
    {
      slot: 'memory form',
      path: 'memory.form',
      also: ['memory', 'slot', 'type', 'form', 'connector'],
      rule: 'form of the memory',
    },
  ],
  memory: [
    {
      slot: 'memory form',
      path: 'form',
      also: ['form', 'type', 'memory', 'module', 'size'],
      rule: 'form of the module',
    },
  ],
  cooler: [
    {
      slot: 'cooler style',
      path: 'style',
      also: ['type', 'cooler', 'form', 'processor', 'heatsink', 'with fan', 'without fan'],
      rule: 'style of the cooler',
    },
  ],
};

function formValues(kind: PartKind, clause: Clause): readonly ClauseFinding[] {
  const rules = formRules[kind] ?? [];
  return rules.flatMap(({ slot, path, also, rule }) => {
    if (!onlyHas(clause, also)) return [];
    if (slot === 'grade' && !clause.atoms.has('efficiency')) return [];
    return clause.values
      .filter((one) => one.slot === slot)
      .flatMap(({ value }) => {
        if (kind === 'board' && slot === 'supply form' && value !== 'ATX') return [];
        // The style field has one tower; that it is a double one is kept apart.
        return [fact(clause, path, value === 'twin tower' ? 'tower' : value, rule)];
      });
  });
}

const MODULAR_LABELS: readonly Atom[] = ['modular', 'cable', 'supply', 'connector', 'type'];

function modularValue(kind: PartKind, clause: Clause): readonly ClauseFinding[] {
  if (kind !== 'supply' || !onlyHas(clause, MODULAR_LABELS)) return [];
  const told = clause.values.find(({ slot }) => slot === 'modular');
  const answer = clause.atoms.has('modular')
    ? clause.values.find(({ slot }) => slot === 'answer')
    : undefined;
  const value = told?.value ?? answer?.value;
  if (value === undefined) return [];
  if (value === 'partly')
    return [
      open(clause, 'modular', 'Only some leads are modular. Count the supply as modular?', [true, false]),
    ];
  return [fact(clause, 'modular', value === 'yes', 'modular or fixed leads')];
}

function moduleName(kind: PartKind, { m2, ...clause }: Clause): readonly ClauseFinding[] {
  if (kind !== 'drive') return [];
  const whole: Clause = { ...clause, m2 };
  if (m2 && onlyHas(whole, ['form', 'type', 'drive', 'size', 'interface', 'with sink'])) {
    const name = fact(whole, 'form', 'M.2', 'form of the drive');
    return m2.length === undefined
      ? [name]
      : [name, fact(whole, 'length', m2.length, 'length in the name of the module')];
  }
  if (!onlyHas(whole, ['form', 'type', 'drive', 'size'])) return [];
  const [figure, more] = whole.amounts.flatMap(({ figures }) => figures);
  const inches = figure?.unit?.name === 'in' && more === undefined ? figure.readings[0]?.value : undefined;
  const isNamed = inches === 2.5 || inches === 3.5;
  return isNamed ? [fact(whole, 'form', String(inches), 'form of the drive')] : [];
}

function lanes(kind: PartKind, clause: Clause): readonly ClauseFinding[] {
  if (
    kind !== 'card' ||
    clause.lanes === undefined ||
    !onlyHas(clause, ['interface', 'card', 'connector', 'slot', 'type'])
  )
    return [];
  return [fact(clause, 'interface', clause.lanes, 'edge connector')];
}

/** A bare number under these words counts; on a card the bracket may be narrower than its cooler. */
function slotCounts(kind: PartKind, clause: Clause): readonly ClauseFinding[] {
  const bare = clause.amounts.flatMap(({ figures }) => figures).filter(isBare);
  const count = clause.count ?? (bare.length === 1 ? bare[0]?.readings[0]?.value : undefined);
  if (count === undefined || bare.length > 1) return [];
  const isWhole = Number.isInteger(count);
  if (
    kind === 'card' &&
    clause.atoms.has('slot') &&
    onlyHas(clause, ['slot', 'bracket', 'width', 'thickness', 'count', 'card', 'size', 'recommended'])
  ) {
    return cardSlots(clause, count, isWhole);
  }
  if (
    kind === 'card' &&
    clause.atoms.has('bracket') &&
    onlyHas(clause, ['slot', 'bracket', 'count']) &&
    isWhole
  )
    return cardSlots(clause, count, isWhole);
  if (
    kind === 'enclosure' &&
    clause.atoms.has('slot') &&
    onlyHas(clause, ['slot', 'count', 'enclosure']) &&
    isWhole &&
    count <= 8
  )
    return [fact(clause, 'board.slots', count, 'slot openings')];
  const isMemory = clause.values.some(({ slot }) => slot === 'memory form');
  if (
    kind === 'board' &&
    isMemory &&
    isWhole &&
    count >= 1 &&
    count <= 8 &&
    onlyHas(clause, ['memory', 'slot', 'count', 'connector'])
  )
    return [fact(clause, 'memory.count', count, 'number of memory slots')];
  if (
    kind === 'cooler' &&
    clause.atoms.has('fan') &&
    onlyHas(clause, ['fan', 'count', 'cooler', 'with fan']) &&
    isWhole &&
    count >= 1 &&
    count <= 3
  )
    return [fact(clause, 'fan.count', count, 'number of fans')];
  if (
    kind === 'card' &&
    clause.atoms.has('fan') &&
    onlyHas(clause, ['fan', 'count', 'card']) &&
    isWhole &&
    count >= 1 &&
    count <= 4
  )
    return [fact(clause, 'fans.count', count, 'number of fans')];
  return [];
}

function cardSlots(clause: Clause, count: number, isWhole: boolean): readonly ClauseFinding[] {
  if (count < 1 || count > 4) return [];
  const isBracket = clause.atoms.has('bracket');
  if (isWhole && (isBracket || count <= 2))
    return [fact(clause, 'bracketSlots', count, isBracket ? 'slots of the bracket' : 'slots it takes')];
  const above = Math.ceil(count);
  const ask = `The card takes ${count} slots. How many has its bracket?`;
  return [
    open(
      clause,
      'bracketSlots',
      ask,
      [above, above - 1].filter((one) => one >= 1 && one <= 4),
    ),
  ];
}

/** '3 x 120 mm': how many fans, of which frame. */
function fanRows(kind: PartKind, clause: Clause): readonly ClauseFinding[] {
  const [amount, more] = clause.amounts;
  const count = amount?.count ?? clause.count;
  if (!amount || more !== undefined || count === undefined || !clause.atoms.has('fan')) return [];
  const [figure, second] = amount.figures;
  const size = figure?.readings[0]?.value;
  if (size === undefined || second || figure?.unit?.name !== 'mm') return [];
  if (!onlyHas(clause, ['fan', 'count', 'size', 'radiator', 'cooler', 'card', 'with fan'])) return [];
  if (kind === 'cooler' && count <= 3) return [fact(clause, 'fan.count', count, 'number of fans')];
  if (kind === 'card' && count <= 4) return [fact(clause, 'fans.count', count, 'number of fans')];
  const row = String(count * size);
  const isRow = (size === 120 || size === 140) && ['120', '140', '240', '280', '360'].includes(row);
  return kind === 'radiator' && isRow ? [fact(clause, 'row', row, 'the fans it takes')] : [];
}

/** '32 GB (2 x 16 GB)': the counted one is that of a module. */
function moduleCapacity(kind: PartKind, clause: Clause): readonly ClauseFinding[] {
  if (kind !== 'memory' || !onlyHas(clause, ['capacity', 'kit', 'memory', 'module', 'size', 'each module']))
    return [];
  return clause.amounts.flatMap(({ count, figures: [figure] }): readonly ClauseFinding[] => {
    const [reading, second] = figure?.readings ?? [];
    if (count === undefined || !figure?.unit || figure.unit.measure !== 'data' || !reading || second)
      return [];
    const value = reading.value * figure.unit.factor;
    const rule = 'capacity of one of several modules';
    return [
      {
        type: 'fact',
        candidates: [
          {
            path: 'capacity',
            value,
            halfStep: reading.halfStep,
            unit: 'GB',
            span: clause.span,
            rule,
            isExplicit: true,
          },
        ],
      },
    ];
  });
}
