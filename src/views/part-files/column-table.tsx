/** Which column is which field: matched by the words of the header, and changeable. */
import { useMemo, useState } from 'react';
import { kindName, type PartKind, partKinds } from '../../../geometry';
import type { TableLook } from '../../shelf/part-files/read-table';
import { leavesOf } from '../../shelf/part-files/spec-leaves';
import type { Column } from '../../shelf/part-files/table-columns';
import type { TablePlan } from '../../shelf/part-files/table-rows';

interface ColumnTableProps {
  readonly look: Omit<TableLook, 'plan'>;
  readonly plan: TablePlan;
  readonly recalled: boolean;
  readonly onPlan: (plan: TablePlan) => void;
  readonly onKind: (kind: PartKind) => void;
}

const UNITS = [
  'mm',
  'cm',
  'in',
  'g',
  'kg',
  'lb',
  'oz',
  'W',
  'rpm',
  'm³/h',
  'CFM',
  'Pa',
  'mmH2O',
  'dB',
  'GB',
  'TB',
  '°C',
];
/** Places in a list that a table may have columns for. */
const PLACES = [0, 1, 2, 3];

export function ColumnTable({ look, plan, recalled, onPlan, onKind }: ColumnTableProps) {
  const { columns, kind } = plan;
  const matched = columns.filter(({ path }) => path !== undefined).length;
  const choices = useMemo(() => fieldChoices(kind), [kind]);
  const change = (index: number, column: Column) => onPlan({ ...plan, columns: columns.with(index, column) });
  return (
    <div className="file-columns">
      <p>
        {matched} of {columns.length} columns are matched
        {recalled ? ', as you matched this table last time' : ''}.
        {look.hasUnitRow && ' The second line was taken for units.'}
      </p>
      <div className="file-choices">
        {!look.hasKinds && (
          <label className="labelled">
            <span>Every row is a</span>
            <select
              className="select"
              value={kind ?? ''}
              onChange={(event) => {
                const next = partKinds.find((one) => one === event.target.value);
                if (next) onKind(next);
              }}
            >
              {kind === undefined && <option value="">choose a kind</option>}
              {partKinds.map((one) => (
                <option key={one} value={one}>
                  {kindName(one)}
                </option>
              ))}
            </select>
          </label>
        )}
        <label className="labelled">
          <span>Tenths are parted by</span>
          <select
            className="select"
            value={plan.mark ?? ''}
            onChange={(event) => onPlan({ ...plan, mark: markOf(event.target.value) })}
          >
            <option value="">not told: doubtful numbers are refused</option>
            <option value=".">a point: 12.5</option>
            <option value=",">a comma: 12,5</option>
          </select>
        </label>
      </div>
      <div className="file-scroll">
        <table className="file-table">
          <thead>
            <tr>
              <th scope="col">Column</th>
              <th scope="col">First row</th>
              <th scope="col">Field</th>
              <th scope="col">Unit</th>
            </tr>
          </thead>
          <tbody>
            {columns.map((column, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: columns are known by their place; headers may be alike.
              <tr key={index}>
                <th scope="row">{column.header || `column ${index + 1}`}</th>
                <td>{look.sample[0]?.[index]?.slice(0, 40)}</td>
                <td>
                  <FieldSelect column={column} choices={choices} onChange={(next) => change(index, next)} />
                </td>
                <td>
                  <select
                    className="select"
                    aria-label={`Unit of ${column.header}`}
                    value={column.unit ?? ''}
                    onChange={(event) => change(index, { ...column, unit: event.target.value || undefined })}
                  >
                    <option value="">the field’s own</option>
                    {column.unit !== undefined && !UNITS.includes(column.unit) && (
                      <option>{column.unit}</option>
                    )}
                    {UNITS.map((unit) => (
                      <option key={unit}>{unit}</option>
                    ))}
                  </select>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </div>
  );
}

interface FieldSelectProps {
  readonly column: Column;
  readonly choices: ReadonlyMap<string, string>;
  readonly onChange: (column: Column) => void;
}

/** Hundreds of fields for hundreds of columns are too much for a page: they are listed where a person looks. */
function FieldSelect({ column, choices, onChange }: FieldSelectProps) {
  const [isListed, setListed] = useState(false);
  const { path, header } = column;
  const list = () => setListed(true);
  return (
    <select
      className="select"
      aria-label={`Field of ${header}`}
      value={path ?? ''}
      onFocus={list}
      onPointerEnter={list}
      onChange={(event) => onChange({ ...column, path: event.target.value || undefined })}
    >
      <option value="">not used</option>
      {path !== undefined && !(isListed && choices.has(path)) && (
        <option value={path}>{choices.get(path) ?? path}</option>
      )}
      {isListed &&
        [...choices].map(([one, title]) => (
          <option key={one} value={one}>
            {title}
          </option>
        ))}
    </select>
  );
}

function markOf(text: string): TablePlan['mark'] {
  return text === '.' || text === ',' ? text : undefined;
}

/** Titles by path; of lists the first few places. */
function fieldChoices(kind: PartKind | undefined): ReadonlyMap<string, string> {
  const choices = new Map<string, string>([['kind', 'Kind of part']]);
  for (const one of kind === undefined ? partKinds : [kind]) {
    for (const { path, title } of leavesOf(one).values()) {
      if (path === 'kind') continue;
      if (!path.includes('*')) choices.set(path, title);
      else if (path.split('*').length === 2)
        for (const place of PLACES) choices.set(path.replace('*', String(place)), `${title}, ${place + 1}`);
    }
  }
  return choices;
}
