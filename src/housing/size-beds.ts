import { inches } from './measures.ts';
import { loose, type SizeName } from './size-names.ts';

const M = 'from memory; the larger of the usual quilts for such a bed';

/** Quilts and blankets by the bed that they cover. Of anything that is no textile these names say nothing. */
export const BEDS: readonly SizeName[] = [
  loose('cot bed|crib|crib bed|cradle bed', inches(60, 45), M, { form: 'textile' }),
  loose('single bed|twin bed|single bed size|twin size bed', inches(90, 70), M, { form: 'textile' }),
  loose('double bed|full bed|double bed size|full size bed', inches(96, 84), M, { form: 'textile' }),
  loose('queen bed|queen size bed', inches(98, 90), M, { form: 'textile' }),
  loose('king bed|king size bed', inches(108, 98), M, { form: 'textile' }),
];
