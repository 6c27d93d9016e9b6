/** Parts from files and into files: looked at, checked row by row, kept in one step that can be taken back. */
import { useRef, useState } from 'react';
import { fileLimits } from '../../shelf/part-files/file-limits';
import { useShelf } from '../../shelf/use-shelf';
import { Dialog } from '../../ui/dialog';
import { ColumnTable } from './column-table';
import { downloadOwnParts } from './download-parts';
import { ImportReportView } from './import-report-view';
import { type Import, useImport } from './use-import';
import './part-files.css';

const count = new Intl.NumberFormat('en');

const WORK_WORDS = {
  looking: 'Looking at the file',
  reading: 'Reading the rows',
  keeping: 'Putting the parts on the shelf',
  undoing: 'Taking the parts off the shelf',
} as const;

export function PartFilesDialog({ onClose }: { readonly onClose: () => void }) {
  const work = useImport();
  const own = useShelf().filter((entry) => entry.own).length;
  return (
    <Dialog title="Parts from a file, or into one" wide onClose={onClose}>
      <div className="dialog-body part-files">
        <section aria-label="Bring parts in">
          <h3>Bring parts in</h3>
          <FileChoice work={work} />
          <StageView work={work} />
        </section>
        <TakeOut own={own} />
      </div>
    </Dialog>
  );
}

function FileChoice({ work }: { readonly work: Import }) {
  const input = useRef<HTMLInputElement>(null);
  const take = (files: FileList | null) => {
    const file = files?.[0];
    if (file) work.open(file);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a place to drop a file on; the button beside does the same.
    <div
      className="file-drop"
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        take(event.dataTransfer.files);
      }}
    >
      <button
        type="button"
        className="button"
        disabled={work.stage.at === 'working'}
        onClick={() => input.current?.click()}
      >
        Choose a file
      </button>
      <span className="quiet">
        A table (CSV) or a part file (JSON), up to {fileLimits.bytes / 1e6} MB and{' '}
        {count.format(fileLimits.parts)} parts.
        {work.fileName && ` Now: ${work.fileName}.`}
      </span>
      <input
        ref={input}
        type="file"
        className="file-input"
        aria-label="File with parts"
        accept=".csv,.tsv,.txt,.json,text/csv,application/json"
        tabIndex={-1}
        onChange={(event) => {
          take(event.target.files);
          event.target.value = '';
        }}
      />
    </div>
  );
}

function StageView({ work }: { readonly work: Import }) {
  const { stage, fileName } = work;
  switch (stage.at) {
    case 'idle':
      return null;
    case 'working':
      return (
        <div className="file-working">
          <label>
            <span>{WORK_WORDS[stage.work]} …</span>
            <progress value={stage.work === 'reading' ? stage.share : undefined} />
          </label>
          <button type="button" className="button" onClick={work.cancel}>
            Cancel
          </button>
        </div>
      );
    case 'table':
      return (
        <>
          <ColumnTable
            look={stage.look}
            plan={stage.plan}
            recalled={stage.recalled}
            onPlan={work.setPlan}
            onKind={work.lookAs}
          />
          <div className="buttons">
            <button
              type="button"
              className="button strong"
              disabled={stage.plan.kind === undefined && !stage.look.hasKinds}
              onClick={work.read}
            >
              Check the rows
            </button>
          </div>
        </>
      );
    case 'report':
      return (
        <>
          <ImportReportView report={stage.report} fileName={fileName} />
          {stage.report.good > 0 && (
            <div className="buttons">
              <button type="button" className="button strong" onClick={work.keep}>
                Keep {count.format(stage.report.good)} {stage.report.good === 1 ? 'part' : 'parts'}
              </button>
            </div>
          )}
        </>
      );
    case 'kept':
      return (
        <div className="file-working">
          <p role="status">
            {count.format(stage.count)} {stage.count === 1 ? 'part is' : 'parts are'} on your shelf.
          </p>
          <button type="button" className="button" onClick={work.undo}>
            Undo
          </button>
        </div>
      );
    case 'told':
      return <p role="status">{stage.words}</p>;
  }
}

function TakeOut({ own }: { readonly own: number }) {
  const [told, setTold] = useState('');
  const write = (format: 'json' | 'csv') =>
    void downloadOwnParts(format).then(
      (written) => setTold(`${count.format(written)} ${written === 1 ? 'part' : 'parts'} written.`),
      (error: unknown) => setTold(error instanceof Error ? error.message : 'The parts could not be written.'),
    );
  return (
    <section aria-label="Take parts out">
      <h3>Take your own parts out</h3>
      <div className="buttons">
        <button type="button" className="button" disabled={own === 0} onClick={() => write('csv')}>
          As a table (CSV)
        </button>
        <button type="button" className="button" disabled={own === 0} onClick={() => write('json')}>
          As a part file (JSON)
        </button>
        <span role="status">{told || (own === 0 ? 'There are none on your shelf yet.' : '')}</span>
      </div>
      <p className="quiet">
        The format is described by a{' '}
        <a href={`${import.meta.env.BASE_URL}part-file.schema.json`} target="_blank" rel="noreferrer">
          JSON Schema
        </a>
        .
      </p>
    </section>
  );
}
