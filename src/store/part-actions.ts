/** What a person does with a part, each one step of undo, each said in the status line. */
import {
  addPart,
  adjustPart,
  isSeated,
  movePart,
  type PartSpec,
  type Placement,
  removePart,
  replacePart,
  suggestPlacement,
} from '../../geometry';
import { editPlan, planStore, undo } from './plan-store';
import { solutionStore } from './solution-store';
import { announce } from './status-store';
import type { Remarks } from './stored-records';
import { turnPart } from './turn-part';
import { selectPart, viewStore } from './view-store';

function labelOf(id: string): string {
  const { scene } = solutionStore.getState();
  return scene.parts[scene.indexById.get(id) ?? -1]?.label ?? id;
}

/**
 * Puts a part where it is told, else on the first free mount that takes it, or beside the machine, and selects it; what
 * it costs goes along. Returns its id.
 */
export function placePart(
  spec: PartSpec,
  shelf?: string,
  { placement: wanted, price }: { readonly placement?: Placement; readonly price?: Remarks['price'] } = {},
): string {
  const { scene } = solutionStore.getState();
  const placement = wanted ?? suggestPlacement(scene, spec);
  const { plan } = planStore.getState();
  const added = addPart(plan, spec, placement, shelf);
  editPlan(() =>
    price === undefined ? added.plan : { ...added.plan, prices: { ...added.plan.prices, [added.id]: price } },
  );
  selectPart(added.id);
  announce(`${labelOf(added.id)} ${seatWords(placement)}`);
  return added.id;
}

function seatWords(placement: Placement): string {
  if (!isSeated(placement)) return 'stands free: no free mount takes it.';
  const { scene } = solutionStore.getState();
  const carrier = scene.parts[scene.indexById.get(placement.on) ?? -1];
  const mount = carrier?.model.mounts.find((candidate) => candidate.id === placement.mount);
  return `placed on ${mount?.label ?? placement.mount}, ${carrier?.label ?? placement.on}.`;
}

/** Puts another part in a part's place and names what lost its mount. */
export function swapPart(id: string, spec: PartSpec, shelf?: string): void {
  const result = replacePart(planStore.getState().plan, id, spec, shelf);
  editPlan(() => result.plan);
  const loose = result.loosened.map(labelOf);
  announce(
    loose.length === 0
      ? `${labelOf(id)} is now ${spec.maker} ${spec.model}.`
      : `${labelOf(id)} is now ${spec.maker} ${spec.model}. Without a mount: ${loose.join(', ')}.`,
  );
}

/** Saves edited figures of a part in place: its seat, its adjustments and what it carries stay. */
export function respecifyPart(id: string, spec: PartSpec): void {
  const { plan } = planStore.getState();
  const adjust = plan.parts[id]?.adjust ?? {};
  const result = replacePart(plan, id, spec);
  editPlan(() =>
    Object.entries(adjust).reduce((next, [name, value]) => adjustPart(next, id, name, value), result.plan),
  );
  const loose = result.loosened.map(labelOf);
  announce(`${labelOf(id)} saved.${loose.length === 0 ? '' : ` Without a mount: ${loose.join(', ')}.`}`);
}

/** Removes a part with all it carries. */
export function deletePart(id: string): void {
  const label = labelOf(id);
  const { plan, removed } = removePart(planStore.getState().plan, id);
  const others = removed.filter((other) => other !== id).map(labelOf);
  editPlan(() => plan);
  if (viewStore.getState().selectedPart === id) selectPart(undefined);
  const carried = others.length === 0 ? '' : ` with what it carried: ${others.join(', ')}`;
  announce(`${label} removed${carried}.`, { label: 'Undo', run: undo });
}

export function placeAt(id: string, placement: Placement): void {
  editPlan((plan) => movePart(plan, id, placement));
}

export function setAdjustment(id: string, adjustment: string, value: number): void {
  editPlan((plan) => adjustPart(plan, id, adjustment, value));
}

/** Turns a part by the next quarter its place allows. */
export function turnOpenPart(id: string): void {
  const { scene } = solutionStore.getState();
  const turned = turnPart(planStore.getState().plan, scene, id, viewStore.getState().view);
  if (turned) editPlan(() => turned);
  else announce(`Its mount holds ${labelOf(id)} one way round only.`);
}
