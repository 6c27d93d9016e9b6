/** All layers of the drawing together, and how they follow the stores. */
import type { Object3D } from 'three';
import { compose, type RigidTransform, type Scene, type SceneBox, type Solution } from '../../geometry';
import type { Stage } from '../store/stage-store';
import type { ViewState } from '../store/view-store';
import { CutLayer } from './layers/cut-layer';
import { GhostLayer } from './layers/ghost-layer';
import { MachineLayer } from './layers/machine-layer';
import { colourOfFit, MarkedFacesLayer } from './layers/marked-faces-layer';
import { OverlapLayer } from './layers/overlap-layer';
import { FIRST_PART_ROW } from './layers/part-table';
import { ReservedLayer } from './layers/reserved-layer';
import { SheetUniforms } from './layers/sheet-uniforms';
import { WayLayer } from './layers/way-layer';
import { shownClearance } from './overlay/annotations';
import type { Palette } from './palette';
import { stagedParts } from './stage/staged-parts';

export interface Shown {
  readonly scene: Scene;
  readonly solution: Solution;
  readonly view: ViewState;
  /** While a way is played: this instead of the machine with its findings. */
  readonly stage?: Stage | undefined;
}

export class SheetLayers {
  readonly uniforms = new SheetUniforms();
  readonly ghosts = new GhostLayer(this.uniforms);
  private readonly machine = new MachineLayer(this.uniforms);
  private readonly cut = new CutLayer(this.uniforms);
  private readonly reserved = new ReservedLayer(this.uniforms);
  private readonly overlaps = new OverlapLayer(this.uniforms);
  /** The two faces that set the selected clearance. */
  private readonly marked = new MarkedFacesLayer(this.uniforms, 0.07);
  /** The two faces of the dimension that a person points at. */
  private readonly pointed = new MarkedFacesLayer(this.uniforms, 0.25);
  private readonly way = new WayLayer(this.uniforms);
  private readonly layers = [
    this.machine,
    this.cut,
    this.reserved,
    this.overlaps,
    this.marked,
    this.pointed,
    this.way,
    this.ghosts,
  ] as const;

  get meshes(): Object3D[] {
    return this.layers.flatMap((layer) => [...layer.meshes]);
  }

  update({ scene, solution, view, stage }: Shown, palette: Palette): void {
    this.machine.setXray(view.xray);
    this.uniforms.values.xray.value = view.xray ? 1 : 0;
    this.uniforms.setSection(view.section);
    this.way.update(stage);
    if (stage) {
      this.showStage(stage);
      return;
    }
    this.uniforms.setParts(scene, (id) => ({
      emphasis: id === view.selectedPart ? 2 : id === view.hoveredPart ? 1 : 0,
      faded: 0,
      hidden: false,
    }));
    this.machine.update(scene);
    this.cut.update(scene, view.section);
    this.reserved.update(reservedBoxes(scene, solution, view));
    this.overlaps.update(scene, solution.findings);
    const chosen = {
      clearance: view.selectedClearance,
      finding: view.selectedFinding,
      part: view.selectedPart,
    };
    const clearance = view.selectedClearance === undefined ? undefined : shownClearance(solution, chosen);
    this.marked.update(scene, clearance ? [clearance.from, clearance.to] : []);
    this.marked.setColour(colourOfFit(clearance?.fit ?? 'clearance fit', palette), palette.paper);
    this.pointed.update(scene, view.pointedFaces);
    this.pointed.setColour(palette.selection, palette.paper);
  }

  /** The machine with what is absent left out; what moves stands at its seat. */
  showStage(stage: Stage): void {
    const parts = stagedParts(stage.scene, stage.units);
    const fixed = new Set(parts.flatMap(({ id, neverMoves }) => (neverMoves ? [id] : [])));
    this.uniforms.setParts({ parts }, (id) => ({
      emphasis: stage.moving.has(id) ? 2 : 0,
      faded: stage.moving.has(id) ? 0 : (stage.pale ?? 0),
      hidden: stage.absent.has(id) || (fixed.has(id) && !stage.enclosure),
    }));
    this.machine.update({ parts });
    this.cut.update(stage.scene, undefined);
    this.reserved.update([]);
    this.overlaps.update(stage.scene, []);
    this.marked.update(stage.scene, []);
    this.pointed.update(stage.scene, []);
  }

  /** Puts what moves so far off its seat: sixteen numbers a part, and nothing is worked out. */
  moveStaged(stage: Stage, displacement: RigidTransform): void {
    for (const [index, part] of stagedParts(stage.scene, stage.units).entries()) {
      if (!stage.moving.has(part.id) || part.neverMoves) continue;
      this.uniforms.table.set(FIRST_PART_ROW + index, compose(displacement, part.pose), {
        emphasis: 2,
        faded: 0,
        hidden: stage.absent.has(part.id),
      });
    }
  }

  setPalette(palette: Palette): void {
    this.uniforms.setPalette(palette);
    for (const layer of [this.cut, this.reserved, this.overlaps, this.way, this.ghosts])
      layer.setPalette(palette);
  }

  dispose(): void {
    for (const layer of this.layers) layer.dispose();
    this.uniforms.table.texture.dispose();
  }
}

/** On demand all of them; always those of the selected part, and those that something stands in. */
function reservedBoxes(scene: Scene, solution: Solution, view: ViewState): readonly SceneBox[] {
  const reserved = scene.boxes.filter(({ body }) => body.role !== 'solid');
  if (view.reservedSpaces) return reserved;
  const selected = view.selectedPart === undefined ? -1 : (scene.indexById.get(view.selectedPart) ?? -1);
  const invaded = new Set(
    solution.findings
      .filter(({ kind, id }) => kind === 'intrusion' || id === view.selectedFinding)
      .flatMap(({ faces }) => faces.map(({ part, box }) => `${part}/${box}`)),
  );
  return reserved.filter(
    ({ part, body }) =>
      (part === selected && body.role !== 'zone') || invaded.has(`${scene.parts[part]?.id}/${body.name}`),
  );
}
