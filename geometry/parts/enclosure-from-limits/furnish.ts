/** Riser, supply bay and what ends the supply's room, where no sheet says their place: usual places, all assumed. */
import { plugAndBend } from '../../standards/assembly-practice';
import { supplyForms } from '../../standards/supply-forms';
import { type Dimension, nominal } from '../dimension';
import type { EnclosureSpec } from '../enclosure/fields';
import { interiorOf } from '../enclosure/layout';
import type { PublishedLimits } from './limits';
import type { Reckoned } from './reckoning';
import { riserPlace } from './riser-place';

/** Room for the mains plug behind a supply that stands at the front, usual, no source. */
const MAINS_PLUG_MM = 36;
/** Free sheet round the face of a supply, usual, no source. */
const RIM_MM = 4;
/** A sheet that ends the room of the supply. */
const SHEET_MM = 1;

/** `endOfCard`: inner face of the top to what ends the room of a card above the supply. */
export function furnish(
  spec: EnclosureSpec,
  limits: PublishedLimits,
  endOfCard: Reckoned | undefined,
): EnclosureSpec {
  const riser = riserPlace(limits)?.riser;
  const bay = limits.supply === undefined ? undefined : bayOf(spec, limits, limits.supply);
  const blocks = [
    ...(bay ? endOfSupply(spec, limits, bay) : []),
    ...(endOfCard ? underCard(spec, limits, endOfCard) : []),
  ];
  const rails = railsOf(spec, limits);
  return {
    ...spec,
    ...(riser ? { riser } : {}),
    ...(rails.length > 0 ? { radiatorRails: rails } : {}),
    supplyBays: bay ? [bay] : [],
    ...(blocks.length > 0 ? { blocks } : {}),
  };
}

/** Rails in the middle of the wall, over the side of the components: their place is not published. */
function railsOf(
  spec: EnclosureSpec,
  { topRadiator, frontRadiator }: PublishedLimits,
): NonNullable<EnclosureSpec['radiatorRails']> {
  const { min, max } = interiorOf(spec);
  const middle = (axis: 0 | 1 | 2) => guess((Math.max(min[axis], 0) + max[axis]) / 2);
  return [
    ...(topRadiator
      ? [
          {
            id: 'top',
            rows: [topRadiator],
            face: 'top' as const,
            at: [middle(0), middle(2)] as [Dimension, Dimension],
          },
        ]
      : []),
    ...(frontRadiator
      ? [
          {
            id: 'front',
            rows: [frontRadiator],
            face: 'front' as const,
            at: [middle(1), middle(2)] as [Dimension, Dimension],
          },
        ]
      : []),
  ];
}

type Block = NonNullable<EnclosureSpec['blocks']>[number];

/** Depth of an ATX supply with its plugs, as far as a shroud over it is sure to reach, mm. */
const SHROUD_MM = 180;

/** A sheet where the room of the card ends: the supply itself, or a shroud over it. */
function underCard(spec: EnclosureSpec, { cardThickness }: PublishedLimits, endOfCard: Reckoned): Block[] {
  const { min, max } = interiorOf(spec);
  const at = max[1] - endOfCard.value;
  if (cardThickness === undefined || at - SHEET_MM <= min[1]) return [];
  const upper: Dimension = {
    value: Number(at.toFixed(4)),
    plusMinus: Number(endOfCard.plusMinus.toFixed(2)),
    source: 'sheet',
    note: 'largest card thickness ends here: supply or shroud',
  };
  return [
    {
      id: 'under the card',
      from: [0, { ...upper, value: Number((at - SHEET_MM).toFixed(4)) }, 0],
      to: [Math.min(max[0], SHROUD_MM), upper, max[2]],
    },
  ];
}

type Bay = EnclosureSpec['supplyBays'][number];

function bayOf(spec: EnclosureSpec, { layout }: PublishedLimits, form: Bay['form']): Bay {
  const { height, width } = supplyForms[form];
  const [tall, wide] = [height.value / 2 + RIM_MM, width.value / 2 + RIM_MM];
  const { min, max } = interiorOf(spec);
  const middle = (axis: 1 | 2) => (min[axis] + max[axis]) / 2;
  switch (layout) {
    case 'upright tower':
    case 'board turned a quarter':
      return { id: 'bottom', form, face: 'rear', at: [guess(tall), guess(wide)] };
    case 'cube with the board on a shelf':
      return { id: 'lower', form, face: 'rear', at: [guess(tall), guess(middle(2))] };
    case 'board lying flat':
      return {
        id: 'front',
        form,
        face: 'front',
        at: [guess(middle(1)), guess(max[2] - wide)],
        inset: MAINS_PLUG_MM,
      };
    case 'card behind the board on a riser':
      return {
        id: 'front',
        form,
        face: 'front',
        at: [guess(wide + 2 * RIM_MM), guess(max[2] / 2)],
        inset: MAINS_PLUG_MM,
        turn: 90,
      };
  }
}

function guess(value: number): Dimension {
  return {
    value: Number(value.toFixed(2)),
    plusMinus: 10,
    source: 'assumed',
    note: 'usual place, not published',
  };
}

/** A sheet across the supply's way, as far in as the published length reaches. */
function endOfSupply(
  spec: EnclosureSpec,
  { supplyLength, supplyLengthWithPlugs }: PublishedLimits,
  bay: Bay,
): Block[] {
  if (supplyLength === undefined || bay.face !== 'rear') return [];
  const [, whole] = plugAndBend.modularSupplyPlug.value;
  const beyond = supplyLengthWithPlugs ? 0 : whole;
  const at = nominal(supplyLength) + beyond;
  const { min, max } = interiorOf(spec);
  if (at + SHEET_MM > max[0]) return [];
  const { height, width } = supplyForms[bay.form];
  const [y, z] = [nominal(bay.at[0]), nominal(bay.at[1])];
  const [up, across] = [height.value / 2, width.value / 2];
  const within = (value: number, axis: 1 | 2) => Math.min(max[axis], Math.max(min[axis], value));
  const stated = (value: number): Dimension => ({
    value: Number(value.toFixed(4)),
    source: typeof supplyLength === 'number' ? 'sheet' : (supplyLength.source ?? 'sheet'),
    note: 'largest supply length',
  });
  return [
    {
      id: 'end of the supply room',
      from: [stated(at), within(y - up, 1), within(z - across, 2)],
      to: [stated(at + SHEET_MM), within(y + up, 1), within(z + across, 2)],
    },
  ];
}
