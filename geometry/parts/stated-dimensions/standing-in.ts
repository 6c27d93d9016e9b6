/**
 * What stands in where a sheet is silent: for each field a builder of a body fills in by itself, the published value it
 * takes. Fields that follow another field of the same sheet (the circuit board as long as its card) are not here.
 */
import { enclosureSheets, plugAndBend } from '../../standards/assembly-practice';
import { boardFormFactors, boardSheet } from '../../standards/board-form-factors';
import { bracketFaceToKeyNotch } from '../../standards/card-bracket';
import { cardOutline, cardPartHeights } from '../../standards/card-envelope';
import { microAtxSpecification } from '../../standards/cited-documents';
import { tubeTurn } from '../../standards/cooler-proportions';
import { driveForms } from '../../standards/drives';
import { holeBToSlot1, holeRowToKeyNotch, slotConnectorSection } from '../../standards/expansion-slots';
import { fanThickness } from '../../standards/fans';
import { m2Module } from '../../standards/m2-modules';
import { dimm, dimmSocket, soDimm } from '../../standards/memory';
import { lidHeightStack } from '../../standards/processor-sockets';
import type { Published } from '../../standards/published';
import { liquidCoolerSeen } from '../../standards/radiators';
import { rearPanelInnerFaceY } from '../../standards/rear-aperture';
import { riserBoard } from '../../standards/riser-practice';
import { sfxToAtxPlate, supplyForms } from '../../standards/supply-forms';
import type { AdapterSpec } from '../adapter/spec';
import type { BoardSpec } from '../board/spec';
import type { CardSpec } from '../card/spec';
import type { CoolerSpec } from '../cooler/spec';
import { nominal } from '../dimension';
import type { DriveSpec } from '../drive/spec';
import { DEFAULT_FROM_TOP_MM } from '../enclosure/layout';
import type { EnclosureSpec } from '../enclosure/spec';
import type { MemorySpec } from '../memory/spec';
import type { PartSpec } from '../part-spec';
import { radiatorOfRow } from '../radiator/fan-row';
import type { RadiatorSpec } from '../radiator/spec';
import type { SupplySpec } from '../supply/spec';

export type StandingIn = Readonly<Record<string, Published<number>>>;

/** By dotted path: 'socket.seat'. */
export function valuesStandingIn(spec: PartSpec): StandingIn {
  switch (spec.kind) {
    case 'enclosure':
      return enclosureValues(spec);
    case 'board':
      return boardValues(spec);
    case 'processor':
      return { height: lidHeightStack.packageLandsToLidTop };
    case 'cooler':
      return coolerValues(spec);
    case 'memory':
      return memoryValues(spec);
    case 'drive':
      return driveValues(spec);
    case 'card':
      return cardValues(spec);
    case 'supply':
      return supplyValues(spec);
    case 'fan':
      return { thickness: fanThickness.usual };
    case 'radiator':
      return radiatorValues(spec);
    case 'adapter':
      return adapterValues(spec);
  }
}

function enclosureValues(spec: EnclosureSpec): StandingIn {
  const plate = enclosureSheets.structuralPlate;
  const fromTop: Published<number> = {
    value: DEFAULT_FROM_TOP_MM,
    source: { ...microAtxSpecification, figure: 'figure 4 note' },
    confidence: 'derived',
  };
  const fromRear: Published<number> = { ...rearPanelInnerFaceY, value: -rearPanelInnerFaceY.value };
  return {
    'walls.sheet': plate,
    'tray.thickness': plate,
    ...(spec.board.corner ? {} : { 'board.fromTop': fromTop, 'board.fromRear': fromRear }),
    ...(spec.shroud ? { 'shroud.thickness': plate } : {}),
  };
}

function boardValues(spec: BoardSpec): StandingIn {
  const form = boardFormFactors[spec.form];
  return {
    width: form.alongX,
    depth: form.alongY,
    thickness: boardSheet.thickness,
    'socket.seat': lidHeightStack.socketSeatingPlane,
    'memory.pitch': dimmSocket.pitch,
    'slotPlace.seat': slotConnectorSection.seatHeight,
    'slotPlace.holeBToSlot1': holeBToSlot1,
    'slotPlace.holeRowToKeyNotch': holeRowToKeyNotch,
  };
}

function coolerValues(spec: CoolerSpec): StandingIn {
  if (spec.style === 'top flow') return { 'fan.thickness': fanThickness.slim };
  if (spec.style === 'liquid block') return {};
  return Object.fromEntries(spec.fans.map((_, index) => [`fans.${index}.thickness`, fanThickness.usual]));
}

function memoryValues(spec: MemorySpec): StandingIn {
  return { height: (spec.form === 'DIMM' ? dimm : soDimm).height };
}

function driveValues(spec: DriveSpec): StandingIn {
  if (spec.form === 'M.2') return { above: m2Module.highestPartEitherSide };
  return { length: driveForms[spec.form === '3.5' ? '3.5 in' : '2.5 in'].length };
}

function cardValues(spec: CardSpec): StandingIn {
  const usual = spec.lowProfile ? cardOutline.lowProfileHeight : cardOutline.fullHeight;
  return {
    keyNotch: bracketFaceToKeyNotch,
    backplate: cardPartHeights.solderSide,
    ...(usual.value < nominal(spec.height) ? { boardHeight: usual } : {}),
  };
}

function supplyValues(spec: SupplySpec): StandingIn {
  const { depth, width, height } = supplyForms[spec.form];
  const { modularSupplyPlug } = plugAndBend;
  const [plug, whole] = modularSupplyPlug.value;
  return {
    depth,
    width,
    height,
    plugDepth: { ...modularSupplyPlug, value: plug },
    bend: { ...modularSupplyPlug, value: whole - plug },
  };
}

function radiatorValues(spec: RadiatorSpec): StandingIn {
  const { length, width, thickness } = radiatorOfRow(spec.row);
  return {
    length,
    width,
    thickness,
    fitting: liquidCoolerSeen.fittingHeight,
    bend: tubeTurn.beyondFitting,
  };
}

function adapterValues(spec: AdapterSpec): StandingIn {
  if (spec.form === 'supply plate') return { thickness: sfxToAtxPlate.thickness };
  if (spec.form === 'riser socket') return { boardHeight: riserBoard.socketDepth };
  return { height: riserBoard.plugHeight, bend: riserBoard.ribbonBend };
}
