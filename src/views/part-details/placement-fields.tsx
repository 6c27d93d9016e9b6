/** Where a part sits: a mount chosen from all that take it, with turn and shift, or a free place with six numbers. */
import {
  type AdjustmentValues,
  type FreePlacement,
  findMounts,
  isSeated,
  type MountCandidate,
  type PlacedPart,
  type Placement,
  placementAt,
  type SeatedPlacement,
} from '../../../geometry';
import { placeAt, turnOpenPart } from '../../store/part-actions';
import { useSolutionStore } from '../../store/use-store';
import { CoordinateFields } from './coordinate-fields';

interface PlacementFieldsProps {
  readonly part: PlacedPart;
  readonly placement: Placement;
  readonly adjust: AdjustmentValues | undefined;
}

const FREE = 'free';
const MISSING = 'missing';
const keyOf = ({ on, mount, foot }: SeatedPlacement) => `${on}/${mount}/${foot ?? ''}`;

export function PlacementFields({ part, placement, adjust }: PlacementFieldsProps) {
  const scene = useSolutionStore((state) => state.scene);
  const mounts = findMounts(scene, part.spec, part.id, adjust);
  const current = chosenKey(part, placement, mounts);
  const choose = (key: string) => {
    if (key === FREE) placeAt(part.id, placementAt(part.pose));
    const mount = mounts.find((candidate) => keyOf(candidate.placement) === key);
    if (mount) placeAt(part.id, mount.placement);
  };
  const labelOf = ({ placement: { on, mount, foot }, label, takenBy }: MountCandidate) => {
    const feet = mounts.filter((other) => other.placement.on === on && other.placement.mount === mount);
    const footLabel = part.model.feet.find((candidate) => candidate.id === foot)?.label ?? foot;
    const taken =
      takenBy === undefined ? '' : ` (taken by ${scene.parts[scene.indexById.get(takenBy) ?? -1]?.label})`;
    return `${label}${feet.length > 1 ? `, ${footLabel}` : ''}${taken}`;
  };
  return (
    <fieldset>
      <legend className="heading">Place</legend>
      <label className="labelled">
        <span>Sits on</span>
        <select className="select" value={current} onChange={(event) => choose(event.target.value)}>
          {current === MISSING && <option value={MISSING}>A mount that does not take it</option>}
          <option value={FREE}>Nothing: free place</option>
          {mounts.map((mount) => (
            <option
              key={keyOf(mount.placement)}
              value={keyOf(mount.placement)}
              disabled={mount.takenBy !== undefined}
            >
              {labelOf(mount)}
            </option>
          ))}
        </select>
      </label>
      {isSeated(placement) ? (
        <SeatFields part={part} placement={placement} />
      ) : (
        <FreeFields part={part} placement={placement} />
      )}
    </fieldset>
  );
}

function chosenKey(part: PlacedPart, placement: Placement, mounts: readonly MountCandidate[]): string {
  if (!isSeated(placement)) return FREE;
  const key = keyOf({ ...placement, foot: placement.foot ?? part.seat?.foot });
  return mounts.some((mount) => keyOf(mount.placement) === key) ? key : MISSING;
}

function SeatFields({ part, placement }: { readonly part: PlacedPart; readonly placement: SeatedPlacement }) {
  const scene = useSolutionStore((state) => state.scene);
  const carrier = scene.parts[scene.indexById.get(placement.on) ?? -1];
  const turns = carrier?.model.mounts.find((mount) => mount.id === placement.mount)?.turns ?? [0];
  const { turn = 0, shift = [0, 0, 0] } = placement;
  const setTurn = (next: number) => {
    const { turn: _, ...seat } = placement;
    placeAt(part.id, next === 0 ? seat : { ...seat, turn: next });
  };
  const setShift = (next: [number, number, number]) => {
    const { shift: _, ...seat } = placement;
    placeAt(part.id, next.every((value) => value === 0) ? seat : { ...seat, shift: next });
  };
  return (
    <>
      {turns.length > 1 && (
        <label className="labelled">
          <span>Turn</span>
          <select className="select" value={turn} onChange={(event) => setTurn(Number(event.target.value))}>
            {turns.map((one) => (
              <option key={one} value={one}>
                {one} degrees
              </option>
            ))}
          </select>
        </label>
      )}
      <CoordinateFields
        title="Shift"
        axes={['across', 'along', 'off']}
        values={shift}
        unit="mm"
        onChange={setShift}
      />
    </>
  );
}

function FreeFields({ part, placement }: { readonly part: PlacedPart; readonly placement: FreePlacement }) {
  const { at, rotate = [0, 0, 0] } = placement;
  const setRotate = (next: [number, number, number]) =>
    placeAt(part.id, next.every((angle) => angle === 0) ? { at } : { at, rotate: next });
  return (
    <>
      <CoordinateFields
        title="At"
        axes={['x', 'y', 'z']}
        values={at}
        unit="mm"
        onChange={(next) => placeAt(part.id, { ...placement, at: next })}
      />
      <CoordinateFields
        title="Turned about"
        axes={['x', 'y', 'z']}
        values={rotate}
        unit="°"
        limit={360}
        step={90}
        onChange={setRotate}
      />
      <div className="buttons">
        <button type="button" className="button small" onClick={() => turnOpenPart(part.id)}>
          Turn by 90°
        </button>
      </div>
    </>
  );
}
