import { Vector2, Vector3, Vector4 } from 'three';
import type { Bounds, RigidTransform } from '../../../geometry';
import type { Section } from '../../store/view-store';
import { eyeDistance, pictureAxes, type ScreenSize, type Sight } from '../camera/sight';
import type { Palette } from '../palette';
import { FIRST_PART_ROW, PartTable } from './part-table';

/** A plane that cuts nothing. */
const NO_SECTION = [0, 0, 0, 1] as const;

/** What every shader of the sheet shares: one object, so that a change is made once. */
export class SheetUniforms {
  readonly table = new PartTable();
  readonly values = {
    partTable: { value: this.table.texture },
    /** Canvas in device pixels. */
    canvasSize: { value: new Vector2(1, 1) },
    pixelRatio: { value: 1 },
    /** Eye (w = 1), or direction towards it in parallel projection (w = 0). */
    eye: { value: new Vector4(0, 0, 1, 0) },
    /** What lies on the positive side of (normal, distance) is cut away. */
    section: { value: new Vector4(...NO_SECTION) },
    /** Direction away from the eye, and the depths along it between which ink pales. */
    cueDirection: { value: new Vector3(0, 0, -1) },
    cueRange: { value: new Vector2(0, 1) },
    paper: { value: new Vector3() },
    sheet: { value: new Vector3() },
    ink: { value: new Vector3() },
    quietInk: { value: new Vector3() },
    selection: { value: new Vector3() },
    reserved: { value: new Vector3() },
    interference: { value: new Vector3() },
    xray: { value: 0 },
  };

  setPalette(palette: Palette): void {
    for (const name of [
      'paper',
      'sheet',
      'ink',
      'quietInk',
      'selection',
      'reserved',
      'interference',
    ] as const)
      this.values[name].value.set(...palette[name]);
  }

  setSection(section: Section | undefined): void {
    this.values.section.value.set(...(section ? sectionPlane(section) : NO_SECTION));
  }

  setCanvas({ width, height }: ScreenSize, pixelRatio: number): void {
    this.values.canvasSize.value.set(width * pixelRatio, height * pixelRatio);
    this.values.pixelRatio.value = pixelRatio;
  }

  setSight(sight: Sight, { min, max }: Bounds): void {
    const { towardsEye } = pictureAxes(sight);
    const distance = eyeDistance(sight);
    const [x, y, z] = towardsEye;
    if (Number.isFinite(distance)) {
      const [tx, ty, tz] = sight.target;
      this.values.eye.value.set(tx + x * distance, ty + y * distance, tz + z * distance, 1);
    } else this.values.eye.value.set(x, y, z, 0);
    this.values.cueDirection.value.set(-x, -y, -z);
    const middle = -((min[0] + max[0]) * x + (min[1] + max[1]) * y + (min[2] + max[2]) * z) / 2;
    const reach =
      ((max[0] - min[0]) * Math.abs(x) + (max[1] - min[1]) * Math.abs(y) + (max[2] - min[2]) * Math.abs(z)) /
      2;
    this.values.cueRange.value.set(middle - reach, middle + reach);
  }

  /** Writes poses and looks; returns whether anything changed. */
  setParts(
    scene: { readonly parts: readonly { readonly id: string; readonly pose: RigidTransform }[] },
    lookOf: (id: string) => { emphasis: number; faded: number; hidden: boolean },
  ): boolean {
    this.table.reserve(scene.parts.length);
    this.values.partTable.value = this.table.texture;
    let changed = false;
    for (const [index, part] of scene.parts.entries())
      changed = this.table.set(FIRST_PART_ROW + index, part.pose, lookOf(part.id)) || changed;
    return changed;
  }
}

/** Normal and distance of the cut, pointing to the side that is taken away. */
export function sectionPlane({ axis, at, flipped }: Section): readonly [number, number, number, number] {
  const sense = flipped ? -1 : 1;
  return [axis === 'x' ? sense : 0, axis === 'y' ? sense : 0, axis === 'z' ? sense : 0, at * sense];
}
