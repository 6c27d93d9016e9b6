/** How parts and their pieces are called in sentences a client reads. */
import type { BodyBox, Element } from '../parts/body';
import type { PartKind } from '../parts/part-spec';
import type { PlacedPart } from '../plan/scene';

/** A name without its article: 'card', 'memory 2', 'front fan'. */
export interface Name {
  readonly text: string;
  /** 'the' unless the name carries a number or is already about one thing. */
  readonly article: 'the ' | '';
}

/** The pieces a part of a kind is known by; they go by the name of the part itself. */
const MAIN_ELEMENTS: Readonly<Partial<Record<PartKind, readonly Element[]>>> = {
  board: ['circuit board'],
  processor: ['processor'],
  cooler: ['fin stack'],
  memory: ['memory module'],
  drive: ['drive'],
  card: ['card shroud', 'card board', 'fan'],
  supply: ['supply case'],
  fan: ['fan'],
  radiator: ['radiator core', 'radiator tank'],
  adapter: ['adapter plate', 'riser'],
};

/** Pieces whose own name says more than their element ('front fan' of a cooler, a named cage). */
const NAMED_BY_BOX: ReadonlySet<Element> = new Set<Element>([
  'fan',
  'cage',
  'vent',
  'header',
  'memory slot',
  'expansion slot',
  'm2 socket',
  'm2 sink',
  'power socket',
  'regulator sink',
]);

const ELEMENT_WORDS: Readonly<Partial<Record<Element, string>>> = {
  'top wall': 'top',
  'card backplate': 'backplate',
  'card bracket': 'bracket',
  'card shroud': 'shroud',
  'card board': 'circuit board',
  'm2 socket': 'M.2 socket',
  'm2 sink': 'M.2 sink',
  'drive sink': 'sink',
  'cooler base': 'base',
  'fin stack': 'fins',
};

/** Name of a part; a fan or radiator on a named seat goes by the seat ('front fan'). */
export function nameOfPart(part: PlacedPart, seatLabel: string | undefined): Name {
  const label = lowerFirst(part.label);
  const seat = seatLabel === undefined ? undefined : placeInWords(seatLabel);
  if ((part.kind === 'fan' || part.kind === 'radiator') && seat !== undefined) {
    const text = nameOfSeated(part.kind, seat);
    return { text, article: articleFor(text) };
  }
  return { text: label, article: articleFor(label) };
}

/** 'front 1' of the label 'Fan seat front 1'; undefined for a list of facts ('Fan 1, rail side'), which is no name. */
function placeInWords(seatLabel: string): string | undefined {
  if (seatLabel.includes(',')) return undefined;
  const place = seatLabel.replace(/^(fan seat|radiator rail)\b ?/i, '');
  return place === '' ? undefined : lowerFirst(place);
}

function nameOfSeated(kind: string, seat: string): string {
  if (seat.includes(kind)) return seat;
  const numbered = /^(.*\D) ?(\d+)$/.exec(seat);
  return numbered ? `${(numbered[1] ?? '').trim()} ${kind} ${numbered[2]}` : `${seat} ${kind}`;
}

/** Name of one box of a part: the part itself for its main pieces, 'cooler’s front fan' for the others. */
export function nameOfBox(kind: PartKind, part: Name, body: BodyBox): Name {
  if (body.role === 'plug space') return piece(part, 'plug');
  if (body.role === 'bend space') return piece(part, body.element === 'tube' ? 'tube bend' : 'lead bend');
  if (body.role === 'breathing space') return piece(part, 'breathing space');
  if (kind === 'enclosure') return nameOfWall(body);
  if (MAIN_ELEMENTS[kind]?.includes(body.element)) return part;
  return piece(part, wordsOf(body));
}

function wordsOf(body: BodyBox): string {
  if (NAMED_BY_BOX.has(body.element)) return lowerFirst(body.name);
  return ELEMENT_WORDS[body.element] ?? body.element;
}

function nameOfWall(body: BodyBox): Name {
  if (body.element === 'cage') return { text: lowerFirst(body.name), article: articleFor(body.name) };
  const text =
    body.element === 'vent' ? nameOfVent(body.name) : (ELEMENT_WORDS[body.element] ?? body.element);
  return { text, article: articleFor(text) };
}

/** 'floor vent' of 'floor vent 1', 'top rear fan grille' of 'grille of top rear'. */
function nameOfVent(piece: string): string {
  const name = piece.replace(/, piece \d+$/, '');
  const grille = /^grille of (.*)$/.exec(name);
  return grille ? `${lowerFirst(grille[1] ?? '')} fan grille` : lowerFirst(name.replace(/ \d+$/, ''));
}

function piece(part: Name, words: string): Name {
  return { text: `${part.text}’s ${words}`, article: part.article };
}

/** 'the card', 'memory 2'. */
export function within(name: Name): string {
  return `${name.article}${name.text}`;
}

/** The name at the start of a sentence: 'Card', 'The cooler’s front fan'. */
export function atStart(name: Name): string {
  return name.text.includes('’s ') ? upperFirst(within(name)) : upperFirst(name.text);
}

function articleFor(text: string): 'the ' | '' {
  return /\d$/.test(text) ? '' : 'the ';
}

export function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** 'Card' becomes 'card'; 'M.2 drive' and 'USB' keep their capitals. */
export function lowerFirst(text: string): string {
  return /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
}

/** A length for a sentence, always positive, with one decimal: '3.2 mm'. */
export function millimetresInWords(length: number): string {
  const size = Math.abs(length);
  return size > 0 && size < 0.05 ? 'less than 0.1 mm' : `${size.toFixed(1)} mm`;
}
