import { inches, mm } from './measures.ts';
import { exact, loose, type SizeName, sizeless } from './size-names.ts';

const M = 'from memory';

/** Sizes of photographs, mounts, plates and negatives that have a name. */
export const PHOTOGRAPH_SIZES: readonly SizeName[] = [
  loose('carte de visite|cdv|cartes de visite|cdvs|visiting card photograph', inches(4, 2.5), M, {
    form: 'mounted',
    thick: 0.8,
  }),
  loose('cabinet card|cabinet cards|cabinet|kabinettkarte|kabinettkort', inches(6.5, 4.25), M, {
    form: 'mounted',
    thick: 1.5,
  }),
  loose(
    'stereograph|stereographs|stereo card|stereo cards|stereo view|stereoview|stereoviews|stereoscopic card',
    inches(7, 3.5),
    M,
    { form: 'mounted', thick: 1.5 },
  ),
  loose('victoria card', inches(5, 3.25), M, { form: 'mounted', thick: 1.5 }),
  loose('promenade card', inches(7.5, 4), M, { form: 'mounted', thick: 1.5 }),
  loose('boudoir card|boudoir', inches(8.5, 5.25), M, { form: 'mounted', thick: 1.5 }),
  loose('panel card', inches(8.25, 4), M, { form: 'mounted', thick: 1.5 }),
  loose('imperial card|imperial cabinet', inches(9.875, 6.875), M, { form: 'mounted', thick: 1.5 }),
  loose('imperial panel|imperial panel card', inches(13, 7.5), M, { form: 'mounted', thick: 1.5 }),
  loose(
    'postcard|postcards|post card|real photo postcard|postkarte|postkort|brevkort|carte postale|tarjeta postal',
    mm(148, 105),
    'largest of the Universal Postal Union before 1991, from memory',
  ),
  loose('wallet', inches(3.5, 2.5), M),
  loose('passport photo|passport', inches(2, 2), M),
  loose('snapshot', inches(5, 3.5), M),

  loose('mammoth plate', inches(22, 18), M),
  loose('whole plate|full plate|whole-plate', inches(8.5, 6.5), M),
  loose('half plate|half-plate', inches(6.5, 4.75), M),
  loose('quarter plate', inches(4.25, 3.25), M),
  loose('sixth plate', inches(3.25, 2.75), M),
  loose('ninth plate', inches(2.5, 2), M),
  loose('sixteenth plate', inches(1.625, 1.375), M),
  loose('gem|gem tintype|gem size', inches(1, 0.75), M),
  sizeless('tintype|tintypes|ferrotype|ferrotypes', 'photograph'),
  sizeless('daguerreotype|daguerreotypes|ambrotype|ambrotypes', 'glass'),

  loose('lantern slide|lantern slides|magic lantern slide', inches(4, 3.25), M, { form: 'glass', thick: 3 }),
  sizeless('glass plate|glass plates|glass negative|glass negatives|glass plate negative', 'glass'),
  sizeless('negative|negatives|film negative|negativ', 'negative'),
  exact('slide|slides|35 mm slide|transparency|transparencies|dia|dias', inches(2, 2), M, {
    form: 'slide',
    thick: 2,
  }),
  exact(
    'strip of negatives|strips of negatives|negative strip|negative strips',
    mm(228, 35),
    'six frames at 38 mm, arithmetic',
    { form: 'negative' },
  ),
  loose('110 film|110 negative|110 negatives|110', mm(100, 16), 'four frames at 25 mm, arithmetic', {
    form: 'negative',
  }),
  loose('126 film|126 negative|126 negatives', mm(128, 35), 'four frames at 32 mm, arithmetic', {
    form: 'negative',
  }),
  loose(
    '120 film|120 negative|120 negatives|620 film|620 negative|620 negatives|medium format|medium format film|medium format negative|medium format negatives',
    mm(90, 60),
    M,
    { form: 'negative' },
  ),
  loose('127 film|127 negative|127 negatives|127', mm(65, 46), M, { form: 'negative' }),
  exact('disc film|disc film negative|disc negative|disc negatives', mm(65, 65), M, { form: 'negative' }),
  loose('116 film|116 negative|116 negatives|616 film|616 negative|616 negatives', inches(4.25, 2.5), M, {
    form: 'negative',
  }),
  loose('122 film|122 negative|122 negatives', inches(5.5, 3.25), M, { form: 'negative' }),
];

// Paper, plates, sheet film, cards and mounts that are made and sold by these inches; from memory.
const PAIRS =
  '2 x 2|2 x 3|2.25 x 2.25|2.25 x 3.25|2.5 x 3.5|3 x 4|3 x 5|3.25 x 4|3.25 x 4.25|3.25 x 5.5|3.5 x 3.5|3.5 x 5|3.5 x 5.5|3.5 x 7|4 x 5|4 x 6|4.25 x 5.5|4.25 x 6.5|4.75 x 6.5|5 x 7|5 x 8|5.5 x 8.5|6.5 x 8.5|8 x 10|8 x 12|8.5 x 11|8.5 x 14|10 x 12|11 x 14|11 x 17|12 x 16|14 x 17|16 x 20|20 x 24|22 x 28|24 x 36|27 x 41';

/** Pairs of numbers that mean inches where no unit is written, the smaller first: `8 x 10`. */
export const PHOTOGRAPH_INCHES: ReadonlySet<string> = new Set(PAIRS.split('|'));
