/** All layers of the drawing together, and how they follow the stores. */
import type { Object3D } from 'three';
import type { Scene, SceneBox, Solution } from '../../geometry';
import type { ViewState } from '../store/view-store';
import { CutLayer } from './layers/cut-layer';
import { GhostLayer } from './layers/ghost-layer';
import { MachineLayer } from './layers/machine-layer';
import { MarkedFacesLayer } from './layers/marked-faces-layer';
import { OverlapLayer } from './layers/overlap-layer';
import { ReservedLayer } from './layers/reserved-layer';
import { SheetUniforms } from './layers/sheet-uniforms';
import { shownClearance } from './overlay/annotations';
import type { Palette } from './palette';

export interface Shown {
  readonly scene: Scene;
  readonly solution: Solution;
  readonly view: ViewState;
}

export class SheetLayers {
  readonly uniforms = new SheetUniforms();
  readonly ghosts = new GhostLayer(this.uniforms);
  private readonly machine = new MachineLayer(this.uniforms);
  private readonly cut = new CutLayer(this.uniforms);
  private readonly reserved = new ReservedLayer(this.uniforms);
  private readonly overlaps = new OverlapLayer(this.uniforms);
  private readonly marked = new MarkedFacesLayer(this.uniforms);
  private readonly layers = [
    this.machine,
    this.cut,
    this.reserved,
    this.overlaps,
    this.marked,
    this.ghosts,
  ] as const;

  get meshes(): Object3D[] {
    return this.layers.flatMap((layer) => [...layer.meshes]);
  }

  update({ scene, solution, view }: Shown, palette: Palette): void {
    this.uniforms.setParts(scene, (id) => ({
      emphasis: id === view.selectedPart ? 2 : id === view.hoveredPart ? 1 : 0,
      faded: 0,
      hidden: false,
    }));
    this.machine.update(scene);
    this.machine.setXray(view.xray);
    this.uniforms.values.xray.value = view.xray ? 1 : 0;
    this.uniforms.setSection(view.section);
    this.cut.update(scene, view.section);
    this.reserved.update(reservedBoxes(scene, solution, view));
    this.overlaps.update(scene, solution.findings);
    const chosen = {
      clearance: view.selectedClearance,
      finding: view.selectedFinding,
      part: view.selectedPart,
    };
    const clearance = view.selectedClearance === undefined ? undefined : shownClearance(solution, chosen);
    this.marked.update(scene, clearance);
    this.marked.setPalette(palette, clearance?.fit);
  }

  setPalette(palette: Palette): void {
    this.uniforms.setPalette(palette);
    for (const layer of [this.cut, this.reserved, this.overlaps, this.ghosts]) layer.setPalette(palette);
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
