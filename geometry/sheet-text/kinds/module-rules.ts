/** Memory, drives and processors. */
import { field, ignored, type KindRules, massRule } from '../figure-rules';

export const memoryRules: KindRules = {
  own: ['memory', 'module', 'heatsink'],
  figures: [
    field('height', 'length', ['height'], ['max', 'size', 'with sink'], 'height of the module'),
    field('thickness', 'length', ['thickness'], ['max', 'size', 'with sink'], 'thickness of the module'),
    field('capacity', 'data', ['each module'], ['capacity', 'kit'], 'capacity of one module'),
    field('capacity', 'data', ['kit'], ['capacity'], 'capacity of the kit', {
      ask: 'This is the capacity of a kit. Is it also that of one module?',
      yieldsToAny: true,
    }),
    field('capacity', 'data', [], ['capacity', 'size', 'type', 'form'], 'capacity'),
    field('watts', 'power', ['power'], ['max', 'load'], 'power of the module'),
    massRule,
  ],
};

export const driveRules: KindRules = {
  own: ['drive'],
  figures: [
    field('height', 'length', ['height'], ['max', 'size'], 'height of the drive'),
    field('height', 'length', ['thickness'], ['max', 'size'], 'thickness of the drive'),
    field('length', 'length', ['length'], ['max', 'size'], 'length of the drive'),
    ignored(['width'], ['max', 'size'], 'the width follows from the form'),
    field('capacity', 'data', [], ['capacity', 'size', 'form', 'type', 'with sink'], 'capacity'),
    field('watts', 'power', ['power'], ['max', 'load'], 'power at work'),
    massRule,
  ],
};

export const processorRules: KindRules = {
  own: ['processor'],
  figures: [
    field('class', 'power', ['design power'], [], 'power class'),
    field('peak', 'power', ['power', 'peak'], ['max'], 'peak power'),
    field('peak', 'power', ['power', 'max'], [], 'highest power'),
    field('limit', 'temperature', ['temperature', 'max'], [], 'highest temperature'),
    massRule,
  ],
};
