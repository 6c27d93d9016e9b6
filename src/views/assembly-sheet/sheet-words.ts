/** Words of the sheet that are put together from its data. */
import type { AssemblySheet, RoutedLead, ServiceEntry } from '../../../geometry';

type StepScrew = AssemblySheet['steps'][number]['screws'][number];

export function inWords(names: readonly string[]): string {
  if (names.length < 2) return names[0] ?? '';
  return `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;
}

export function upperFirst(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

export function screwWords({ count, thread, tightness }: StepScrew): string {
  return `${count} × ${threadWords(thread)}${tightness === undefined ? '' : `: ${tightness}`}`;
}

/** 'M2 × 3', with the sign of a measure instead of a letter. */
export function threadWords(thread: string): string {
  return thread.replace(/(\d) x (\d)/g, '$1 × $2');
}

/** A lead was routed when there is a line for it; without one its needed length says nothing. */
export function isRouted({ points }: Pick<RoutedLead, 'points'>): boolean {
  return points.length > 0;
}

export function spareWords(lead: RoutedLead): string {
  if (!isRouted(lead)) return 'no way found';
  return lead.spare < 0 ? `▲ ${(-lead.spare).toFixed(0)} too short` : lead.spare.toFixed(0);
}

/** What else is to be known of a lead, in a few words; empty when nothing is. */
export function leadRemarks(lead: RoutedLead): string {
  const corners = lead.tight.length;
  const remarks = [
    ...(lead.pins.length > 0
      ? [`pinned in ${lead.pins.length} ${lead.pins.length === 1 ? 'place' : 'places'}`]
      : []),
    ...(lead.measured ? ['length measured'] : []),
    ...(lead.behindTray ? ['behind the tray'] : []),
    ...(lead.crossesFans.length > 0 ? ['crosses the air of a fan'] : []),
    ...(corners > 0
      ? [`${corners} ${corners === 1 ? 'bend' : 'bends'} under ${lead.bendRadius.toFixed(0)} mm`]
      : []),
    ...(lead.assumedEnd ? ['an end is assumed'] : []),
  ];
  return remarks.join('; ');
}

/** What comes out before a part: covers, plugs, parts. */
export function outFirst(entry: ServiceEntry, unitNames: Readonly<Record<string, string>>): string {
  if (!entry.possible) return 'no way out was found';
  const named = (units: readonly string[]) => units.map((unit) => unitNames[unit] ?? unit);
  const plugs = entry.plugs.length;
  const things = [
    ...named(entry.covers),
    ...(plugs > 0 ? [`${plugs} ${plugs === 1 ? 'plug' : 'plugs'}`] : []),
    ...named(entry.parts),
  ];
  return things.length === 0 ? 'nothing' : inWords(things);
}
