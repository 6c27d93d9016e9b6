/** Every lead of the build: the length it takes with slack, the length there is, and which are too short. */
import type { AssemblySheet } from '../../../geometry';
import { Section } from './sheet-section';
import { isRouted, leadRemarks, spareWords, upperFirst } from './sheet-words';

export function LeadTable({ plan: { leads, channel } }: { readonly plan: AssemblySheet['leadList'] }) {
  if (leads.length === 0) return null;
  const short = leads.filter((lead) => isRouted(lead) && lead.spare < 0).length;
  return (
    <Section title="Leads">
      <p>
        {short === 0 ? 'No routed lead is too short.' : `${short} of ${leads.length} leads are too short.`}{' '}
        <span className="quiet">Lengths in mm.</span>
      </p>
      <table className="assembly-table">
        <thead>
          <tr>
            <th scope="col">Lead</th>
            <th scope="col" className="number">
              Needed, with slack
            </th>
            <th scope="col" className="number">
              Available
            </th>
            <th scope="col" className="number">
              Spare
            </th>
            <th scope="col">Remarks</th>
          </tr>
        </thead>
        <tbody>
          {leads.map((lead) => (
            <tr key={lead.id}>
              <th scope="row">{upperFirst(lead.name)}</th>
              <td className="number">{isRouted(lead) ? lead.needed.toFixed(0) : '–'}</td>
              <td className="number">{lead.available.toFixed(0)}</td>
              <td className={isRouted(lead) && lead.spare >= 0 ? 'number' : 'number short'}>
                {spareWords(lead)}
              </td>
              <td>{leadRemarks(lead)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {channel && <p>{channel.sentence}</p>}
    </Section>
  );
}
