export { type Given, thingsToGive } from './given.ts';
export { type HandedOver, type HandOverOptions, handOver } from './hand-over.ts';
export type { GiveOptions, HeldBack, Why } from './held-back.ts';
export { sayOpen } from './say-open.ts';
