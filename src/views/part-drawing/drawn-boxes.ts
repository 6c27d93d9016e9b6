/** Which boxes of a part each view shows: covers that hide everything are taken off, and the drawing says so. */
import {
  type BodyBox,
  boundsOfBoxes,
  type Element,
  type PartModel,
  type PartView,
  rangeAlong,
} from '../../../geometry';

/** Walls that a view along one of their normals looks straight onto. */
const covers: Readonly<Record<PartView['name'], Element | undefined>> = {
  front: 'side panel',
  'from above': 'top wall',
  'from the left': undefined,
};

export interface DrawnBoxes {
  readonly solid: readonly BodyBox[];
  readonly reserved: readonly BodyBox[];
}

/** For an enclosure the cover towards the viewer, with the mesh set into it, is left out. */
export function boxesInView(model: PartModel, view: PartView): DrawnBoxes {
  const cover = covers[view.name];
  const taken = model.boxes.filter(({ element }) => element === cover);
  const under = boundsOfBoxes(taken.map(({ box }) => box));
  const lowest = under && rangeAlong(view.towards, under)[0];
  const isOff = ({ element, box }: BodyBox): boolean => {
    if (lowest === undefined) return false;
    if (element === cover) return true;
    const bounds = boundsOfBoxes([box]);
    return element === 'vent' && bounds !== undefined && rangeAlong(view.towards, bounds)[0] >= lowest - 1e-6;
  };
  const shown = model.boxes.filter((body) => !isOff(body));
  return {
    solid: shown.filter(({ role }) => role === 'solid'),
    reserved: shown.filter(({ role }) => role === 'plug space' || role === 'bend space'),
  };
}
