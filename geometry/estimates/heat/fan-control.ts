/** How fast fans turn: boards and cards follow temperatures, supplies their load. Shares of top speed. */

/** Share at which a falling temperature curve and a rising fan curve meet. */
export function settledShare(
  temperatureAt: (share: number) => number,
  curve: { least: number; most: number; slowAt: number; fullAt: number },
): number {
  const { least, most, slowAt, fullAt } = curve;
  const asked = (celsius: number) =>
    least + (1 - least) * Math.min(Math.max((celsius - slowAt) / (fullAt - slowAt), 0), 1);
  return root((share) => asked(temperatureAt(share)) - share, Math.min(least, most), most);
}

/** Least share that holds a temperature. */
export function holdingShare(
  temperatureAt: (share: number) => number,
  target: number,
  least: number,
): number {
  return root((share) => temperatureAt(share) - target, least, 1);
}

const HALVINGS = 30;

/** Where a falling function crosses zero, or the nearer end. */
function root(falling: (share: number) => number, low: number, high: number): number {
  if (falling(low) <= 0) return low;
  if (falling(high) >= 0) return high;
  let [from, to] = [low, high];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (from + to) / 2;
    if (falling(middle) > 0) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
}
