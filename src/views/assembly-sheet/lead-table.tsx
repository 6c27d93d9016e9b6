/** Every lead of the build: the length it takes with slack, the length there is, and which are too short. */
import { Fragment, useState } from 'react';
import type { AssemblySheet, LeadWaypoint } from '../../../geometry';
import { LeadEditor } from './lead-editor';
import { Section } from './sheet-section';
import { isRouted, leadRemarks, spareWords, upperFirst } from './sheet-words';

interface LeadTableProps {
  readonly plan: AssemblySheet['leadList'];
  readonly waypoints: readonly LeadWaypoint[];
}

export function LeadTable({ plan: { leads, channel }, waypoints }: LeadTableProps) {
  const [edited, setEdited] = useState<string>();
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
            <th scope="col" className="on-screen">
              <span className="unseen">By hand</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {leads.map((lead) => (
            <Fragment key={lead.id}>
              <tr data-short={isRouted(lead) && lead.spare < 0}>
                <th scope="row">{upperFirst(lead.name)}</th>
                <td className="number">{isRouted(lead) ? lead.needed.toFixed(0) : '–'}</td>
                <td className="number">{lead.available.toFixed(0)}</td>
                <td className={isRouted(lead) && lead.spare >= 0 ? 'number' : 'number short'}>
                  {spareWords(lead)}
                </td>
                <td>{leadRemarks(lead)}</td>
                <td className="on-screen">
                  <button
                    type="button"
                    className="button plain small"
                    aria-expanded={edited === lead.id}
                    aria-label={`Pin or measure ${lead.name}`}
                    onClick={() => setEdited(edited === lead.id ? undefined : lead.id)}
                  >
                    Pin
                  </button>
                </td>
              </tr>
              {edited === lead.id && (
                <tr className="on-screen">
                  <td colSpan={6}>
                    <LeadEditor lead={lead} waypoints={waypoints} />
                  </td>
                </tr>
              )}
            </Fragment>
          ))}
        </tbody>
      </table>
      {channel && <p>{channel.sentence}</p>}
    </Section>
  );
}
