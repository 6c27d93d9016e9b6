/** What to have at hand before beginning, and what comes out for each part later. */
import type { AssemblySheet, ServiceEntry } from '../../../geometry';
import { Section } from './sheet-section';
import { outFirst, threadWords, upperFirst } from './sheet-words';

export function ScrewList({ screws }: { readonly screws: AssemblySheet['screwList'] }) {
  return (
    <Section title="Screws">
      {screws.length === 0 ? (
        <p>None.</p>
      ) : (
        <table className="assembly-table">
          <thead>
            <tr>
              <th scope="col">For</th>
              <th scope="col">Thread</th>
              <th scope="col" className="number">
                Count
              </th>
            </tr>
          </thead>
          <tbody>
            {screws.map(({ use, thread, count }) => (
              <tr key={use}>
                <th scope="row">{upperFirst(use)}</th>
                <td>{threadWords(thread)}</td>
                <td className="number">{count}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </Section>
  );
}

export function ToolList({ tools }: { readonly tools: readonly string[] }) {
  return (
    <Section title="Tools">
      {tools.length === 0 ? (
        <p>Bare hands.</p>
      ) : (
        <ul>
          {tools.map((tool) => (
            <li key={tool}>{upperFirst(tool)}</li>
          ))}
        </ul>
      )}
    </Section>
  );
}

interface ServiceTableProps {
  readonly service: readonly ServiceEntry[];
  readonly unitNames: Readonly<Record<string, string>>;
}

export function ServiceTable({ service, unitNames }: ServiceTableProps) {
  if (service.length === 0) return null;
  return (
    <Section title="To change a part later">
      <table className="assembly-table">
        <thead>
          <tr>
            <th scope="col">To change</th>
            <th scope="col">Comes out first</th>
            <th scope="col" className="number">
              Parts
            </th>
          </tr>
        </thead>
        <tbody>
          {service.map((entry) => (
            <tr key={entry.unit}>
              <th scope="row">{upperFirst(entry.name)}</th>
              <td className={entry.possible ? undefined : 'fault'}>
                {upperFirst(outFirst(entry, unitNames))}
              </td>
              <td className="number">
                {entry.possible ? `${entry.exact ? '' : 'at most '}${entry.count}` : '–'}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Section>
  );
}
