import { inflateSync } from 'node:zlib';
import { expect, type Locator, type Page } from '@playwright/test';

/** An 8-bit RGB or RGBA picture, rows from the top. */
interface Picture {
  readonly width: number;
  readonly height: number;
  readonly channels: 3 | 4;
  readonly pixels: Uint8Array;
}

function paeth(left: number, up: number, upLeft: number): number {
  const guess = left + up - upLeft;
  const [a, b, c] = [Math.abs(guess - left), Math.abs(guess - up), Math.abs(guess - upLeft)];
  if (a <= b && a <= c) return left;
  return b <= c ? up : upLeft;
}

/** Undoes a row filter of the PNG specification (W3C, third edition, section 9.2). */
function unfilter(filter: number, left: number, up: number, upLeft: number): number {
  switch (filter) {
    case 1:
      return left;
    case 2:
      return up;
    case 3:
      return (left + up) >> 1;
    case 4:
      return paeth(left, up, upLeft);
    default:
      return 0;
  }
}

/** Reads a PNG as screenshots are: 8 bits a channel, colour with or without alpha, not interlaced. */
function readPng(file: Buffer): Picture {
  let width = 0;
  let height = 0;
  let channels: 3 | 4 = 4;
  const data: Buffer[] = [];
  for (let at = 8; at < file.length; ) {
    const length = file.readUInt32BE(at);
    const kind = file.toString('latin1', at + 4, at + 8);
    const body = file.subarray(at + 8, at + 8 + length);
    if (kind === 'IHDR') {
      width = body.readUInt32BE(0);
      height = body.readUInt32BE(4);
      const [depth, colour, , , interlace] = body.subarray(8);
      if (depth !== 8 || (colour !== 2 && colour !== 6) || interlace !== 0)
        throw new Error(`not a plain screenshot: depth ${depth}, colour type ${colour}`);
      channels = colour === 2 ? 3 : 4;
    }
    if (kind === 'IDAT') data.push(body);
    at += 12 + length;
  }
  const raw = inflateSync(Buffer.concat(data));
  const stride = width * channels;
  const pixels = new Uint8Array(height * stride);
  for (let y = 0; y < height; y++) {
    const filter = raw[y * (stride + 1)]!;
    for (let x = 0; x < stride; x++) {
      const here = y * stride + x;
      const left = x >= channels ? pixels[here - channels]! : 0;
      const up = y > 0 ? pixels[here - stride]! : 0;
      const upLeft = x >= channels && y > 0 ? pixels[here - stride - channels]! : 0;
      pixels[here] = raw[y * (stride + 1) + 1 + x]! + unfilter(filter, left, up, upLeft);
    }
  }
  return { width, height, channels, pixels };
}

/** How much is drawn in a picture. */
interface Drawn {
  /** Number of different colours. */
  readonly colours: number;
  /** Share of the pixels, 0 to 1, that do not have the commonest colour. */
  readonly inked: number;
}

/** Counts the colours of a screenshot. */
function measureDrawn(file: Buffer): Drawn {
  const { pixels, channels } = readPng(file);
  const counts = new Map<number, number>();
  for (let at = 0; at < pixels.length; at += channels) {
    const colour = (pixels[at]! << 16) | (pixels[at + 1]! << 8) | pixels[at + 2]!;
    counts.set(colour, (counts.get(colour) ?? 0) + 1);
  }
  const commonest = Math.max(...counts.values());
  return { colours: counts.size, inked: 1 - (commonest * channels) / pixels.length };
}

/** Interference in the Okabe-Ito set, as on the light sheet: #d55e00. */
const signalColour = [0xd5, 0x5e, 0x00] as const;

/** How an area in the signal colour looks. */
export interface SignalArea {
  /** Pixels in the full signal colour: hatch lines and outlines. */
  readonly lines: number;
  /** Most separate runs of such pixels in one row of the picture: a hatched area has one for each of its lines. */
  readonly stripes: number;
}

/** Looks for the colour of overlap in a picture of the canvas on the light sheet. */
function measureSignal(file: Buffer): SignalArea {
  const { width, height, channels, pixels } = readPng(file);
  const isSignal = (at: number) =>
    signalColour.every((value, channel) => Math.abs((pixels[at + channel] ?? 0) - value) < 40);
  let lines = 0;
  let stripes = 0;
  for (let y = 0; y < height; y++) {
    let runs = 0;
    let inside = false;
    for (let x = 0; x < width; x++) {
      const here = isSignal((y * width + x) * channels);
      if (here) lines += 1;
      if (here && !inside) runs += 1;
      inside = here;
    }
    stripes = Math.max(stripes, runs);
  }
  return { lines, stripes };
}

/**
 * Whether the canvas has a WebGL context that is not lost. Asking a canvas for a context of the kind it already
 * has gives that one back; a canvas without one would get a new one, so its drawing is checked apart.
 */
async function hasLiveContext(canvas: Locator): Promise<boolean> {
  return canvas.evaluate((element) => {
    if (!(element instanceof HTMLCanvasElement)) return false;
    const context = element.getContext('webgl2') ?? element.getContext('webgl');
    return context !== null && !context.isContextLost();
  });
}

/**
 * Hides what lies over the canvas, so that labels and toolbars cannot pass for a drawing. Made transparent, not
 * invisible: an element made invisible loses the focus.
 */
const canvasAlone = `
  body :not(canvas, :has(canvas)), ::backdrop { opacity: 0 !important; transition: none !important }
`;

/**
 * A picture of the canvas alone. The rule goes in as a sheet of the document and the caret is left as it is: both of
 * Playwright's own ways write a style element, which the page's content security policy refuses.
 */
async function photographCanvas(canvas: Locator): Promise<Buffer> {
  const rule = await canvas.evaluateHandle((_, text) => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(text);
    document.adoptedStyleSheets.push(sheet);
    return sheet;
  }, canvasAlone);
  try {
    return await canvas.screenshot({ caret: 'initial' });
  } finally {
    await rule.evaluate((sheet) => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((other) => other !== sheet);
    });
  }
}

/**
 * Asserts that the page's drawing is really there: a live WebGL context, and a picture that is not flat. Without
 * this, a test can pass on a blank canvas.
 *
 * @param canvas which canvas; the page's only one when left out
 * @param least what must be drawn at least: by default 8 colours, and 1 % of the area off the ground colour
 * @param patience how long the drawing may take to come, in milliseconds
 */
export async function expectDrawnCanvas(
  page: Page,
  canvas: Locator = page.locator('canvas'),
  least: Drawn = { colours: 8, inked: 0.01 },
  patience = 30_000,
): Promise<void> {
  await expect(canvas, 'one canvas').toHaveCount(1);
  await expect(canvas).toBeVisible();
  expect(await hasLiveContext(canvas), 'a WebGL context that is not lost').toBe(true);
  // Whole looks only: a slow machine must not cut one short and hide what it saw.
  const deadline = Date.now() + patience;
  let drawn = measureDrawn(await photographCanvas(canvas));
  while ((drawn.colours < least.colours || drawn.inked < least.inked) && Date.now() < deadline)
    drawn = measureDrawn(await photographCanvas(canvas));
  expect(drawn.colours, 'colours in the drawing').toBeGreaterThanOrEqual(least.colours);
  expect(drawn.inked, 'share of the canvas drawn on').toBeGreaterThanOrEqual(least.inked);
}

/** What the drawing, without the labels over it, shows in the colour of overlap. */
export async function readSignal(page: Page): Promise<SignalArea> {
  return measureSignal(await photographCanvas(page.locator('canvas')));
}
