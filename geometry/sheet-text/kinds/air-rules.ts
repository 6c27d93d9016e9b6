/** Fans and radiators. */
import { field, ignored, type KindRules, massRule } from '../figure-rules';
import { fanSizes, radiatorRows } from './fan-sizes';

export const fanRules: KindRules = {
  own: ['fan'],
  figures: [
    ignored(['cable', 'length'], undefined, 'length of the lead; the form has no field for it'),
    field('thickness', 'length', ['thickness'], ['size'], 'thickness'),
    field('thickness', 'length', ['depth'], ['size'], 'depth of the frame'),
    field('size', 'length', [], ['size', 'diameter', 'width', 'type', 'form'], 'frame', { among: fanSizes }),
    field('speed', 'speed', [], ['speed', 'max', 'load'], 'top speed'),
    field('speed', 'count', ['speed'], ['max'], 'top speed'),
    field('flow', 'flow', [], ['flow', 'max', 'load'], 'free flow'),
    field('flow', 'count', ['flow'], ['max'], 'free flow'),
    field('pressure', 'pressure', [], ['pressure', 'max', 'load'], 'static pressure'),
    field('sound', 'sound', [], ['noise', 'max', 'load', 'pressure'], 'sound level'),
    field('watts', 'power', ['power'], ['max', 'load'], 'power of the fan'),
    massRule,
  ],
};

export const radiatorRules: KindRules = {
  own: ['radiator', 'heatsink'],
  figures: [
    ignored(['tube'], undefined, 'of the tubes, which belong to the cooler’s block'),
    ignored(['block'], undefined, 'of the block, which is a part of its own'),
    field('thickness', 'length', ['thickness', 'with fan'], ['max'], 'thickness with the fans', {
      ask: 'This thickness includes the fans. Is it the thickness of the radiator alone?',
      yieldsToAny: true,
    }),
    field('length', 'length', ['length'], ['max', 'size'], 'length'),
    field('width', 'length', ['width'], ['max', 'size'], 'width'),
    field('thickness', 'length', ['thickness'], ['max', 'size', 'without fan'], 'thickness'),
    field('thickness', 'length', ['height'], ['max', 'size'], 'height, as flat as only the thickness is'),
    field('thickness', 'length', ['depth'], ['max', 'size'], 'depth, as flat as only the thickness is'),
    field('row', 'length', ['radiator'], ['size', 'form', 'type'], 'named by its fan row', {
      among: radiatorRows,
      asText: true,
    }),
    field('row', 'count', ['radiator'], ['size', 'form', 'type'], 'named by its fan row', {
      among: radiatorRows,
      asText: true,
    }),
    massRule,
  ],
};
