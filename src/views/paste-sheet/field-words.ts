/** What the fields a sheet can fill are called, as the form calls them. */

const titles: Readonly<Record<string, string>> = {
  maker: 'Maker',
  model: 'Model',
  mass: 'Mass',
  'power.edge': 'Sockets face the edge',
  length: 'Length',
  width: 'Width',
  height: 'Height',
  depth: 'Depth',
  thickness: 'Thickness',
  form: 'Form',
  style: 'Style',
  interface: 'Edge connector',
  bracketSlots: 'Slots of the bracket',
  sustained: 'Sustained power',
  peak: 'Peak power',
  watts: 'Power',
  class: 'Power class',
  limit: 'Highest temperature',
  sound: 'Sound',
  speed: 'Top speed',
  flow: 'Free flow',
  pressure: 'Shut-off pressure',
  size: 'Frame',
  row: 'Fan row',
  grade: 'Efficiency level',
  modular: 'Modular leads',
  capacity: 'Capacity',
  socket: 'Hole pattern',
  pumpWatts: 'Power of the pump',
  pumpSound: 'Sound of the pump',
  'fans.count': 'Number of fans',
  'fans.diameter': 'Diameter of the fans',
  'fan.count': 'Number of fans',
  'fan.size': 'Fan',
  'fan.thickness': 'Thickness of the fan',
  'eachFan.speed': 'Top speed of the fan',
  'eachFan.flow': 'Free flow of the fan',
  'eachFan.pressure': 'Pressure of the fan',
  'eachFan.sound': 'Sound of the fan',
  'tubes.length': 'Length of the tubes',
  'tubes.diameter': 'Diameter of the tubes',
  'memory.count': 'Memory slots',
  'memory.form': 'Memory module',
  'board.slots': 'Slot openings',
  'interior.behindTray': 'Behind the tray',
  'limits.coolerHeight': 'Highest cooler',
  'limits.cardLength': 'Longest card',
  'limits.cardLengthWithFrontFan': 'Longest card with a front fan',
  'limits.supplyDepth': 'Longest supply',
  'limits.outerLength': 'Outer length',
  'limits.outerWidth': 'Outer width',
  'limits.outerHeight': 'Outer height',
};

/** 'power.card 8-pin' is 'Sockets, card 8-pin'. */
export function fieldTitle(path: string): string {
  const known = titles[path];
  if (known !== undefined) return known;
  const [group, ...rest] = path.split('.');
  const name = rest.join('.');
  if (group === 'power') return `Sockets, ${name}`;
  if (group === 'plugs') return `Plugs, ${name}`;
  if (group === 'patterns') return `Hole pattern ${name}`;
  return path;
}

export function valueText(value: number | string | boolean, unit?: string, plusMinus?: number): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  const shown = typeof value === 'number' ? String(Number(value.toFixed(2))) : value;
  const band = plusMinus === undefined ? '' : ` ± ${Number(plusMinus.toFixed(2))}`;
  return `${shown}${band}${unit ? ` ${unit}` : ''}`;
}
