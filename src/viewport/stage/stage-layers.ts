/** The drawing of a stage: what is there, what moves and by how much, what it sweeps. Loaded when a way is played. */
import { type Bounds, compose, type RigidTransform } from '../../../geometry';
import { type Stage, stageStore } from '../../store/stage-store';
import { FIRST_PART_ROW } from '../layers/part-table';
import { WayLayer } from '../layers/way-layer';
import type { Palette } from '../palette';
import type { SheetLayers, StageDrawer } from '../sheet-layers';
import { stageBounds } from './stage-bounds';
import { stagedParts } from './staged-parts';

export class StageLayers implements StageDrawer {
  private readonly sheet: SheetLayers;
  private readonly way: WayLayer;

  constructor(sheet: SheetLayers) {
    this.sheet = sheet;
    this.way = new WayLayer(sheet.uniforms);
  }

  get meshes() {
    return this.way.meshes;
  }

  get bounds(): Bounds | undefined {
    const { stage } = stageStore.getState();
    return stage && stageBounds(stage);
  }

  /** Shows the stage of the store as it is at this moment. */
  show(): void {
    const { stage, displacement } = stageStore.getState();
    if (stage) this.showStage(stage, displacement ?? stage.start);
  }

  showStage(stage: Stage, displacement: RigidTransform): void {
    const parts = stagedParts(stage.scene, stage.units);
    const fixed = new Set(parts.flatMap(({ id, neverMoves }) => (neverMoves ? [id] : [])));
    this.sheet.showOnly(stage.scene, parts, (id) => ({
      emphasis: stage.moving.has(id) ? 2 : 0,
      faded: stage.moving.has(id) ? 0 : (stage.pale ?? 0),
      hidden: stage.absent.has(id) || (fixed.has(id) && !stage.enclosure),
    }));
    this.way.update(stage);
    this.move(stage, displacement);
  }

  /** Puts what moves so far off its seat: sixteen numbers a part, and nothing is worked out. */
  move(stage: Stage, displacement: RigidTransform): void {
    for (const [index, part] of stagedParts(stage.scene, stage.units).entries()) {
      if (!stage.moving.has(part.id) || part.neverMoves) continue;
      this.sheet.uniforms.table.set(FIRST_PART_ROW + index, compose(displacement, part.pose), {
        emphasis: 2,
        faded: 0,
        hidden: stage.absent.has(part.id),
      });
    }
  }

  setPalette(palette: Palette): void {
    this.way.setPalette(palette);
  }

  dispose(): void {
    this.way.dispose();
  }
}
