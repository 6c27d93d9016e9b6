/** Whether a machine goes into a bag, a shelf or the gap under a desk. Sizes in mm. */

export interface Size {
  readonly length: number;
  readonly height: number;
  readonly width: number;
}

/** Room left when it goes in the best way it may be turned; negative when it does not. */
export function roomLeft(machine: Size, place: Size, upright: boolean): number {
  const ways = upright ? uprightWays(machine) : allWays(machine);
  return Math.max(...ways.map((way) => leastLeft(way, place)));
}

function leastLeft(machine: Size, place: Size): number {
  return Math.min(place.length - machine.length, place.height - machine.height, place.width - machine.width);
}

function uprightWays({ length, height, width }: Size): readonly Size[] {
  return [
    { length, height, width },
    { length: width, height, width: length },
  ];
}

function allWays({ length, height, width }: Size): readonly Size[] {
  return [
    ...uprightWays({ length, height, width }),
    ...uprightWays({ length, height: width, width: height }),
    ...uprightWays({ length: height, height: length, width }),
  ];
}
