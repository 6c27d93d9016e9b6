/** Draws one field of a form, and the fields inside it. */
import type { Field } from './describe-schema';
import type { Draft } from './draft';
import { GroupEditor } from './group-editor';
import { ListEditor } from './list-editor';
import { QuantityEditor } from './quantity-editor';
import { ScalarEditor } from './scalar-editor';
import { TupleEditor } from './tuple-editor';

/** Messages by the path of the field they belong to. */
export type FaultMap = ReadonlyMap<string, string>;

export interface EditorProps<F extends Field = Field> {
  readonly field: F;
  readonly draft: Draft;
  readonly path: string;
  readonly faults: FaultMap;
  readonly onChange: (draft: Draft) => void;
}

export function FieldEditor(props: EditorProps) {
  const { field } = props;
  switch (field.type) {
    case 'constant':
      return null;
    case 'quantity':
      return <QuantityEditor {...props} field={field} />;
    case 'object':
    case 'variants':
      return <GroupEditor {...props} field={field} />;
    case 'list':
      return <ListEditor {...props} field={field} />;
    case 'tuple':
      return <TupleEditor {...props} field={field} />;
    default:
      return <ScalarEditor {...props} field={field} />;
  }
}
