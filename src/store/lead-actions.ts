/** What a person says of a lead: where it is pinned, how long it really is. Each one step of undo. */
import type { LeadWish, Plan } from '../../geometry';
import { editPlan } from './plan-store';
import { announce } from './status-store';

function setLead(plan: Plan, id: string, change: (lead: LeadWish) => LeadWish): Plan {
  const { [id]: before, ...others } = plan.leads ?? {};
  const lead = change(before ?? {});
  const isSaid = lead.length !== undefined || (lead.through?.length ?? 0) > 0;
  const leads = isSaid ? { ...others, [id]: lead } : others;
  const { leads: _, ...rest } = plan;
  return Object.keys(leads).length > 0 ? { ...rest, leads } : rest;
}

/** Points in the world, in order from supply, fan or front to the socket; none takes the pins away. */
export function pinLead(id: string, name: string, through: LeadWish['through']): void {
  editPlan((plan) =>
    setLead(plan, id, ({ through: _, ...lead }) => (through?.length ? { ...lead, through } : lead)),
  );
  announce(
    through?.length
      ? `${name} is led through ${through.length} pinned points.`
      : `${name} finds its own way.`,
  );
}

/** A measured length in mm; undefined goes back to the usual one. */
export function measureLead(id: string, name: string, length: number | undefined): void {
  editPlan((plan) =>
    setLead(plan, id, ({ length: _, ...lead }) => (length === undefined ? lead : { ...lead, length })),
  );
  announce(length === undefined ? `${name} has its usual length.` : `${name} is ${length} mm long.`);
}
