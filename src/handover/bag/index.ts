export { validateInside } from './deep.ts';
export type { BagEntry } from './entries.ts';
export { safeName } from './safe-name.ts';
export { type BagVerdict, type ByteStep, verifyBag } from './verify.ts';
export { type WriteBagOptions, type WrittenBag, writeBag } from './write.ts';
export { zipBag } from './zip.ts';
