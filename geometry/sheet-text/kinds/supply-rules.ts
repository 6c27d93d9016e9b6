import { field, ignored, type KindRules, massRule } from '../figure-rules';

const withPlugs = 'This depth includes plugs or leads. Is it the depth of the supply itself?';

export const supplyRules: KindRules = {
  own: ['supply'],
  figures: [
    ignored(['cable', 'length'], undefined, 'length of a lead; the form has no field for it'),
    field('width', 'length', ['width'], ['max', 'size'], 'width'),
    field('height', 'length', ['height'], ['max', 'size'], 'height'),
    field('depth', 'length', ['depth'], ['max', 'size', 'without plugs'], 'depth'),
    field('depth', 'length', ['length'], ['max', 'size', 'without plugs'], 'length'),
    field('depth', 'length', ['depth', 'with plugs'], ['max', 'size'], 'depth with plugs', {
      ask: withPlugs,
      yieldsToAny: true,
    }),
    field('depth', 'length', ['length', 'with plugs'], ['max', 'size'], 'length with plugs', {
      ask: withPlugs,
      yieldsToAny: true,
    }),
    field('watts', 'power', [], ['power', 'max', 'load', 'form', 'type'], 'rated power'),
    field('fan.size', 'length', ['fan'], ['size', 'diameter'], 'diameter of the fan'),
    field('sound', 'sound', [], ['noise', 'max', 'load', 'fan', 'pressure'], 'sound level'),
    massRule,
  ],
};
