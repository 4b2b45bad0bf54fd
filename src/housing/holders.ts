import type { Holder } from './model.ts';
import { LETTER_FOLDERS, METRIC_FOLDERS } from './paper-folders.ts';
import { SLEEVES } from './sleeves.ts';

/** Every folder, envelope and sleeve that can be named. */
export const HOLDERS: readonly Holder[] = [...LETTER_FOLDERS, ...METRIC_FOLDERS, ...SLEEVES];
