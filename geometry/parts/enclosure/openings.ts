/** What is cut out of the sheets for the board, its cards, supplies and fans, as boxes in the enclosure frame, mm. */

import { type Bounds, boundsOfBox, boxFromCorners, transformBox } from '../../space/oriented-box';
import { compose, type RigidTransform, transformDirection, translationBy } from '../../space/transform';
import type { Vector3 } from '../../space/vector';
import { bracketAcross, bracketPlateY, bracketSizes, bracketZ } from '../../standards/card-bracket';
import { chassisSlotOpening } from '../../standards/card-envelope';
import { bracketWingGap, supplyOpeningRim, tongueWellClearance } from '../../standards/enclosure-practice';
import { keyNotchY, slotConnectorSection, slotPitch } from '../../standards/expansion-slots';
import { rearApertureBox, rearPanelInnerFaceY } from '../../standards/rear-aperture';
import { supplyForms } from '../../standards/supply-forms';
import { nominalOr } from '../dimension';
import { slotFrame } from '../slot-frame';
import { facePlaneOf, seatFrame, sheetBehind } from './faces';
import type { EnclosureSpec } from './fields';
import { dominantAxis, type EnclosureLayout, type WallName, wallElements } from './layout';
import type { PlateWindow } from './plate-with-openings';

/** Cutters reach this far out past the rear panel's inner face: thicker walls than this are not made. */
const REACH_OUT_MM = 30;

const seat = slotConnectorSection.seatHeight.value;
const panelX = rearPanelInnerFaceY.value - keyNotchY.value;
const boardEdgeX = -keyNotchY.value;
const tongueX = bracketPlateY.cardSideFace.value - keyNotchY.value;
const openingBottom = chassisSlotOpening.fullHeightZ.value[0] - seat;
const wingZ = bracketZ.wing.value - seat;
const wingTolerance = bracketZ.wing.plusMinus ?? 0;

/** Everything that pierces whichever sheet it crosses. */
export function cuttersOf(spec: EnclosureSpec, layout: EnclosureLayout): Bounds[] {
  const rows = slotRowsOf(spec, layout);
  return [
    apertureCutter(layout),
    ...rows.flatMap((row) => [
      ...row.frames.flatMap((slot) => slotCutters(slot, row.brackets)),
      wingGap(row),
    ]),
    ...supplyOpenings(spec, layout),
  ];
}

/** Slots beside one another, first to last. */
interface SlotRow {
  readonly name: string;
  readonly frames: readonly [RigidTransform, ...RigidTransform[]];
  readonly brackets: BracketHeights;
}

/** Heights above the seat of the finger tips (card z). */
interface BracketHeights {
  readonly openingTop: number;
  readonly wing: number;
  /** The inside of the enclosure ends here. */
  readonly reach: number;
}

/** The slots of the board, and those of a card held by a riser. */
export function slotRowsOf(spec: EnclosureSpec, layout: EnclosureLayout): SlotRow[] {
  const row = (name: string, first: RigidTransform, slots: number): SlotRow => {
    const more = Array.from({ length: slots - 1 }, (_, i) =>
      compose(first, translationBy([0, -(i + 1) * slotPitch.value, 0])),
    );
    return { name, frames: [first, ...more], brackets: bracketHeights(reachAbove(first, layout.interior)) };
  };
  const { slots } = spec.board;
  return [
    ...(slots > 0 ? [row('slot cover', compose(layout.board, slotFrame(1)), slots)] : []),
    ...(spec.riser ? [row('riser slot cover', seatFrame(layout, spec.riser), spec.riser.slots)] : []),
  ];
}

/** Openings are for full-height brackets wherever those fit, else for low-profile ones (CEM 3.0 figure 9-23). */
function bracketHeights(reach: number): BracketHeights {
  if (wingZ + bracketSizes.sheetThickness.value <= reach) {
    return { openingTop: chassisSlotOpening.fullHeightZ.value[1] - seat, wing: wingZ, reach };
  }
  const openingTop = openingBottom + chassisSlotOpening.lowProfileHeight.value;
  return { openingTop, wing: bracketSizes.lowProfileWingAboveFingerTips.value, reach };
}

/** From the seat of a card to the wall it is lifted towards. */
function reachAbove(slot: RigidTransform, interior: Bounds): number {
  const up = transformDirection(slot, [0, 0, 1]);
  const axis = dominantAxis(up);
  const from = slot.translation[axis];
  return up[axis] > 0 ? interior.max[axis] - from : from - interior.min[axis];
}

/** The opening for the board's rear connectors: ATX 2.2 figure 4. */
export function apertureCutter(layout: EnclosureLayout): Bounds {
  const { x, y, z } = rearApertureBox.value;
  return boundsIn(layout.board, [x[0], y[0] - REACH_OUT_MM, z[0]], [x[1], 0, z[1]]);
}

/** The connector opening of CEM 3.0 figure 9-22 and the well the bracket's tongue goes into. */
function slotCutters(slot: RigidTransform, { openingTop, reach }: BracketHeights): Bounds[] {
  const opening = chassisSlotOpening.across.value;
  const tongue = bracketAcross.tongue.value;
  const clear = tongueWellClearance.value;
  // Card y runs to the solder side, published widths to the component side: hence the minus signs.
  return [
    boundsIn(
      slot,
      [panelX - REACH_OUT_MM, -opening[0], openingBottom],
      [boardEdgeX, -opening[1], Math.min(openingTop, reach)],
    ),
    boundsIn(
      slot,
      [panelX, -tongue[0] + clear, bracketZ.tongueTip.value - seat - clear],
      [Math.max(boardEdgeX, tongueX + clear), -tongue[1] - clear, openingBottom],
    ),
  ];
}

/** Open strip above the flange that the brackets are screwed to. */
function wingGap(row: SlotRow): Bounds {
  const { wing, reach } = row.brackets;
  return acrossWings(row, wing - wingTolerance, Math.min(wing + bracketWingGap.height.value, reach));
}

function acrossWings(row: SlotRow, fromZ: number, toZ: number): Bounds {
  const side = bracketWingGap.side.value;
  const [from, to] = bracketAcross.wing.value;
  const last = (row.frames.length - 1) * slotPitch.value;
  return boundsIn(
    row.frames[0],
    [panelX - REACH_OUT_MM, -(from - side), fromZ],
    [boardEdgeX, -(to + last + side), toZ],
  );
}

/**
 * Sheet of one wall between the strip and the panel the cards are lifted towards: it comes off with the slot covers,
 * or no bracket could be lifted out.
 */
export function slotCoversOf(spec: EnclosureSpec, layout: EnclosureLayout, wall: WallName): PlateWindow[] {
  const plane = facePlaneOf(layout, wall);
  return slotRowsOf(spec, layout)
    .filter(({ frames: [first] }) => {
      const forward = transformDirection(first, [1, 0, 0]);
      return dominantAxis(forward) === plane.axis && forward[plane.axis] * plane.inwards > 0;
    })
    .filter(({ brackets }) => brackets.wing + bracketWingGap.height.value < brackets.reach)
    .map((row) => ({
      name: row.name,
      element: wallElements[wall],
      material: spec.walls?.[wall]?.material ?? 'steel',
      removable: true,
      bounds: acrossWings(row, row.brackets.wing + bracketWingGap.height.value, row.brackets.reach),
    }));
}

/** The face of a supply stays open but for the rim its screws sit in. Seats on brackets need none. */
function supplyOpenings(spec: EnclosureSpec, layout: EnclosureLayout): Bounds[] {
  return spec.supplyBays
    .filter((bay) => nominalOr(bay.inset, 0) === 0)
    .map((bay) => {
      const form = supplyForms[bay.form];
      const up = form.height.value / 2 - supplyOpeningRim.value;
      const right = form.width.value / 2 - supplyOpeningRim.value;
      const depth = facePlaneOf(layout, bay.face).thickness;
      return boundsIn(seatFrame(layout, bay), [-up, -right, -depth], [up, right, 0]);
    });
}

/** Grilles of the fan seats, then the vents: mesh set into the sheet, so nothing but air passes. */
export function ventWindowsOf(spec: EnclosureSpec, layout: EnclosureLayout, face: string): PlateWindow[] {
  const onFace = (place: { face: string }) => place.face.replace(' back', '') === face || place.face === face;
  const grilles = (spec.fanSeats ?? [])
    .filter((seatSpec) => onFace(seatSpec) && nominalOr(seatSpec.inset, 0) === 0)
    .map((seatSpec): PlateWindow => {
      const half = Math.max(...seatSpec.sizes) / 2;
      const { thickness } = facePlaneOf(layout, seatSpec.face);
      return {
        ...mesh(`grille of ${seatSpec.id}`),
        bounds: boundsIn(
          seatFrame(layout, { ...seatSpec, turn: 0 }),
          [-half, -half, -thickness],
          [half, half, 0],
        ),
      };
    });
  const vents = (spec.vents ?? []).filter(onFace).map((vent, index): PlateWindow => {
    const at = (corner: typeof vent.from): [number, number] => [
      nominalOr(corner[0], 0),
      nominalOr(corner[1], 0),
    ];
    return {
      ...mesh(`${face} vent ${index + 1}`),
      bounds: sheetBehind(facePlaneOf(layout, vent.face), at(vent.from), at(vent.to)),
    };
  });
  return [...grilles, ...vents];
}

function mesh(name: string) {
  return { name, element: 'vent', material: 'mesh' } as const;
}

/** Bounds in the enclosure of a box given by two corners in an inner frame whose axes lie along the enclosure's. */
function boundsIn(frame: RigidTransform, from: Vector3, to: Vector3): Bounds {
  return boundsOfBox(transformBox(frame, boxFromCorners(from, to)));
}
