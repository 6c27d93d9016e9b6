/** The steps of bringing a part file in, as a screen goes through them. */
import { useEffect, useRef, useState } from 'react';
import type { PartKind } from '../../../geometry';
import { ImportClient } from '../../shelf/part-files/import-client';
import type { ImportReply, ImportReport, ImportRequest } from '../../shelf/part-files/import-request';
import type { TableLook } from '../../shelf/part-files/read-table';
import { recallColumns, rememberColumns } from '../../shelf/part-files/remembered-columns';
import type { TablePlan } from '../../shelf/part-files/table-rows';

type Work = 'looking' | 'reading' | 'keeping' | 'undoing';

export type ImportStage =
  | { readonly at: 'idle' }
  | { readonly at: 'working'; readonly work: Work; readonly share: number }
  | {
      readonly at: 'table';
      readonly look: Omit<TableLook, 'plan'>;
      readonly plan: TablePlan;
      readonly recalled: boolean;
    }
  | { readonly at: 'report'; readonly report: ImportReport }
  | { readonly at: 'kept'; readonly count: number }
  | { readonly at: 'told'; readonly words: string };

export interface Import {
  readonly stage: ImportStage;
  readonly fileName: string;
  readonly open: (file: File, kind?: PartKind) => void;
  /** Looks at the same file as a table of this kind. */
  readonly lookAs: (kind: PartKind) => void;
  readonly setPlan: (plan: TablePlan) => void;
  readonly read: () => void;
  readonly keep: () => void;
  readonly undo: () => void;
  readonly cancel: () => void;
}

export function useImport(): Import {
  const [stage, setStage] = useState<ImportStage>({ at: 'idle' });
  const [file, setFile] = useState<File>();
  const client = useRef<ImportClient>(undefined);
  useEffect(() => () => client.current?.close(), []);

  const ask = async (work: Work, request: ImportRequest) => {
    setStage({ at: 'working', work, share: 0 });
    client.current ??= new ImportClient((share) =>
      setStage((before) => (before.at === 'working' ? { ...before, share } : before)),
    );
    const asked = client.current;
    const reply = await asked.ask(request);
    const next = await stageAfter(reply);
    // Called off meanwhile: its own words stand.
    if (client.current === asked) setStage(next);
  };
  const look = (one: File, kind: PartKind | undefined) => {
    setFile(one);
    void ask('looking', { type: 'look', file: one, name: one.name, kind });
  };
  return {
    stage,
    fileName: file?.name ?? '',
    open: look,
    lookAs: (kind) => {
      if (file) look(file, kind);
    },
    setPlan: (plan) => setStage((before) => (before.at === 'table' ? { ...before, plan } : before)),
    read: () => {
      if (stage.at !== 'table') return;
      void rememberColumns(stage.plan.columns);
      void ask('reading', { type: 'read', plan: stage.plan, hasUnitRow: stage.look.hasUnitRow });
    },
    keep: () => void ask('keeping', { type: 'keep' }),
    undo: () => void ask('undoing', { type: 'undo' }),
    cancel: () => {
      const called = client.current;
      client.current = undefined;
      called?.close();
      setStage({ at: 'told', words: 'Called off. Nothing was changed.' });
    },
  };
}

async function stageAfter(reply: ImportReply): Promise<ImportStage> {
  switch (reply.type) {
    case 'table': {
      const columns = await recallColumns(reply.plan.columns);
      const plan = columns ? { ...reply.plan, columns } : reply.plan;
      return { at: 'table', look: reply.look, plan, recalled: columns !== undefined };
    }
    case 'report':
      return { at: 'report', report: reply.report };
    case 'kept':
      return { at: 'kept', count: reply.count };
    case 'undone':
      return { at: 'told', words: `${reply.count} parts taken off the shelf again.` };
    case 'failed':
      return { at: 'told', words: reply.message };
    default:
      return { at: 'idle' };
  }
}
