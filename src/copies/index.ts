export { copiesIn } from './copies-in.ts';
export { type CopyFacts, isPath } from './facts.ts';
export { filesBelow } from './files-below.ts';
export { type GatherOptions, gatherCopies } from './gather.ts';
