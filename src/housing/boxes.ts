import type { Box } from './model.ts';
import { COMMON_BOXES } from './other-boxes.ts';
import { LETTER_BOXES, METRIC_BOXES, NAMED_BOXES } from './paper-boxes.ts';

/** Every box that can be named. */
export const BOXES: readonly Box[] = [...LETTER_BOXES, ...METRIC_BOXES, ...COMMON_BOXES, ...NAMED_BOXES];
