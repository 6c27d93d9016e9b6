/** One line for each topic. */
import type { Topic } from './assumption';
import { writeValue } from './banded';
import type { Estimate } from './estimate';

export function topicAnswer(topic: Exclude<Topic, 'brief'>, estimates: readonly Estimate[]): string {
  const find = (id: string) => estimates.find((estimate) => estimate.id === id);
  switch (topic) {
    case 'power':
      return powerAnswer(estimates, find);
    case 'heat':
      return heatAnswer(estimates);
    case 'air':
      return joined([find('air drawn in'), find('air pressure inside')]);
    case 'sound':
      return joined([find('sound at the ear')]);
    case 'mass':
      return joined([find('mass'), find('size walls')]);
    case 'money':
      return joined([find('money total') ?? find('money typed'), spareOf(find('money spare'))]);
  }
}

/** Said only when there is a number: without one the total has already told why. */
function spareOf(spare: Estimate | undefined): Estimate | undefined {
  return spare?.value === undefined ? undefined : spare;
}

function joined(estimates: readonly (Estimate | undefined)[]): string {
  return estimates.flatMap((estimate) => (estimate ? [estimate.sentence] : [])).join(' ');
}

function powerAnswer(estimates: readonly Estimate[], find: (id: string) => Estimate | undefined): string {
  const over = estimates.filter(({ standing }) => standing === 'not met');
  const sustained = find('power sustained');
  const limit = sustained?.limit;
  if (sustained?.value === undefined) return joined([sustained]);
  if (limit === undefined) return `${sustained.sentence} The plan has no supply.`;
  const [first] = over;
  if (first?.value !== undefined && first.limit)
    return `${first.title}: ${writeValue(first.value, first.unit)} ${first.unit} is more than ${writeValue(first.limit.value, first.unit)} ${first.unit}, ${first.limit.from}; an estimate.`;
  const load = Math.round((100 * sustained.value) / limit.value);
  return `${sustained.sentence} That is ${load} % of the rating of the supply.`;
}

function heatAnswer(estimates: readonly Estimate[]): string {
  const parts = estimates.filter(({ id }) => id.startsWith('heat of '));
  const over = parts.filter(({ standing }) => standing === 'not met');
  const room = ({ value, limit }: Estimate) => (value === undefined || !limit ? 0 : limit.value - value);
  const known = parts.filter(({ value }) => value !== undefined);
  const [nearest] = [...(over.length > 0 ? over : known)].sort((a, b) => room(a) - room(b));
  if (!nearest) return joined(parts.slice(0, 1));
  const limit = nearest.limit ? ` Limit ${writeValue(nearest.limit.value, '°C')} °C.` : '';
  return `${over.length > 0 ? 'Too hot.' : 'Hottest against its limit.'} ${nearest.sentence}${limit}`;
}
