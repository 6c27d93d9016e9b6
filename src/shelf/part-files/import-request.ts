/** What the page asks of the worker that reads part files, and what it hears. Plain data on both sides. */
import type { PartKind } from '../../../geometry';
import type { RowFault } from './part-file';
import type { TableLook } from './read-table';
import type { TablePlan } from './table-rows';

export type ImportRequest =
  /** First: what is it? A part file is read at once; of a table the columns are looked at. */
  | { readonly type: 'look'; readonly file: Blob; readonly name: string; readonly kind: PartKind | undefined }
  /** Reads a table with these columns. */
  | { readonly type: 'read'; readonly plan: TablePlan; readonly hasUnitRow: boolean }
  /** Keeps what was read, in one transaction. */
  | { readonly type: 'keep' }
  /** Takes back what was kept. */
  | { readonly type: 'undo' }
  /** Writes the person's own parts as text. */
  | { readonly type: 'write'; readonly format: 'json' | 'csv' };

export interface ImportReport {
  readonly good: number;
  readonly badRows: number;
  readonly faults: readonly RowFault[];
  readonly refused: string | undefined;
}

export type ImportReply =
  | { readonly type: 'table'; readonly look: Omit<TableLook, 'plan'>; readonly plan: TablePlan }
  | { readonly type: 'report'; readonly report: ImportReport }
  | { readonly type: 'share'; readonly share: number }
  | { readonly type: 'kept'; readonly count: number }
  | { readonly type: 'undone'; readonly count: number }
  | { readonly type: 'written'; readonly file: Blob; readonly count: number }
  | { readonly type: 'failed'; readonly message: string };
