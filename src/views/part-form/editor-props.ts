import type { Field } from './describe-schema';
import type { Draft } from './draft';

/** Messages by the path of the field they belong to. */
export type FaultMap = ReadonlyMap<string, string>;

/** What every editor of a field is given. */
export interface EditorProps<F extends Field = Field> {
  readonly field: F;
  readonly draft: Draft;
  /** 'fans.0.thickness'; empty for the whole part. */
  readonly path: string;
  readonly faults: FaultMap;
  readonly onChange: (draft: Draft) => void;
}
