import type { CopyToGive } from '../copies-to-give.ts';

/** What digital copies tell of places, for whoever publishes them. */
export function sayLocations(copies: readonly CopyToGive[]): string {
  const telling = copies.filter(({ name, facts }) => name !== undefined && facts.hasLocation === true).length;
  if (telling === 0) return 'None of them was found to tell the place where it was made.';
  const [who, they] = telling === 1 ? ['One of them tells', 'it'] : [`${telling} of them tell`, 'they'];
  return `${who} within the file, to some metres, where ${they} ${telling === 1 ? 'was' : 'were'} made; for a picture taken at home, that is somebody's address. The technical facts say which. Take the place out of a copy before it is put where anybody can get it.`;
}
