import type { Summary } from './summary.ts';

/**
 * What to say of numbers that were not fixed when a package was made: nothing, where they were. Of a finding aid that was
 * taken in, the numbers are those of others, and only what the list adds can have none.
 */
export function sayNotSettled({ isSettled, isTakenIn }: Pick<Summary, 'isSettled' | 'isTakenIn'>): string[] {
  if (isSettled) return [];
  const whose = isTakenIn ? ' of what the list adds' : '';
  return [
    `When this was made the numbers${whose} were not fixed yet: numbers of folders and boxes, and codes, need not be those on the things. Go by titles.`,
  ];
}
