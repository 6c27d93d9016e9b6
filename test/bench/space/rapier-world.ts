import * as rapier from '@dimforge/rapier3d-compat';
import { boundsOfBox, type OrientedBox } from '../../../geometry/space/oriented-box';
import { quaternionOf } from '../../oracles/space/quaternion';

/** One collider per box, one fixed rigid body per part, the query tree up to date. */
export interface RapierWorld {
  readonly world: rapier.World;
  readonly bodies: readonly rapier.RigidBody[];
  readonly colliders: readonly (readonly rapier.Collider[])[];
  /** Bounds of each box as centre and half extents, for the queries. */
  readonly reach: readonly (readonly rapier.Vector3[])[];
}

export async function buildRapierWorld(parts: readonly (readonly OrientedBox[])[]): Promise<RapierWorld> {
  await rapier.init();
  const world = new rapier.World({ x: 0, y: 0, z: 0 });
  const bodies: rapier.RigidBody[] = [];
  const colliders: rapier.Collider[][] = [];
  const reach: rapier.Vector3[][] = [];
  for (const boxes of parts) {
    const body = world.createRigidBody(rapier.RigidBodyDesc.fixed());
    bodies.push(body);
    colliders.push(boxes.map((box) => world.createCollider(colliderOf(box), body)));
    reach.push(
      boxes.map((box) => {
        const { min, max } = boundsOfBox(box);
        return new rapier.Vector3((max[0] - min[0]) / 2, (max[1] - min[1]) / 2, (max[2] - min[2]) / 2);
      }),
    );
  }
  world.step();
  return { world, bodies, colliders, reach };
}

function colliderOf(box: OrientedBox): rapier.ColliderDesc {
  const [x, y, z, w] = quaternionOf(box.rotation);
  return rapier.ColliderDesc.cuboid(...box.half)
    .setTranslation(...box.centre)
    .setRotation({ x, y, z, w });
}
