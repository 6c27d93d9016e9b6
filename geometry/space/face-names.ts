/** A face of a box, by the box's own axis that points out of it. */
export type FaceName = '-x' | '+x' | '-y' | '+y' | '-z' | '+z';

/** Face k at bit k of a feature mask: one bit is a face, two bits the edge between them, three bits a corner. */
export const FACE_NAMES: readonly FaceName[] = ['-x', '+x', '-y', '+y', '-z', '+z'];

/** The faces in a feature mask: one for a face, two for an edge, three for a corner. */
export function facesOfFeature(mask: number): readonly FaceName[] {
  return FACE_NAMES.filter((_, bit) => (mask & (1 << bit)) !== 0);
}

/** The name of face number 0 to 5; throws a RangeError for any other number. */
export function faceNameOf(index: number): FaceName {
  const name = FACE_NAMES[index];
  if (name === undefined) throw new RangeError(`no face has number ${index}`);
  return name;
}
