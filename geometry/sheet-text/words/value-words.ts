/** Words that are values themselves: forms, yes and no, grades, types of plug. */

/** What a value word may fill: a field or a type of plug. */
export type Slot =
  | 'supply form'
  | 'board form'
  | 'memory form'
  | 'drive form'
  | 'cooler style'
  | 'grade'
  | 'answer'
  | 'modular'
  | 'plug'
  | 'mark';

/** Slot, then value, then how sheets write it. */
export const valueWords: readonly (readonly [slot: Slot, value: string, words: string])[] = [
  ['supply form', 'SFX-L', 'sfx-l, sfx l, sfxl'],
  ['supply form', 'SFX', 'sfx'],
  ['supply form', 'TFX', 'tfx'],
  ['supply form', 'Flex ATX', 'flex atx, flex-atx'],
  ['supply form', 'ATX', 'atx'],
  ['board form', 'microATX', 'microatx, micro-atx, micro atx, matx, m-atx, uatx'],
  ['board form', 'Mini-ITX', 'mini-itx, mini itx, mitx'],
  ['board form', 'FlexATX', 'flexatx'],
  ['board form', 'Mini-DTX', 'mini-dtx, mini dtx'],
  ['memory form', 'SO-DIMM', 'so-dimm, so dimm, sodimm'],
  ['memory form', 'DIMM', 'dimm, udimm, u-dimm, dimms'],
  [
    'cooler style',
    'tower',
    'tower, single tower, turm, tour, tour simple, torre, torre singola, tower cooler',
  ],
  [
    'cooler style',
    'twin tower',
    'twin tower, dual tower, double tower, doppelturm, double tour, doble torre',
  ],
  [
    'cooler style',
    'top flow',
    'top flow, topblow, top-flow, topflow, top blow, top-blow, downdraft, down draft, top-down',
  ],
  [
    'cooler style',
    'liquid block',
    'liquid cooler, water cooler, liquid cooling, wasserkühlung, refrigeración líquida, watercooling, all in one liquid cooler, ' +
      'all-in-one liquid cooler, raffreddamento a liquido, refroidissement liquide',
  ],
  ['grade', 'bronze', 'bronze, bronce, bronzo'],
  ['grade', 'silver', 'silver, silber, argent, plata, argento'],
  ['grade', 'gold', 'gold, or, oro'],
  ['grade', 'platinum', 'platinum, platin, platine, platino'],
  ['grade', 'titanium', 'titanium, titan, titane, titanio'],
  ['answer', 'yes', 'yes, ja, oui, sí, si, fully'],
  ['answer', 'no', 'no, nein, non, nee, none'],
  [
    'modular',
    'yes',
    'fully modular, vollmodular, entièrement modulaire, totalmente modular, completamente modulare, full modular',
  ],
  [
    'modular',
    'no',
    'fixed, fest, non modular, non-modular, no modular, fixed cables, fixed leads, nicht modular',
  ],
  ['modular', 'partly', 'semi modular, semi-modular, teilmodular, semi modulaire, partly modular'],
  ['plug', 'drive power', 'sata, sata power'],
  ['plug', 'peripheral 4-pin', 'peripheral'],
  ['mark', 'main', 'main, mainboard, motherboard'],
  ['mark', 'processor', 'cpu, processor, prozessor, eps'],
  ['mark', 'card', 'pcie, pci-e, gpu, graphics'],
];

/** Small numbers as words. Articles ('un', 'ein') are left out: they seldom count. */
export const numberWords: Readonly<Record<string, number>> = {
  one: 1,
  single: 1,
  two: 2,
  dual: 2,
  double: 2,
  three: 3,
  triple: 3,
  four: 4,
  zwei: 2,
  drei: 3,
  vier: 4,
  deux: 2,
  trois: 3,
  quatre: 4,
  dos: 2,
  tres: 3,
  due: 2,
  tre: 3,
};
