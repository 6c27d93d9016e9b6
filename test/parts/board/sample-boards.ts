/** Invented boards that keep to their form's standard; places in the board frame, mm. */
import { type BoardSpec, boardSpecSchema } from '../../../geometry/parts/board/spec';

export const microAtxBoard: BoardSpec = boardSpecSchema.parse({
  kind: 'board',
  maker: 'Generic',
  model: 'microATX board',
  form: 'microATX',
  socket: { pattern: 'square-78', at: [85, 100] },
  memory: { form: 'DIMM', count: 4, at: [85, 160] },
  slots: [
    { position: 1, size: 'x1' },
    { position: 2, size: 'x16' },
    { position: 3, size: 'x1' },
    { position: 4, size: 'x4' },
  ],
  m2: [
    { id: 'A', at: [145, 40], towards: '+y', lengths: [60, 80], sink: 12 },
    { id: 'B', at: [213, 150], towards: '+y', lengths: [42, 80] },
  ],
  headers: [
    { type: 'main 24-pin', at: [68, 237], along: 'x' },
    { type: 'processor 8-pin', at: [8, 46] },
    { type: 'fan 4-pin', at: [8, 190] },
    { type: 'fan 4-pin', at: [8, 205] },
    { type: 'USB 3 20-pin', at: [120, 236], along: 'x' },
    { type: 'USB C internal', at: [145, 236], along: 'x' },
    { type: 'SATA angled', at: [190, 236] },
    { type: 'SATA upright', at: [165, 236], along: 'x' },
    { type: 'USB 2 10-pin', at: [239, 170] },
    { type: 'front panel', at: [231, 238], along: 'x' },
    { type: 'front audio', at: [237, 30] },
    { type: 'clear settings', at: [239, 200] },
  ],
  sinks: [
    { id: 'rear', from: [25, 28], to: [120, 46], height: 30 },
    { id: 'top', from: [12, 62], to: [38, 140], height: 32 },
  ],
  coinCell: [200, 100],
});

export const atxBoard: BoardSpec = boardSpecSchema.parse({
  ...microAtxBoard,
  model: 'ATX board',
  form: 'ATX',
  slots: [
    { position: 2, size: 'x16' },
    { position: 5, size: 'x16' },
    { position: 7, size: 'x4' },
  ],
});

export const miniItxBoard: BoardSpec = boardSpecSchema.parse({
  kind: 'board',
  maker: 'Generic',
  model: 'Mini-ITX board',
  form: 'Mini-ITX',
  socket: { pattern: 'rectangle-54x90', at: [80, 85] },
  memory: { form: 'DIMM', count: 2, at: [85, 140] },
  slots: [{ position: 1, size: 'x16' }],
  m2: [{ id: 'back', at: [90, 50], towards: '+y', lengths: [80], behind: true }],
  headers: [
    { type: 'main 24-pin', at: [50, 163], along: 'x' },
    { type: 'processor 8-pin', at: [8, 50] },
  ],
});
