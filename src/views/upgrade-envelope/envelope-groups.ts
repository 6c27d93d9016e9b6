/** The mounts of a plan by what goes on them, in the order a client asks. */
import { kindName, type MountEnvelope, type PartKind, type Scene } from '../../../geometry';

/** What people replace first stands first. */
const ORDER: readonly PartKind[] = ['card', 'cooler', 'memory', 'drive', 'supply', 'radiator', 'fan'];

export interface EnvelopeGroup {
  /** 'Card', 'Cooler'. */
  readonly title: string;
  readonly mounts: readonly MountEnvelope[];
}

export function envelopeGroups(mounts: readonly MountEnvelope[]): readonly EnvelopeGroup[] {
  return ORDER.map((kind) => ({
    title: kindName(kind),
    mounts: mounts.filter((mount) => mount.kind === kind),
  })).filter((group) => group.mounts.length > 0);
}

/** 'Brinewell Fathom 304' of the part on the mount; undefined for an empty one. */
export function occupant(scene: Scene, { filledBy }: MountEnvelope): string | undefined {
  const part = filledBy === undefined ? undefined : scene.parts[scene.indexById.get(filledBy) ?? -1];
  return part && `${part.spec.maker} ${part.spec.model}`;
}
