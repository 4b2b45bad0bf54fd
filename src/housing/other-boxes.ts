import { type BoxRow, flat, upright } from './box-rows.ts';
import { inches, mm } from './measures.ts';
import type { Box, Face } from './model.ts';

const M = 'from memory; makers differ by a few millimetres';
const P = 'common practice';

const volumes = (id: string, words: string, face: Face, deep: number): Box =>
  flat({
    id,
    names: [`${words} volume box`, `${words} volume boxes`],
    face,
    deep,
    takes: ['volumes'],
    use: 'albums, diaries and other volumes, lying flat, the largest below',
    source: P,
  });

const glassBox = (size: string, face: Face, deep: number): Box =>
  upright({
    id: `glass-box-${size.replace(' × ', 'x')}`,
    names: [`glass plate box, ${size} in`, `glass plate boxes, ${size} in`],
    face,
    deep,
    takes: ['glass'],
    use: 'glass plates in four-flap enclosures, upright on their long edge, padded; mark it “Glass” and “Heavy”',
    source: P,
  });

const recordBox = (inch: number, face: Face): Box =>
  upright({
    id: `record-box-${inch}`,
    names: [`${inch}-inch record box`, `${inch}-inch record boxes`],
    face,
    deep: 120,
    takes: ['discs'],
    use: 'gramophone records in sleeves, upright and close together; about 40 of shellac weigh 10 kg',
    source: M,
  });

const tube = (id: string, words: string, face: Face): Box => ({
  ...flat({
    id,
    names: [words, `${words}s`],
    face,
    deep: face.short,
    takes: ['rolls'],
    use: 'what is rolled and must stay so, rolled around a core; ask a conservator before unrolling it',
    source: P,
  }),
  lies: 'rolled',
});

const named = (id: string, one: string, many: string, rest: Omit<BoxRow, 'id' | 'names'>): BoxRow => ({
  id,
  names: [one, many],
  source: P,
  ...rest,
});

/** What holds things that do not follow the sizes of paper. */
export const COMMON_BOXES: readonly Box[] = [
  volumes('volume-box-small', 'small', mm(260, 190), 80),
  volumes('volume-box', 'medium', mm(340, 280), 130),
  volumes('volume-box-large', 'large', mm(460, 380), 130),
  flat(
    named('photograph-box', 'photograph box', 'photograph boxes', {
      face: inches(12, 10),
      deep: 75,
      takes: ['photographs'],
      use: 'pages of slides and negatives, and sleeves up to 8 × 10 in, lying flat',
    }),
  ),
  upright(
    named('negative-box', 'negative box', 'negative boxes', {
      face: mm(150, 120),
      deep: 280,
      takes: ['photographs'],
      use: 'negatives up to 4 × 5 in in sleeves, upright',
    }),
  ),
  upright(
    named('slide-box', 'slide box', 'slide boxes', {
      face: mm(115, 80),
      deep: 280,
      takes: ['photographs'],
      use: 'slides without pages, in two rows',
    }),
  ),
  glassBox('4 × 5', mm(140, 115), 100),
  glassBox('5 × 7', mm(195, 145), 100),
  glassBox('8 × 10', mm(265, 215), 60),
  recordBox(7, mm(190, 190)),
  recordBox(10, mm(270, 270)),
  recordBox(12, mm(320, 320)),
  flat(
    named('film-box', 'film box', 'film boxes', {
      face: mm(195, 195),
      deep: 120,
      takes: ['film'],
      use: 'film in cans up to 7 in across, lying flat',
    }),
  ),
  flat(
    named('film-box-large', 'large film box', 'large film boxes', {
      face: mm(325, 325),
      deep: 120,
      takes: ['film'],
      use: 'film in cans up to 12 in across, lying flat',
    }),
  ),
  upright(
    named('tape-box', 'tape box', 'tape boxes', {
      face: mm(215, 200),
      deep: 250,
      takes: ['tapes'],
      use: 'tapes and cassettes in their cases, upright; away from loudspeakers and motors',
    }),
  ),
  upright(
    named('tape-box-large', 'large tape box', 'large tape boxes', {
      face: mm(290, 290),
      deep: 120,
      takes: ['tapes'],
      use: 'tapes on reels up to 10½ in across, upright',
    }),
  ),
  flat(
    named('textile-box', 'textile box', 'textile boxes', {
      face: inches(30, 18),
      deep: 150,
      takes: ['textiles'],
      use: 'textiles in acid-free tissue, folded as little as can be, each fold padded',
    }),
  ),
  flat(
    named('textile-box-large', 'large textile box', 'large textile boxes', {
      face: inches(40, 18),
      deep: 165,
      takes: ['textiles'],
      use: 'quilts and long garments in acid-free tissue, folded as little as can be, each fold padded',
    }),
  ),
  flat(
    named('object-box-small', 'small object box', 'small object boxes', {
      face: mm(250, 200),
      deep: 80,
      takes: ['objects'],
      use: 'small keepsakes, each wrapped in acid-free tissue, so that nothing rolls about',
    }),
  ),
  flat(
    named('object-box', 'object box', 'object boxes', {
      face: mm(380, 300),
      deep: 150,
      takes: ['objects'],
      use: 'keepsakes, each wrapped in acid-free tissue; the heavy ones below',
    }),
  ),
  flat(
    named('object-box-large', 'large object box', 'large object boxes', {
      face: mm(500, 400),
      deep: 300,
      takes: ['objects'],
      use: 'large keepsakes, one or a few to a box',
    }),
  ),
  tube('tube', 'tube', mm(965, 127)),
  tube('tube-long', 'long tube', mm(1270, 152)),
];
