/** All layers of the drawing together, and how they follow the stores. */
import type { Object3D } from 'three';
import type { Bounds, RigidTransform, Scene, SceneBox, Solution } from '../../geometry';
import type { ViewState } from '../store/view-store';
import type { DrawnPart } from './drawing/part-drawing';
import { CutLayer } from './layers/cut-layer';
import { GhostLayer } from './layers/ghost-layer';
import { MachineLayer } from './layers/machine-layer';
import { colourOfFit, MarkedFacesLayer } from './layers/marked-faces-layer';
import { OverlapLayer } from './layers/overlap-layer';
import type { PartLook } from './layers/part-table';
import { ReservedLayer } from './layers/reserved-layer';
import { SheetUniforms } from './layers/sheet-uniforms';
import { shownClearance } from './overlay/annotations';
import type { Palette } from './palette';

export interface Shown {
  readonly scene: Scene;
  readonly solution: Solution;
  readonly view: ViewState;
}

/** Draws something else than the plan as it stands: the way of a part while it is played. */
export interface StageDrawer {
  show(): void;
  readonly bounds: Bounds | undefined;
  setPalette(palette: Palette): void;
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
  private readonly layers = [
    this.machine,
    this.cut,
    this.reserved,
    this.overlaps,
    this.marked,
    this.pointed,
    this.ghosts,
  ] as const;

  /** Shows the stores anew; set by who follows them. */
  refresh: () => void = () => undefined;
  private drawer: StageDrawer | undefined;
  private palette: Palette | undefined;

  /** Gives the drawing to another for a while; without one the plan is shown. */
  attach(drawer: StageDrawer | undefined): void {
    this.drawer = drawer;
    if (this.palette) drawer?.setPalette(this.palette);
  }

  /** What the other shows takes up; undefined when it is the plan that is shown. */
  get stageBounds(): Bounds | undefined {
    return this.drawer?.bounds;
  }

  get meshes(): Object3D[] {
    return this.layers.flatMap((layer) => [...layer.meshes]);
  }

  update({ scene, solution, view }: Shown, palette: Palette): void {
    this.machine.setXray(view.xray);
    this.uniforms.values.xray.value = view.xray ? 1 : 0;
    this.uniforms.setSection(view.section);
    if (this.drawer) {
      this.drawer.show();
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

  /** These parts and nothing that is said of them: no cut, no reserved space, no findings. */
  showOnly(
    scene: Scene,
    parts: readonly (DrawnPart & { readonly id: string; readonly pose: RigidTransform })[],
    lookOf: (id: string) => PartLook,
  ): void {
    this.uniforms.setParts({ parts }, lookOf);
    this.machine.update({ parts });
    this.cut.update(scene, undefined);
    this.reserved.update([]);
    this.overlaps.update(scene, []);
    this.marked.update(scene, []);
    this.pointed.update(scene, []);
  }

  setPalette(palette: Palette): void {
    this.palette = palette;
    this.uniforms.setPalette(palette);
    for (const layer of [this.cut, this.reserved, this.overlaps, this.ghosts]) layer.setPalette(palette);
    this.drawer?.setPalette(palette);
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
