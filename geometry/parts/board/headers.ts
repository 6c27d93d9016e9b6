/** Headers with the room their plugs, leads and hands want; board frame (`fields.ts`), mm. */
import { type OrientedBox, transformBox } from '../../space/oriented-box';
import { rotationAbout, rotationFromAxes } from '../../space/rotation';
import type { RigidTransform } from '../../space/transform';
import { cross, type Vector3 } from '../../space/vector';
import { handSpace } from '../../standards/assembly-practice';
import { type BoardConnector, boardConnectors } from '../../standards/board-connectors';
import { clearSettingsPins } from '../../standards/board-furniture';
import type { BodyBox, Feature } from '../body';
import { centredSpan, type Extent, reservedBox, solidBox } from '../body-box';
import { nominal } from '../dimension';
import { keptPieces } from '../kept-pieces';
import type { HeaderType } from '../patterns';
import type { BoardPiece } from './board-piece';
import type { BoardDirection, BoardSpec } from './fields';
import { unitTowards } from './m2-sockets';

export type HeaderSpec = NonNullable<BoardSpec['headers']>[number];

const connectors: Readonly<Record<HeaderType, BoardConnector>> = {
  'main 24-pin': boardConnectors['main power 24-pin'],
  'processor 8-pin': boardConnectors['processor power 2x4'],
  'processor 4-pin': boardConnectors['processor power 2x2'],
  'fan 4-pin': boardConnectors['fan 4-pin'],
  'USB 3 20-pin': boardConnectors['USB 3 20-pin'],
  'USB C internal': boardConnectors['USB-C internal'],
  'USB 2 10-pin': boardConnectors['USB 2 10-pin'],
  'front panel': boardConnectors['front panel 10-pin'],
  'front audio': boardConnectors['audio 10-pin'],
  'SATA upright': boardConnectors['SATA vertical'],
  'SATA angled': boardConnectors['SATA right-angle'],
  'lighting 3-pin': boardConnectors['lighting 3-pin'],
  'clear settings': clearSettingsPins,
};

/** Without them the machine does not start. */
const powersTheBoard: ReadonlySet<HeaderType> = new Set<HeaderType>([
  'main 24-pin',
  'processor 8-pin',
  'processor 4-pin',
]);

export function headersOf(spec: BoardSpec): BoardPiece {
  const names = headerNames(spec.headers ?? []);
  const headers = (spec.headers ?? []).map((header, i) => keptHeader(header, names[i] ?? header.type));
  return {
    boxes: headers.flatMap((header) => header.boxes),
    features: headers.map((header) => header.feature),
  };
}

/** Stated ids as they are; the others by type, numbered from the second of a type on. */
export function headerNames(headers: readonly HeaderSpec[]): string[] {
  const taken = new Set(headers.flatMap((header) => (header.id === undefined ? [] : [header.id])));
  return headers.map((header) => {
    if (header.id !== undefined) return header.id;
    let name: string = header.type;
    for (let number = 2; taken.has(name); number++) name = `${header.type} ${number}`;
    taken.add(name);
    return name;
  });
}

/** Which way the plug leaves: as stated, else upright or, for right-angle headers, over the front edge. */
export function headerFaces(header: HeaderSpec): 'up' | BoardDirection {
  return header.faces ?? (connectors[header.type].leaves === 'up' ? 'up' : '+y');
}

/** A header in its own frame: x along the row of contacts, z the way the plug leaves, origin on the board. */
interface HeaderShape {
  readonly frame: RigidTransform;
  readonly body: Extent;
  readonly plug: Extent;
  readonly bend: Extent;
  readonly reach: Extent;
}

function oneHeader(header: HeaderSpec, name: string): { boxes: BodyBox[]; feature: Feature } {
  const id = `header:${name}`;
  const shape = headerFaces(header) === 'up' ? uprightShape(header) : sidewaysShape(header);
  const place = (box: OrientedBox) => transformBox(shape.frame, box);
  const boxes = [
    solidBox(`header ${name}`, 'header', shape.body, { feature: id }),
    reservedBox(`plug of ${name}`, 'plug space', 'plug', shape.plug, { feature: id }),
    reservedBox(`bend of ${name}`, 'bend space', 'plug', shape.bend, { feature: id }),
    reservedBox(`reach to ${name}`, 'hand space', 'plug', shape.reach, { feature: id }),
  ];
  const required = powersTheBoard.has(header.type);
  return {
    boxes: boxes.map((body) => ({ ...body, box: place(body.box) })),
    feature: {
      id,
      kind: required ? 'power socket' : 'header',
      label: name,
      use: [`plug of ${name}`, `bend of ${name}`],
      approach: [`reach to ${name}`],
      required,
    },
  };
}

const keptHeader = keptPieces(oneHeader);

/** Plug on top, its leads turning above it, fingers reaching down over it. */
function uprightShape(header: HeaderSpec): HeaderShape {
  const { header: body, plug, bendSpace } = connectors[header.type];
  const plugSize = { x: centredSpan(0, plug.along.value), y: centredSpan(0, plug.across.value) };
  const [bottom, top] = [body.height.value, plug.beyond.value];
  return {
    frame: {
      rotation: rotationAbout('z', (header.along ?? 'y') === 'x' ? 0 : 90),
      translation: [nominal(header.at[0]), nominal(header.at[1]), 0],
    },
    body: { x: centredSpan(0, body.along.value), y: centredSpan(0, body.across.value), z: [0, bottom] },
    plug: { ...plugSize, z: [bottom, top] },
    bend: { ...plugSize, z: [top, top + bendSpace.value] },
    reach: { ...plugSize, z: [top, top + handSpace.fingerPrism.value.depth] },
  };
}

/**
 * Plug parallel to the board. A right-angle header is drawn as such (its `across` is the depth behind the mating face
 * and `beyond` counts from that face); an upright one is laid over, its height becoming the depth.
 */
function sidewaysShape(header: HeaderSpec): HeaderShape {
  const { header: body, plug, bendSpace, pullTravel, leaves } = connectors[header.type];
  const rightAngle = leaves === 'sideways';
  const depth = rightAngle ? body.across.value : body.height.value;
  const height = rightAngle ? body.height.value : Math.max(body.across.value, plug.across.value);
  const face = depth / 2;
  const end = rightAngle ? face + plug.beyond.value : -face + plug.beyond.value;
  const x = centredSpan(0, plug.along.value);
  const away = unitTowards(header.faces === undefined || header.faces === 'up' ? '+y' : header.faces);
  const down: Vector3 = [0, 0, -1];
  // In the header's own frame y points down to the board, so heights run to negative y.
  const y = [-height, 0] as const;
  return {
    frame: {
      rotation: rotationFromAxes(cross(down, away), down, away),
      translation: [nominal(header.at[0]), nominal(header.at[1]), 0],
    },
    body: { x: centredSpan(0, body.along.value), y, z: [-face, face] },
    plug: { x, y, z: [face, end] },
    bend: { x, y, z: [end, end + bendSpace.value] },
    reach: { x, y, z: [end, end + pullTravel.value] },
  };
}
