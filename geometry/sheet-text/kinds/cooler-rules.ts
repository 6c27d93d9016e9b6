import { field, ignored, type KindRules } from '../figure-rules';
import type { Atom } from '../words/atoms';
import { fanSizes } from './fan-sizes';

const body: readonly Atom[] = ['max', 'size', 'outer', 'heatsink', 'block', 'pump', 'without fan'];
const ofFan: readonly Atom[] = ['fan', 'max', 'load', 'with fan'];
const withFan = 'This figure includes the fan. Is it also the figure of the fins alone?';
const alongAir = 'Is this depth that of the fins alone, without the fan?';

export const coolerRules: KindRules = {
  own: ['cooler', 'processor'],
  figures: [
    ignored(['radiator'], undefined, 'of the radiator, which is a part of its own'),
    ignored(['memory'], undefined, 'room over the memory; the form has no field for it'),
    ignored(['weight', 'without fan'], undefined, 'weight without the fan'),
    ignored(['weight', 'heatsink'], undefined, 'weight of the fins alone'),
    field('height', 'length', ['height', 'without fan'], body, 'height without the fan', {
      isExplicit: true,
    }),
    field('height', 'length', ['height'], body, 'height of the cooler'),
    field('height', 'length', ['height', 'with fan'], body, 'height with the fan', { ask: withFan }),
    field('width', 'length', ['width'], body, 'width of the cooler'),
    field('width', 'length', ['width', 'with fan'], body, 'width with the fan', { ask: withFan }),
    field('depth', 'length', ['depth', 'without fan'], body, 'depth without the fan', { isExplicit: true }),
    field('depth', 'length', ['depth'], [...body, 'with fan'], 'depth', { ask: alongAir }),
    field('depth', 'length', ['length'], [...body, 'with fan'], 'length', { ask: alongAir }),
    field('mass', 'mass', ['weight'], ['max', 'with fan'], 'weight of the cooler'),
    field('watts', 'power', ['design power'], ['max', 'power'], 'heat it is made for'),
    field('pumpWatts', 'power', ['pump', 'power'], ['max', 'load'], 'power of the pump'),
    field('pumpSound', 'sound', ['pump'], ['noise', 'max', 'load'], 'sound of the pump'),
    field('fan.count', 'count', ['fan'], ['count', 'with fan'], 'number of fans'),
    field('fan.thickness', 'length', ['fan', 'thickness'], ['with fan', 'height'], 'thickness of the fan'),
    field('fan.size', 'length', ['fan'], ['size', 'diameter', 'with fan', 'width'], 'frame of the fan', {
      among: fanSizes,
    }),
    field('eachFan.speed', 'speed', [], [...ofFan, 'speed'], 'top speed of the fan'),
    field('eachFan.speed', 'count', ['speed'], ofFan, 'top speed of the fan'),
    field('eachFan.flow', 'flow', [], [...ofFan, 'flow'], 'free flow of the fan'),
    field('eachFan.pressure', 'pressure', [], [...ofFan, 'pressure'], 'static pressure of the fan'),
    field('eachFan.sound', 'sound', [], [...ofFan, 'noise', 'pressure'], 'sound level'),
    field('tubes.length', 'length', ['tube', 'length'], ['max'], 'length of the tubes'),
    field('tubes.diameter', 'length', ['tube', 'outer diameter'], [], 'outer diameter of the tubes'),
  ],
};
