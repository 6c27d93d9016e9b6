/** What sounds in the machine and how loud, at 1 m and at the ear. */
import type { PlacedPart, Scene } from '../../plan/scene';
import { breathingGapOfBlades } from '../../standards/fan-breathing';
import type { Device, FanPlace, Stream } from '../air/devices';
import { ratedFrameFan } from '../air/fan-ratings';
import type { MachineAir } from '../air/machine-air';
import type { AssumptionValues } from '../assumptions';
import type { EstimateInput } from '../estimate';
import { believable, readRating } from '../ratings';
import { levelAtDistance, levelChangeBySpeed, sumOfLevels } from './levels';

export interface SoundSource {
  readonly id: string;
  readonly part: PlacedPart;
  readonly label: string;
  /** dB at 1 m from the machine. */
  readonly atOneMetre: number;
  /** Share of top speed, for fans. */
  readonly share?: number;
  readonly starved?: true;
  readonly missing: readonly string[];
  readonly inputs: readonly EstimateInput[];
}

/** Fans slower than this are not heard. */
const STILL = 0.02;

/** Loudest first. Shares of top speed by part or device id. */
export function soundSources(
  scene: Scene,
  air: MachineAir | undefined,
  shareOf: (device: Device, partId: string) => number,
  busy: { card: number; supply: number },
  values: AssumptionValues,
): readonly SoundSource[] {
  const moving = (air?.devices ?? []).flatMap((device) =>
    device.streams.flatMap((stream) =>
      device.kind === 'card'
        ? []
        : stream.fans.flatMap((place, index) => fanSource(device, stream, place, index, shareOf, values)),
    ),
  );
  const cards = (air?.devices ?? [])
    .filter(({ kind }) => kind === 'card')
    .flatMap((device) => cardSource(device, shareOf(device, device.id), values));
  const others = scene.parts.flatMap((part) => otherSources(part, busy, values));
  return [...moving, ...cards, ...others].sort((a, b) => b.atOneMetre - a.atOneMetre);
}

/** All sources at the ear, dB: at a distance, with what the room adds. */
export function levelAtEar(
  sources: readonly SoundSource[],
  metres: number,
  values: AssumptionValues,
): number | undefined {
  if (sources.length === 0) return undefined;
  const together = sumOfLevels(sources.map(({ atOneMetre }) => atOneMetre));
  return levelAtDistance(together, 1, metres) + values.roomGain;
}

function isStarved({ intake }: Stream, place: FanPlace): boolean {
  return intake.cell !== undefined && intake.gap < breathingGapOfBlades(place.size) / 2;
}

function fanSource(
  device: Device,
  stream: Stream,
  place: FanPlace,
  index: number,
  shareOf: (device: Device, partId: string) => number,
  values: AssumptionValues,
): readonly SoundSource[] {
  const share = shareOf(device, place.part.id);
  if (share < STILL) return [];
  const rated = device.kind === 'supply' ? supplyFan(place.part, values) : ratedFrameFan(place, values);
  const starved = isStarved(stream, place);
  const inside = device.kind === 'cooler' ? values.panelLoss : 0;
  const level =
    rated.sound +
    values.sheetSound +
    levelChangeBySpeed(share, values.speedLaw) +
    (starved ? values.starvedFan : 0) -
    inside;
  const several = stream.fans.length > 1 && place.part.kind !== 'fan';
  return [
    {
      id: `${place.part.id} ${index + 1}`,
      part: place.part,
      label: several ? `${place.part.label}, fan ${index + 1}` : place.part.label,
      atOneMetre: level,
      share,
      ...(starved ? { starved: true } : {}),
      missing: rated.missing.filter((text) => text.includes('sound')),
      inputs: rated.inputs.filter(({ unit }) => unit === 'dB'),
    },
  ];
}

function supplyFan(part: PlacedPart, values: AssumptionValues) {
  const stated = part.spec.kind === 'supply' ? part.spec.sound : undefined;
  const reading = readRating(part, 'sound', stated, 'dB', believable.sound);
  return {
    sound: reading.known ? reading.value : values.supplySound,
    missing: reading.known ? [] : [reading.because],
    inputs: [reading.known ? reading.input : assumed(part, 'sound', values.supplySound)],
  };
}

function assumed(part: PlacedPart, title: string, value: number): EstimateInput {
  return { name: `${part.label}, ${title}`, value, unit: 'dB', source: 'assumed' };
}

function cardSource(device: Device, share: number, values: AssumptionValues): readonly SoundSource[] {
  const { part } = device;
  if (share < STILL || part.spec.kind !== 'card') return [];
  const reading = readRating(part, 'sound', part.spec.sound, 'dB', believable.sound);
  const usual = values.cardFanSound + 10 * Math.log10(device.streams.length);
  const starved = device.streams.some((stream) => stream.fans.some((place) => isStarved(stream, place)));
  const level =
    (reading.known ? reading.value + values.sheetSound : usual) + levelChangeBySpeed(share, values.speedLaw);
  return [
    {
      id: part.id,
      part,
      label: part.label,
      atOneMetre: level + (starved ? values.starvedFan : 0) - values.panelLoss,
      share,
      ...(starved ? { starved: true } : {}),
      missing: reading.known ? [] : [reading.because],
      inputs: [reading.known ? reading.input : assumed(part, 'sound at top fan speed', Math.round(usual))],
    },
  ];
}

/** Pumps, spinning drives, and the coils of a card whose sheet tells. */
function otherSources(
  part: PlacedPart,
  busy: { card: number },
  values: AssumptionValues,
): readonly SoundSource[] {
  const { spec } = part;
  const source = (id: string, label: string, level: number, missing: readonly string[]): SoundSource => ({
    id,
    part,
    label,
    atOneMetre: level - values.panelLoss,
    missing,
    inputs: [
      missing.length > 0
        ? assumed(part, 'sound', level)
        : { name: label, value: level, unit: 'dB', source: 'sheet' },
    ],
  });
  if (spec.kind === 'cooler' && spec.style === 'liquid block') {
    const reading = readRating(part, 'sound of the pump', spec.pumpSound, 'dB', believable.sound);
    const level = reading.known ? reading.value : values.pumpSound;
    return [source(`${part.id} pump`, `${part.label}, pump`, level, reading.known ? [] : [reading.because])];
  }
  if (spec.kind === 'drive' && spec.form === '3.5')
    return [
      source(`${part.id} disk`, part.label, values.diskSound, [`the sheet of ${part.label} states no sound`]),
    ];
  if (spec.kind === 'card' && spec.coilSound !== undefined && busy.card > 0) {
    const reading = readRating(part, 'sound of its coils', spec.coilSound, 'dB', believable.sound);
    if (!reading.known) return [];
    return [
      source(`${part.id} coils`, `${part.label}, coils`, reading.value + 20 * Math.log10(busy.card), []),
    ];
  }
  return [];
}
