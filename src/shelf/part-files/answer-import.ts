/** The work on a part file, step by step; runs in the worker, or in a test without one. */
import { whyNotSaved } from '../../store/plan-database';
import { addOwnParts, forgetOwnParts, readOwnParts } from '../own-parts';
import { fileLimits } from './file-limits';
import type { ImportReply, ImportReport, ImportRequest } from './import-request';
import { type FileReading, readPartFile, refusedFile, tooLarge, writePartFile } from './part-file';
import { lookAtTable, readTable } from './read-table';
import { writeTable } from './write-table';

/** Holds a file between its steps: nothing is kept on the shelf before `keep` is asked for. */
export class ImportSession {
  private text = '';
  private reading: FileReading | undefined;
  private kept: readonly string[] = [];

  constructor(private readonly tell: (reply: ImportReply) => void) {}

  async answer(request: ImportRequest): Promise<ImportReply> {
    try {
      return await this.step(request);
    } catch (error) {
      return { type: 'failed', message: error instanceof Error ? error.message : String(error) };
    }
  }

  private step(request: ImportRequest): Promise<ImportReply> {
    switch (request.type) {
      case 'look':
        return this.look(request);
      case 'read': {
        this.reading = readTable(this.text, request.plan, request.hasUnitRow, (share) => this.share(share));
        return Promise.resolve(reportOf(this.reading));
      }
      case 'keep':
        return this.keep();
      case 'undo':
        return this.undo();
      case 'write':
        return write(request.format);
    }
  }

  private async look({ file, name, kind }: Extract<ImportRequest, { type: 'look' }>): Promise<ImportReply> {
    this.reading = undefined;
    // Its size is looked at before its content.
    if (file.size > fileLimits.bytes) return reportOf(refusedFile(tooLarge(file.size)));
    this.text = await file.text();
    if (/\.json$/i.test(name) || /^\ufeff?\s*[{[]/.test(this.text.slice(0, 200))) {
      this.reading = readPartFile(this.text.replace(/^\ufeff/, ''), (share) => this.share(share));
      this.text = '';
      return reportOf(this.reading);
    }
    const look = lookAtTable(this.text, kind);
    if (typeof look === 'string') return reportOf(refusedFile(look));
    const { plan, ...shown } = look;
    return { type: 'table', look: shown, plan };
  }

  private async keep(): Promise<ImportReply> {
    const specs = this.reading?.specs ?? [];
    try {
      this.kept = (await addOwnParts(specs)).map(({ id }) => id);
    } catch (error) {
      return { type: 'failed', message: `Nothing was kept: ${whyNotSaved(error)}.` };
    }
    return { type: 'kept', count: this.kept.length };
  }

  private async undo(): Promise<ImportReply> {
    const count = await forgetOwnParts(this.kept);
    this.kept = [];
    return { type: 'undone', count };
  }

  private share(share: number): void {
    this.tell({ type: 'share', share });
  }
}

function reportOf({ specs, badRows, faults, refused }: FileReading): ImportReply {
  const report: ImportReport = { good: specs.length, badRows, faults, refused };
  return { type: 'report', report };
}

async function write(format: 'json' | 'csv'): Promise<ImportReply> {
  const specs = (await readOwnParts()).map(({ spec }) => spec);
  const text = format === 'json' ? writePartFile(specs) : writeTable(specs);
  const type = format === 'json' ? 'application/json' : 'text/csv';
  return { type: 'written', file: new Blob([text], { type }), count: specs.length };
}
