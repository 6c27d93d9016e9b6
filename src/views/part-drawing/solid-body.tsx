/** The body of a part as a solid that can be turned: by dragging, or with the arrow keys. */
import { type KeyboardEvent, type PointerEvent, useMemo, useRef, useState } from 'react';
import {
  type BodyBox,
  bodyPicture,
  boundsOfBoxes,
  type Eye,
  eyeAt,
  type PaintedFace,
  type PaperPoint,
  type PartModel,
  type PartView,
  type Vector3,
} from '../../../geometry';

interface SolidBodyProps {
  readonly model: PartModel;
  readonly front: PartView;
  readonly width: number;
  readonly height: number;
}

interface Turn {
  readonly yaw: number;
  readonly pitch: number;
}

const START: Turn = { yaw: 38, pitch: 26 };
const STEP_DEG = 10;
const DEG_A_PIXEL = 0.6;
const HIGHEST_PITCH_DEG = 85;

export function SolidBody({ model, front, width, height }: SolidBodyProps) {
  const [turn, setTurn] = useState(START);
  const grip = useRef<readonly [number, number]>(undefined);
  const solids = useMemo(() => model.boxes.filter(({ role }) => role === 'solid'), [model]);
  const eye = useMemo(() => eyeAt(eyeOf(front), turn.yaw, turn.pitch), [front, turn]);
  const faces = useMemo(() => bodyPicture(withoutNearWalls(solids, eye), eye), [solids, eye]);
  const toPicture = useMemo(() => fitTo(faces, width, height), [faces, width, height]);
  const turnBy = (yaw: number, pitch: number) =>
    setTurn((before) => ({
      yaw: (before.yaw + yaw) % 360,
      pitch: Math.min(HIGHEST_PITCH_DEG, Math.max(-HIGHEST_PITCH_DEG, before.pitch + pitch)),
    }));
  const onKeyDown = (event: KeyboardEvent) => {
    const by = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key];
    if (!by) return;
    event.preventDefault();
    turnBy((by[0] ?? 0) * STEP_DEG, (by[1] ?? 0) * STEP_DEG);
  };
  const onPointerDown = (event: PointerEvent) => {
    event.currentTarget.setPointerCapture(event.pointerId);
    grip.current = [event.clientX, event.clientY];
  };
  const onPointerMove = (event: PointerEvent) => {
    if (!grip.current) return;
    turnBy((grip.current[0] - event.clientX) * -DEG_A_PIXEL, (event.clientY - grip.current[1]) * DEG_A_PIXEL);
    grip.current = [event.clientX, event.clientY];
  };
  const letGo = () => {
    grip.current = undefined;
  };
  return (
    <button
      type="button"
      className="solid-body"
      aria-label="The body in space. Drag it or use the arrow keys to turn it."
      onKeyDown={onKeyDown}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={letGo}
      onPointerCancel={letGo}
    >
      <svg width={width} height={height} viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
        {faces.map((face) => (
          <Face key={`${face.body.name}/${face.axis}`} face={face} toPicture={toPicture} />
        ))}
      </svg>
    </button>
  );
}

function Face({
  face: { body, axis, corners, edges },
  toPicture,
}: {
  readonly face: PaintedFace;
  readonly toPicture: ToPicture;
}) {
  return (
    <g data-axis={axis} data-material={body.material} data-element={body.element}>
      <polygon points={corners.map(toPicture).join(' ')} />
      <path d={edges.map(([a, b]) => `M${toPicture(a)} L${toPicture(b)}`).join(' ')} />
    </g>
  );
}

type ToPicture = (point: PaperPoint) => string;

function fitTo(faces: readonly PaintedFace[], width: number, height: number): ToPicture {
  const points = faces.flatMap(({ corners }) => corners);
  const [us, vs] = [points.map(([u]) => u), points.map(([, v]) => v)];
  const [u0, u1, v0, v1] = [Math.min(...us), Math.max(...us), Math.min(...vs), Math.max(...vs)];
  const scale = Math.min((width - 12) / Math.max(u1 - u0, 1), (height - 12) / Math.max(v1 - v0, 1));
  const [cu, cv] = [(u0 + u1) / 2, (v0 + v1) / 2];
  return ([u, v]) =>
    `${(width / 2 + (u - cu) * scale).toFixed(1)} ${(height / 2 - (v - cv) * scale).toFixed(1)}`;
}

const units: readonly [Vector3, Vector3, Vector3] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

function eyeOf({ right, up, towards }: PartView): Eye {
  const vector = ({ axis, sign }: PartView['right']): Vector3 => {
    const [x, y, z] = units[axis];
    return [x * sign, y * sign, z * sign];
  };
  return { right: vector(right), up: vector(up), towards: vector(towards) };
}

const walls: ReadonlySet<string> = new Set([
  'side panel',
  'back panel',
  'front wall',
  'rear wall',
  'top wall',
  'floor',
]);

/** The walls between the viewer and the inside of an enclosure are left out, with what is set into them. */
function withoutNearWalls(boxes: readonly BodyBox[], { towards }: Eye): readonly BodyBox[] {
  const plates = boxes.filter(({ element }) => walls.has(element));
  const whole = boundsOfBoxes(plates.map(({ box }) => box));
  if (!whole) return boxes;
  return boxes.filter((body) => {
    if (!walls.has(body.element) && body.element !== 'vent') return true;
    const bounds = boundsOfBoxes([body.box]) ?? whole;
    return ([0, 1, 2] as const).every((axis) => {
      const near = towards[axis] > 0 ? 'max' : 'min';
      const isOuter = Math.abs(bounds[near][axis] - whole[near][axis]) < 0.01;
      return !isOuter || bounds.max[axis] - bounds.min[axis] > THICKEST_WALL_MM;
    });
  });
}

/** No wall is thicker; a plate that only ends at the outer face is no near wall. */
const THICKEST_WALL_MM = 8;
