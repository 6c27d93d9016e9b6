import { describe, expect, it } from 'vitest';
import { buildCard } from '../../../geometry/parts/card/card';
import { type CardSpec, cardSpecSchema } from '../../../geometry/parts/card/spec';
import { slotFrame } from '../../../geometry/parts/slot-frame';
import { boundsOfBoxes, boxFromCorners, transformBox } from '../../../geometry/space/oriented-box';
import { separateBoxes } from '../../../geometry/space/separation';
import { compose, invert } from '../../../geometry/space/transform';

/** A card of exactly the single-slot envelope of CEM 3.0 figure 9-1. */
const singleSlot: CardSpec = cardSpecSchema.parse({
  kind: 'card',
  maker: 'Generic',
  model: 'Single-slot envelope',
  interface: 'x16',
  length: 167.65,
  height: 111.15,
  thickness: 18.71,
  bracketSlots: 1,
});

/** Boxes of a card seated in a slot, in the board frame (x down, y forward, z out of the component side). */
function seated(spec: CardSpec, slot: number) {
  const model = buildCard(spec);
  const foot = model.feet[0];
  if (foot === undefined) throw new Error('a card has a foot');
  const pose = compose(slotFrame(slot), invert(foot.frame));
  return model.boxes.map((body) => ({ ...body, box: transformBox(pose, body.box) }));
}

const range = (boxes: ReturnType<typeof seated>, choose: (box: (typeof boxes)[number]) => boolean) => {
  const bounds = boundsOfBoxes(boxes.filter(choose).map((body) => body.box));
  if (bounds === undefined) throw new Error('nothing chosen');
  return bounds;
};

describe('a seated single-slot card (CEM 3.0, board frame)', () => {
  const centreline = 162.26; // slot 1: hole B 209.55 - 47.29, figure 9-20
  const boxes = seated(singleSlot, 1);
  const card = range(boxes, (body) => body.role === 'solid' && body.element !== 'card bracket');
  const bracket = (name: string) => range(boxes, (body) => body.name === name);

  it('occupies xs - 3.46 to xs + 15.26 (figure 9-1: 0.785 + 2.67 and 0.785 + 14.47)', () => {
    expect(card.min[0] - centreline).toBeCloseTo(-3.455, 1);
    expect(card.max[0] - centreline).toBeCloseTo(15.255, 1);
    expect(card.max[0] - card.min[0]).toBeCloseTo(18.71, 9);
  });

  it('has finger tips at z 3.40 and its top edge at 114.55 (figures 6-1 and 9-26)', () => {
    expect(card.min[2]).toBeCloseTo(3.4, 9);
    expect(card.max[2]).toBeCloseTo(114.55, 9);
  });

  it('has its lower edge at z 16.15 beside the fingers (figure 9-26)', () => {
    const body = range(
      boxes,
      (box) => box.role === 'solid' && !box.engages && box.element !== 'card bracket',
    );
    expect(body.min[2]).toBeCloseTo(16.15, 9);
  });

  it('has its rear edge at y -0.05 and its tip 167.65 beyond the bracket face', () => {
    expect(card.min[1]).toBeCloseTo(57.1 - 57.15, 2);
    expect(card.max[1]).toBeCloseTo(-1.09 + 167.65, 2);
  });

  it('has the bracket plate at y -1.95 to -1.09, in front of the rear panel at -2.11', () => {
    const plate = bracket('bracket plate');
    expect(plate.min[1]).toBeCloseTo(-1.95, 2);
    expect(plate.max[1]).toBeCloseTo(-1.09, 2);
    expect(plate.min[1]).toBeGreaterThan(-2.11);
  });

  it('has an 18.42 wide plate, 1.27 past the solder side (figure 9-5)', () => {
    const plate = bracket('bracket plate');
    expect(plate.max[0] - plate.min[0]).toBeCloseTo(18.42, 9);
    expect(plate.min[0] - centreline).toBeCloseTo(-2.055, 2);
  });

  it('has its wing plane at z 108.26 and the tongue tip 11.76 below the board surface', () => {
    expect(bracket('bracket wing').min[2]).toBeCloseTo(108.26, 9);
    expect(bracket('bracket tongue 1').min[2]).toBeCloseTo(-11.76, 9);
    expect(bracket('bracket plate').min[2]).toBeCloseTo(108.26 - 112.75, 9);
  });

  it('has its tongue at xs + 2.05 to + 12.25 (figure 9-5)', () => {
    const tongue = bracket('bracket tongue 1');
    expect(tongue.min[0] - centreline).toBeCloseTo(2.05, 1);
    expect(tongue.max[0] - centreline).toBeCloseTo(12.25, 1);
  });

  it('keeps within its slot: 1.61 to the envelope of the card in the next', () => {
    const next = range(
      seated(singleSlot, 2),
      (body) => body.role === 'solid' && body.element !== 'card bracket',
    );
    expect(next.min[0] - card.max[0]).toBeCloseTo(1.61, 2);
  });
});

describe('a card and the connectors of a board (CEM 3.0 figure 6-1: 7.5 wide, 11.25 high)', () => {
  // x16 connector of slot 2: x 182.58, y 42.60 to 131.60.
  const connector = boxFromCorners([182.58 - 3.75, 42.6, 0], [182.58 + 3.75, 131.6, 11.25]);
  const wide: CardSpec = { ...singleSlot, thickness: 59.36, bracketSlots: 3, length: 300 };

  it('enters its own connector with nothing but its fingers', () => {
    const inside = seated(wide, 2).filter(
      (body) => body.role === 'solid' && separateBoxes(body.box, connector).distance < 0,
    );
    expect(inside.map((body) => body.name)).toEqual(['contact fingers']);
  });

  it('passes over the connector of the slot its shroud covers', () => {
    const above = seated(wide, 1).filter(
      (body) => body.role === 'solid' && separateBoxes(body.box, connector).distance < 0,
    );
    expect(above).toEqual([]);
  });

  it('keeps the fingers of every edge within the length of its connector', () => {
    const lengths = { x1: 25, x4: 39, x8: 56, x16: 89 } as const;
    for (const [size, length] of Object.entries(lengths)) {
      const spec = cardSpecSchema.parse({ ...singleSlot, interface: size });
      const fingers = range(seated(spec, 2), (body) => body.name === 'contact fingers');
      expect(fingers.min[1]).toBeGreaterThan(42.6);
      expect(fingers.max[1]).toBeLessThan(42.6 + length);
    }
  });
});

describe('a low-profile card', () => {
  const low = buildCard(cardSpecSchema.parse({ ...singleSlot, height: 68.9, lowProfile: true }));

  it('has a 79.20 bracket with its wing 68.10 above the finger tips (CEM 3.0 figure 9-9)', () => {
    const plate = low.boxes.filter((box) => box.element === 'card bracket').map((box) => box.box);
    const bounds = boundsOfBoxes(plate);
    expect(bounds?.min[2]).toBeCloseTo(68.1 - 79.2, 9);
    // The sheet of the wing lies on its plane.
    expect(bounds?.max[2]).toBeCloseTo(68.1 + 0.86, 9);
  });
});
