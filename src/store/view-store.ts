/** What a person looks at: selection, display switches, camera wishes. Lives as long as the tab; never undone. */
import { createStore } from 'zustand/vanilla';
import type { FaceRef } from '../../geometry';

/** Standard views: orthographic ones are named by what you face, as on a drawing. */
export type StandardView = 'three-quarter' | 'front' | 'rear' | 'side' | 'back' | 'top' | 'floor';

export type SectionAxis = 'x' | 'y' | 'z';

export interface Section {
  readonly axis: SectionAxis;
  /** Place of the cut along the axis in the world, mm. */
  readonly at: number;
  /** Keep the side with the larger coordinate instead of the smaller. */
  readonly flipped: boolean;
}

export interface ViewState {
  readonly selectedPart: string | undefined;
  readonly selectedClearance: string | undefined;
  readonly selectedFinding: string | undefined;
  readonly hoveredPart: string | undefined;
  /** Faces that a person points at in a list, to be found in the drawing. */
  readonly pointedFaces: readonly FaceRef[];
  readonly xray: boolean;
  readonly reservedSpaces: boolean;
  readonly section: Section | undefined;
  /** Dragged parts follow the pointer instead of seating themselves on mounts. */
  readonly freePlacement: boolean;
  readonly view: StandardView;
  /** Raised to ask the viewport to fit the view again, also when `view` stays the same. */
  readonly fitRequest: number;
}

const NO_FACES: readonly FaceRef[] = [];

export const viewStore = createStore<ViewState>()(() => ({
  selectedPart: undefined,
  selectedClearance: undefined,
  selectedFinding: undefined,
  hoveredPart: undefined,
  pointedFaces: NO_FACES,
  xray: false,
  reservedSpaces: false,
  section: undefined,
  freePlacement: false,
  view: 'three-quarter',
  fitRequest: 0,
}));

/** Lets go of everything that belongs to one plan, when another is opened. */
export function resetView(): void {
  viewStore.setState({
    selectedPart: undefined,
    selectedClearance: undefined,
    selectedFinding: undefined,
    hoveredPart: undefined,
    pointedFaces: NO_FACES,
    section: undefined,
  });
  fitView();
}

/** Selecting one kind of thing lets go of the others, so that tree, table and viewport always agree. */
export function selectPart(id: string | undefined): void {
  viewStore.setState({ selectedPart: id, selectedClearance: undefined, selectedFinding: undefined });
}

export function selectClearance(id: string | undefined): void {
  viewStore.setState({ selectedPart: undefined, selectedClearance: id, selectedFinding: undefined });
}

export function selectFinding(id: string | undefined): void {
  viewStore.setState({ selectedPart: undefined, selectedClearance: undefined, selectedFinding: id });
}

export function hoverPart(id: string | undefined): void {
  if (viewStore.getState().hoveredPart !== id) viewStore.setState({ hoveredPart: id });
}

export function pointAtFaces(faces: readonly FaceRef[] = NO_FACES): void {
  viewStore.setState({ pointedFaces: faces });
}

export function lookFrom(view: StandardView): void {
  viewStore.setState((state) => ({ view, fitRequest: state.fitRequest + 1 }));
}

export function fitView(): void {
  viewStore.setState((state) => ({ fitRequest: state.fitRequest + 1 }));
}
