/**
 * From the machine to a network: node 0 the room, then the cells, then a node inside each device that has fins or
 * several ways out, and one before each fan whose intake something stands in front of.
 */
import {
  airSpecificHeat,
  FREE_FALL,
  KELVIN_AT_ZERO_CELSIUS,
  makersAirDensity,
} from '../../standards/standard-atmosphere';
import type { AssumptionValues } from '../assumptions';
import { cellAt } from './air-cells';
import type { HeatPath } from './carry-heat';
import type { DeviceRatings } from './device-ratings';
import type { Device, OutletShare, Stream } from './devices';
import { curveAtSpeed, curvesInSeries, type FanCurve } from './fan-curve';
import { finLosses } from './fin-losses';
import { type AirLink, openingLaw } from './link-law';
import type { MachineAir } from './machine-air';
import { heightOf } from './machine-space';
import { openShareOf } from './openings';
import { type Port, screenArea } from './ports';

/** What a link of the machine is for. */
export type LinkRole =
  | { readonly kind: 'between cells' }
  | { readonly kind: 'opening'; readonly name: string }
  | { readonly kind: 'seam' }
  | { readonly kind: 'stream'; readonly device: string; readonly stream: string }
  | { readonly kind: 'outlet'; readonly device: string };

export interface MachineLink extends AirLink {
  readonly lift: number;
  readonly role: LinkRole;
  /** Height at which the two nodes meet, m. */
  readonly height: number;
}

export interface MachineNetwork {
  readonly nodes: number;
  readonly links: readonly MachineLink[];
  /** Height of every node, m. */
  readonly heights: Float64Array;
  readonly paths: readonly HeatPath[];
  readonly density: number;
  /** Node in which the air of a device takes up its heat, by device id. */
  readonly heatNode: ReadonlyMap<string, number>;
  /** Node from which a stream draws, by stream id. */
  readonly intakeNode: ReadonlyMap<string, number>;
  /** Index of the link of a stream, by stream id. */
  readonly streamLink: ReadonlyMap<string, number>;
  /** Sets fan speeds in place; nothing flows through a stream before it is first called. */
  readonly tune: (shareOf: ShareOf) => void;
  /** Sets the buoyancy of the given rises above the room, K, in place. */
  readonly warm: (rises: Float64Array, room: number) => void;
}

export const ROOM = 0;

/** Share of top speed of a part's fans in a device. */
export type ShareOf = (device: Device, partId: string) => number;

/** A link while it is being set. */
interface LiftedLink extends MachineLink {
  lift: number;
}

interface TunedLink extends LiftedLink {
  linear: number;
  quadratic: number;
  fan?: FanCurve;
}

interface TunedStream {
  readonly link: TunedLink;
  readonly device: Device;
  readonly stream: Stream;
  readonly outletArea: number | undefined;
}

/** Node of a cell. */
export function cellNode(cell: number): number {
  return cell + 1;
}

/** Screen of a supply's own rear face, at least; ATX12V design guide 2.0, figure 8. */
const SUPPLY_REAR_OPEN = 0.55;

const CM2_PER_M2 = 1e4;

/**
 * What a device gives to the air round it when nothing flows, W/K: some 0.02 m2 of surface at the 10 W/(m2 K) of still
 * air. Against the 10 W/K of a fan's stream it is nothing; without any stream it keeps heat from having nowhere to go.
 */
const STILL_CONDUCTANCE = 0.2;

export function buildNetwork(
  air: MachineAir,
  values: AssumptionValues,
  ratings: DeviceRatings,
  density: number,
): MachineNetwork {
  const builder = new Builder(air, values, ratings, density);
  builder.addCells();
  builder.addOpenings();
  builder.addSeams();
  for (const device of air.devices) builder.addDevice(device);
  return builder.network();
}

class Builder {
  private readonly links: LiftedLink[] = [];
  private readonly paths: HeatPath[] = [];
  private readonly heights: number[];
  private readonly heatNode = new Map<string, number>();
  private readonly intakeNode = new Map<string, number>();
  private readonly streamLink = new Map<string, number>();
  private readonly air: MachineAir;
  private readonly values: AssumptionValues;
  private readonly ratings: DeviceRatings;
  private readonly density: number;
  private readonly tuned: TunedStream[] = [];

  constructor(air: MachineAir, values: AssumptionValues, ratings: DeviceRatings, density: number) {
    this.air = air;
    this.ratings = ratings;
    this.values = values;
    this.density = density;
    this.heights = [0, ...air.heights];
  }

  addCells(): void {
    const perArea = this.density * airSpecificHeat.value * this.values.eddies;
    for (const { a, b, effectiveArea, freeArea, at } of this.air.cells.links) {
      this.open(cellNode(a), cellNode(b), effectiveArea, heightOf(this.air.space, at), {
        kind: 'between cells',
      });
      this.paths.push({ a: cellNode(a), b: cellNode(b), conductance: perArea * freeArea });
    }
    for (const { cell, area } of this.air.walls)
      this.paths.push({ a: cellNode(cell), b: ROOM, conductance: this.values.wallLoss * area });
  }

  addOpenings(): void {
    for (const { name, cell, area, open, at } of this.air.openings) {
      const effective = area * openShareOf(open, this.values) * this.values.openingCoefficient;
      this.open(cellNode(cell), ROOM, effective, heightOf(this.air.space, at), { kind: 'opening', name });
    }
  }

  addSeams(): void {
    const { walls, seams, slotCovers, space } = this.air;
    const whole = walls.reduce((sum, { area }) => sum + area, 0);
    const total = (seams * this.values.seamGap * this.values.openingCoefficient) / 1000;
    for (const { cell, area, at } of walls)
      this.open(cellNode(cell), ROOM, (total * area) / whole, heightOf(space, at), { kind: 'seam' });
    const cover = (this.values.slotCoverArea * this.values.openingCoefficient) / CM2_PER_M2;
    for (const { cell, at } of slotCovers)
      this.open(cellNode(cell), ROOM, cover, heightOf(space, at), { kind: 'seam' });
  }

  addDevice(device: Device): void {
    const [stream] = device.streams;
    const [outlet] = device.outlets;
    if (!stream || !outlet) return;
    if (device.kind === 'case fan') {
      if (outlet.port.blocked) return;
      const to = this.nodeOf(outlet.port);
      const area = this.outletArea(device, outlet.port, 1);
      this.addStream(device, stream, to, area);
      return;
    }
    const inside = this.newNode(heightOf(this.air.space, device.at));
    this.heatNode.set(device.id, inside);
    this.paths.push({
      a: inside,
      b: cellNode(cellAt(this.air.cells, device.at)),
      conductance: STILL_CONDUCTANCE,
    });
    for (const one of device.streams) this.addStream(device, one, inside);
    const even = 1 / device.outlets.length;
    for (const { port, share } of device.outlets) {
      if (port.blocked) continue;
      const area = this.outletArea(device, port, this.shareOfOutlet(device, share) ?? even);
      this.open(inside, this.nodeOf(port), area, heightOf(this.air.space, port.at), {
        kind: 'outlet',
        device: device.id,
      });
    }
  }

  private shareOfOutlet(device: Device, share: OutletShare): number | undefined {
    if (share === 'even') return undefined;
    if (typeof share === 'object') return share.through;
    const through = device.outlets.find((one) => typeof one.share === 'object')?.share;
    const left = 1 - (typeof through === 'object' ? through.through : 0);
    const back = this.values.cardExhaustBack;
    const same = device.outlets.filter((one) => one.share === share).length;
    return (left * (share === 'to the board' ? back : 1 - back)) / same;
  }

  /** Effective area of a way out of a device, m2. */
  private outletArea(device: Device, port: Port, share: number): number {
    if (device.kind === 'supply' && port.cell === undefined && port.toRoom.length === 0)
      return device.discArea * SUPPLY_REAR_OPEN * this.values.openingCoefficient;
    if (port.cell === undefined) return screenArea(port.toRoom, this.values) || device.discArea;
    const through = port.toCell.length > 0 ? screenArea(port.toCell, this.values) : device.discArea * share;
    return port.curtain === undefined
      ? through
      : Math.min(through, port.curtain * this.values.openingCoefficient * 1.5);
  }

  private addStream(device: Device, stream: Stream, to: number, outletArea?: number): void {
    if (stream.intake.blocked) return;
    const from = this.intakeOf(device, stream);
    this.streamLink.set(stream.id, this.links.length);
    this.intakeNode.set(stream.id, from);
    const link: TunedLink = {
      from,
      to,
      linear: 0,
      quadratic: 0,
      lift: 0,
      role: { kind: 'stream', device: device.id, stream: stream.id },
      height: heightOf(this.air.space, stream.intake.at),
    };
    this.links.push(link);
    this.tuned.push({ link, device, stream, outletArea });
  }

  /** Sets the speed of every fan anew: all else about the links stays. */
  private tune(shareOf: ShareOf): void {
    for (const { link, device, stream, outletArea } of this.tuned) {
      const { linear, quadratic } = this.lossesOf(device, stream, outletArea, shareOf);
      const fan = this.fanOf(device, stream, shareOf);
      link.linear = linear;
      link.quadratic = quadratic;
      if (fan) link.fan = fan;
      else delete link.fan;
    }
  }

  /** The node a stream draws from; a node of its own where something stands before the fan. */
  private intakeOf(device: Device, { intake }: Stream): number {
    if (intake.cell === undefined) return ROOM;
    const direct = cellNode(intake.cell);
    const height = heightOf(this.air.space, intake.at);
    const role = { kind: 'outlet', device: device.id } as const;
    const fromRoom = screenArea(intake.toRoom, this.values);
    if (intake.curtain === undefined && fromRoom === 0) return direct;
    const before = this.newNode(height);
    this.paths.push({ a: before, b: direct, conductance: STILL_CONDUCTANCE });
    const curtain = (intake.curtain ?? device.discArea) * this.values.openingCoefficient;
    this.open(direct, before, curtain, height, role);
    if (fromRoom > 0) this.open(ROOM, before, fromRoom, height, role);
    return before;
  }

  private fanOf(device: Device, stream: Stream, shareOf: ShareOf): FanCurve | undefined {
    const ratio = this.density / makersAirDensity.value;
    const curves = stream.fans.flatMap((place) => {
      const share = shareOf(device, place.part.id);
      return share > 0 && place.withStream ? [curveAtSpeed(this.ratings.curve(place), share, ratio)] : [];
    });
    return curves.length === 0 ? undefined : curvesInSeries(curves);
  }

  private lossesOf(device: Device, stream: Stream, outletArea: number | undefined, shareOf: ShareOf) {
    const { intake, fans } = stream;
    const areas: number[] = [];
    if (intake.cell === undefined && intake.toRoom.length > 0)
      areas.push(screenArea(intake.toRoom, this.values));
    if (intake.toCell.length > 0) areas.push(screenArea(intake.toCell, this.values));
    if (outletArea !== undefined) areas.push(outletArea);
    for (const place of fans) {
      if (shareOf(device, place.part.id) > 0 && place.withStream) continue;
      areas.push((Math.PI / 4) * (place.size / 1000) ** 2 * this.values.stoppedFan);
    }
    let { linear, quadratic } = finLosses(stream, this.values, this.density);
    for (const area of areas) {
      // Passive streams keep a little laminar resistance of their own, so that their slope stays finite.
      const law = openingLaw(Math.max(area, 1e-7), this.density);
      linear += shareOf(device, device.id) > 0 ? 0 : law.quadratic * law.laminarFlow;
      quadratic += law.quadratic;
    }
    return { linear, quadratic };
  }

  private nodeOf(port: Port): number {
    return port.cell === undefined ? ROOM : cellNode(port.cell);
  }

  private open(from: number, to: number, area: number, height: number, role: LinkRole): void {
    if (!(area > 0)) return;
    this.links.push({ from, to, ...openingLaw(area, this.density), lift: 0, role, height });
  }

  private newNode(height: number): number {
    this.heights.push(height);
    return this.heights.length - 1;
  }

  /** Warm air is lighter: what that adds to each link, by the heights of its ends. */
  private warm(rises: Float64Array, room: number): void {
    const perKelvinMetre = (this.density * FREE_FALL) / (room + KELVIN_AT_ZERO_CELSIUS);
    const lightness = (node: number, height: number) =>
      node === ROOM ? 0 : (rises[node] ?? 0) * (height - (this.heights[node] ?? 0));
    for (const link of this.links)
      link.lift = perKelvinMetre * (lightness(link.from, link.height) - lightness(link.to, link.height));
  }

  network(): MachineNetwork {
    const { links, paths, density, heatNode, intakeNode, streamLink, heights } = this;
    return {
      nodes: heights.length,
      links,
      heights: Float64Array.from(heights),
      paths,
      density,
      heatNode,
      intakeNode,
      streamLink,
      tune: (shareOf) => this.tune(shareOf),
      warm: (rises, room) => this.warm(rises, room),
    };
  }
}
