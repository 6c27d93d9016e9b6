import type { ExamplePlan } from './example-plans';

/** Clearances of the example plans: through the mounting tree, an adapter plate, a riser, fans raised over memory. */
export const watched: readonly (readonly [ExamplePlan, string])[] = [
  ['demo', 'cooler to side panel/cooler/enclosure'],
  ['demo', 'cooler to board/cooler/board'],
  ['demo', 'supply plugs to what is in front/supply/fan-2'],
  ['demo', 'cooler to memory/cooler/memory'],
  ['faults', 'card plug to side panel/card/enclosure'],
  ['faults', 'cooler to other parts/cooler/fan-3'],
  ['faults', 'supply plugs to what is in front/supply/fan-2'],
  ['small', 'supply to card/supply/card'],
  ['small', 'card plug to side panel/card/enclosure'],
];

/** Clearances in which another face takes over within the band, or the binding faces may slip past each other. */
export const kinked: readonly (readonly [ExamplePlan, string])[] = [
  ['demo', 'card tip/card/fan'],
  ['demo', 'card to what lies below/card/supply'],
  ['demo', 'supply to other parts/supply/board'],
  ['small', 'cooler to top/cooler/enclosure'],
  ['small', 'supply plugs to what is in front/supply/board'],
];
