export type Graph = ReadonlyMap<string, ReadonlySet<string>>;

function shortestWayBack(graph: Graph, start: string): string[] | undefined {
  const cameFrom = new Map<string, string>();
  const queue = [start];
  for (const here of queue) {
    for (const next of [...(graph.get(here) ?? [])].sort()) {
      if (next === start) {
        const way = [start];
        for (let step: string | undefined = here; step !== undefined; step = cameFrom.get(step))
          way.unshift(step);
        return way;
      }
      if (cameFrom.has(next)) continue;
      cameFrom.set(next, here);
      queue.push(next);
    }
  }
  return undefined;
}

/**
 * Cycles of a directed graph, until every node that lies on one has been named. Each is the shortest way round
 * from its first node: ['a', 'b', 'a'].
 */
export function findCycles(graph: Graph): string[][] {
  const named = new Set<string>();
  const cycles: string[][] = [];
  for (const start of [...graph.keys()].sort()) {
    if (named.has(start)) continue;
    const way = shortestWayBack(graph, start);
    if (!way) continue;
    for (const member of way) named.add(member);
    cycles.push(way);
  }
  return cycles;
}
