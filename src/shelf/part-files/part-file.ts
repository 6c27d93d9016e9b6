/**
 * Part files: parts as JSON, one object with a format number. The schema below is the whole of the format; its JSON
 * Schema is served with the page as `part-file.schema.json`.
 */
import { z } from 'zod';
import { describeIssues, type PartSpec, partSpecSchema } from '../../../geometry';
import { fileLimits } from './file-limits';

export const PART_FILE_FORMAT = 1;
export const PART_FILE_ENDING = '.parts.json';

export const partFileSchema = z
  .strictObject({
    format: z.literal(PART_FILE_FORMAT),
    parts: z.array(partSpecSchema).max(fileLimits.parts),
  })
  .meta({ title: 'Elbowroom part file', description: 'Parts with their dimensions in millimetres' });

/** What is wrong with one part of a file. */
export interface RowFault {
  /** As a person counts: the line of a table with its header as line 1; the place in the list of a part file. */
  readonly row: number;
  /** 'length', 'fans.0.size'; empty when the whole row is meant. */
  readonly field: string;
  readonly message: string;
}

export interface FileReading {
  readonly specs: readonly PartSpec[];
  readonly faults: readonly RowFault[];
  /** Rows that were left out, whether or not their faults are listed. */
  readonly badRows: number;
  /** Set when the file as a whole was refused: then nothing of it is taken. */
  readonly refused?: string;
}

export function refusedFile(why: string): FileReading {
  return { specs: [], faults: [], badRows: 0, refused: why };
}

/** Gathers good rows and faults; never throws. */
export class RowCollector {
  private readonly specs: PartSpec[] = [];
  private readonly faults: RowFault[] = [];
  private badRows = 0;

  get rows(): number {
    return this.specs.length + this.badRows;
  }

  /** Judges one part by the schema. `nameOf` calls a field as the file calls it. */
  take(row: number, value: unknown, nameOf: (path: string) => string = (path) => path): void {
    const parsed = partSpecSchema.safeParse(value, { reportInput: true });
    if (parsed.success) this.specs.push(parsed.data);
    else
      this.refuse(
        row,
        describeIssues(parsed.error.issues, value).map(({ path, message }) => ({
          field: path === 'plan' ? '' : nameOf(path),
          message,
        })),
      );
  }

  refuse(row: number, faults: readonly Omit<RowFault, 'row'>[]): void {
    this.badRows += 1;
    for (const fault of faults) {
      if (this.faults.length < fileLimits.faults) this.faults.push({ row, ...fault });
    }
  }

  reading(): FileReading {
    return { specs: this.specs, faults: this.faults, badRows: this.badRows };
  }
}

/** The text of a part file: stable order, one part a line, one trailing newline. */
export function writePartFile(specs: readonly PartSpec[]): string {
  const lines = specs.map((spec) => `    ${JSON.stringify(spec)}`).join(',\n');
  return `{\n  "format": ${PART_FILE_FORMAT},\n  "parts": [\n${lines}\n  ]\n}\n`;
}

/** Reads a part file, or a bare list of parts. Never throws. `onShare` hears how far it has got, from 0 to 1. */
export function readPartFile(text: string, onShare: (share: number) => void = () => {}): FileReading {
  if (text.length > fileLimits.bytes) return refusedFile(tooLarge(text.length));
  const depth = nestingOf(text);
  if (depth > fileLimits.nesting)
    return refusedFile(`has brackets ${depth} deep; a part file has at most ${fileLimits.nesting}`);
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return refusedFile('is not JSON, or was cut off');
  }
  const list = partsOf(value);
  if (typeof list === 'string') return refusedFile(list);
  if (list.length > fileLimits.parts)
    return refusedFile(`holds ${list.length} parts; ${fileLimits.parts} are the most`);
  const rows = new RowCollector();
  list.forEach((part, index) => {
    rows.take(index + 1, part);
    if (index % 500 === 0) onShare(index / list.length);
  });
  return rows.reading();
}

export function tooLarge(size: number): string {
  return `is ${Math.ceil(size / 1e6)} MB large; ${fileLimits.bytes / 1e6} MB are the most`;
}

function partsOf(value: unknown): readonly unknown[] | string {
  if (Array.isArray(value)) return value;
  if (typeof value !== 'object' || value === null) return 'is no list of parts';
  const { format, parts } = value as { readonly format?: unknown; readonly parts?: unknown };
  if (!Array.isArray(parts)) return 'has no list of parts';
  if (format === PART_FILE_FORMAT) return parts;
  return typeof format === 'number' && format > PART_FILE_FORMAT
    ? `is of format ${format}, which a newer version of this page writes`
    : 'has no format number that this page knows';
}

/** The deepest brackets outside of texts, in one pass; stops counting once it is too deep. */
function nestingOf(text: string): number {
  let depth = 0;
  let deepest = 0;
  let isInText = false;
  for (let at = 0; at < text.length && deepest <= fileLimits.nesting; at += 1) {
    const unit = text.charCodeAt(at);
    if (isInText) {
      if (unit === BACKSLASH) at += 1;
      else if (unit === QUOTE) isInText = false;
    } else if (unit === QUOTE) isInText = true;
    else if (unit === OPEN_BRACE || unit === OPEN_BRACKET) {
      depth += 1;
      deepest = Math.max(deepest, depth);
    } else if (unit === CLOSE_BRACE || unit === CLOSE_BRACKET) depth -= 1;
  }
  return deepest;
}

const QUOTE = 34;
const BACKSLASH = 92;
const OPEN_BRACKET = 91;
const CLOSE_BRACKET = 93;
const OPEN_BRACE = 123;
const CLOSE_BRACE = 125;
