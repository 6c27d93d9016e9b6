/**
 * Room for hands and tools while a machine is put together, mm. Published tables of access openings exist (military
 * and spaceflight human-engineering standards) but could not be read; these are working defaults of our own, to be
 * changed by whoever knows better, and shown beside every verdict that rests on them.
 */
import { commonPractice } from './cited-documents';

const ownChoice = { note: 'our own working default' };

/** A hand by the sizes that matter at the tip of a reach. */
export interface HandSize {
  /** One finger across, and how far it goes in before the knuckles. */
  readonly finger: number;
  readonly fingerDepth: number;
  /** Behind a latch, to get a nail under it. */
  readonly behindLatch: number;
  /** Square section of fist or wrist that has to follow the fingers. */
  readonly wrist: number;
  /** Fist round the handle of a driver. */
  readonly fist: number;
  /** Fingertips round a small knob or a precision driver, across. */
  readonly pinch: number;
}

/** Presets by name. */
export const hands = {
  small: commonPractice<HandSize>(
    { finger: 16, fingerDepth: 55, behindLatch: 20, wrist: 55, fist: 80, pinch: 42 },
    ownChoice,
  ),
  usual: commonPractice<HandSize>(
    { finger: 20, fingerDepth: 60, behindLatch: 25, wrist: 65, fist: 95, pinch: 50 },
    ownChoice,
  ),
  large: commonPractice<HandSize>(
    { finger: 23, fingerDepth: 65, behindLatch: 28, wrist: 75, fist: 105, pinch: 56 },
    ownChoice,
  ),
} as const;
export type HandPreset = keyof typeof hands;

/** A screwdriver: shaft, then handle; the hand closes round the handle that much above its lower end. */
export interface Driver {
  readonly label: string;
  readonly shaftDiameter: number;
  readonly shaftLength: number;
  readonly handleDiameter: number;
  readonly handleLength: number;
  /** Held in the fist, or between fingertips. */
  readonly grip: 'fist' | 'pinch';
}

export const drivers = {
  usual: commonPractice<Driver>(
    {
      label: 'screwdriver, 100 mm shaft',
      shaftDiameter: 6,
      shaftLength: 100,
      handleDiameter: 35,
      handleLength: 100,
      grip: 'fist',
    },
    { note: 'number 2 cross-head' },
  ),
  long: commonPractice<Driver>(
    {
      label: 'long screwdriver, 250 mm shaft',
      shaftDiameter: 6,
      shaftLength: 250,
      handleDiameter: 35,
      handleLength: 100,
      grip: 'fist',
    },
    { note: 'reaches past tall coolers' },
  ),
  precision: commonPractice<Driver>(
    {
      label: 'precision screwdriver, 60 mm shaft',
      shaftDiameter: 4,
      shaftLength: 60,
      handleDiameter: 14,
      handleLength: 90,
      grip: 'pinch',
    },
    { note: 'number 0 or 1 cross-head, for M2 and M3 screws of modules' },
  ),
} as const;
export type DriverName = keyof typeof drivers;

/** A flat stick or the end of a driver that presses a slot's latch where no finger gets in. */
export const latchStick = commonPractice({ diameter: 6, length: 200 } as const, ownChoice);

/** How far an arm may lean away from the way a plug comes off. */
export const armLeanDegrees = commonPractice(45, ownChoice);
