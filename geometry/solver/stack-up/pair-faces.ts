/** The two faces of a pair, named as in the clearances. */
import type { SceneBox } from '../../plan/scene';
import { faceTowards } from '../../space/separation';
import type { FaceRef } from '../finding';
import { type Name, nameOfBox } from '../part-names';
import type { LegPair } from './discover';
import { type PlanStudy, partAt } from './plan-study';

type Sides = readonly [from: number, to: number];

/** Numbers into `Scene.boxes`. */
export function numbersOfPair({ leg, from, to }: LegPair): Sides {
  return [leg.fromBoxes[from] ?? -1, leg.toBoxes[to - leg.fromBoxes.length] ?? -1];
}

export function facesOfPair(study: PlanStudy, pair: LegPair): readonly [FaceRef, FaceRef] {
  const [from, to] = numbersOfPair(pair).map((number) => sceneBox(study, number));
  if (!from || !to) throw new RangeError('a pair has two boxes');
  return [
    { ...refOf(study, from), face: faceTowards(from.box, pair.along, 1) },
    { ...refOf(study, to), face: faceTowards(to.box, pair.along, -1) },
  ];
}

/** What the two boxes are called in sentences. */
export function namesOfPair(study: PlanStudy, pair: LegPair): readonly [Name, Name] {
  const [from, to] = numbersOfPair(pair).map((number) => nameOf(study, number));
  if (!from || !to) throw new RangeError('a pair has two boxes');
  return [from, to];
}

export function nameOf(study: PlanStudy, number: number): Name {
  const { part, body } = sceneBox(study, number);
  const owner = partAt(study, part);
  return nameOfBox(owner.placed.kind, owner.name, body);
}

function sceneBox(study: PlanStudy, number: number): SceneBox {
  const entry = study.scene.boxes[number];
  if (!entry) throw new RangeError(`no box has number ${number}`);
  return entry;
}

function refOf(study: PlanStudy, { part, body }: SceneBox): FaceRef {
  return { part: partAt(study, part).placed.id, box: body.name };
}
