/** The drawing's colours, read from the page's tokens so that the sheet and the page are always of one kind. */

/** Red, green, blue from 0 to 1, as the screen shows them. */
export type Rgb = readonly [number, number, number];

/** Token of each colour, and what is used when the page has none. */
const tokens = {
  paper: ['--paper', '#f4f1e8'],
  sheet: ['--sheet', '#fbf9f3'],
  ink: ['--ink', '#1d2a33'],
  quietInk: ['--quiet-ink', '#56626a'],
  rule: ['--rule', '#c9c4b4'],
  clearance: ['--clearance', '#009e73'],
  transition: ['--transition', '#e69f00'],
  interference: ['--interference', '#d55e00'],
  reserved: ['--reserved', '#cc79a7'],
  selection: ['--selection', '#0072b2'],
} as const;

type ColourName = keyof typeof tokens;
export type Palette = Readonly<Record<ColourName, Rgb>>;

/** Reads the tokens where `host` stands in the page. */
export function readPalette(host: HTMLElement): Palette {
  // Only a computed colour is resolved: a custom property is the text its author wrote.
  const probe = document.createElement('span');
  probe.hidden = true;
  host.append(probe);
  const read = (name: ColourName): Rgb => {
    const [token, otherwise] = tokens[name];
    probe.style.color = `var(${token}, ${otherwise})`;
    return parseComputedColour(getComputedStyle(probe).color) ?? [0, 0, 0];
  };
  const palette = {
    paper: read('paper'),
    sheet: read('sheet'),
    ink: read('ink'),
    quietInk: read('quietInk'),
    rule: read('rule'),
    clearance: read('clearance'),
    transition: read('transition'),
    interference: read('interference'),
    reserved: read('reserved'),
    selection: read('selection'),
  };
  probe.remove();
  return palette;
}

/** The colours of the light sheet, whichever the page shows. */
export function readLightPalette(host: HTMLElement): Palette {
  const { dataset } = document.documentElement;
  const before = dataset.sheet;
  dataset.sheet = 'light';
  const palette = readPalette(host);
  if (before === undefined) delete dataset.sheet;
  else dataset.sheet = before;
  return palette;
}

/** 'rgb(29, 42, 51)', 'rgb(29 42 51 / 1)' or '#1d2a33'; undefined for anything else. */
export function parseComputedColour(text: string): Rgb | undefined {
  const hex = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(text);
  if (hex) return channels(hex, (digits) => Number.parseInt(digits, 16));
  const rgb = /^rgba?\(\s*([\d.]+)[\s,]+([\d.]+)[\s,]+([\d.]+)/.exec(text);
  return rgb ? channels(rgb, Number) : undefined;
}

function channels(match: RegExpExecArray, read: (text: string) => number): Rgb {
  const [, red = '0', green = '0', blue = '0'] = match;
  return [read(red) / 255, read(green) / 255, read(blue) / 255];
}

/** Calls when the page changes between its light and its dark sheet; returns how to stop. */
export function watchTheme(changed: () => void): () => void {
  const observer = new MutationObserver(changed);
  observer.observe(document.documentElement, { attributes: true });
  const preference = matchMedia('(prefers-color-scheme: dark)');
  preference.addEventListener('change', changed);
  return () => {
    observer.disconnect();
    preference.removeEventListener('change', changed);
  };
}
