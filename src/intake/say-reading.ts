import { sayDate } from '../dates/index.ts';

/** How a date was read, with what was assumed in doing so: `was read as circa 1957-1959.` */
export function sayReading(edtf: string, assumed: readonly string[]): string {
  const read = sayDate(edtf);
  // "Circa 1957-1959" says already that 1957-1959 is taken.
  const more = assumed.filter((note) => note !== `This is taken as ${read.replace(/^circa /, '')}.`);
  return `was read as ${read}${more.length === 0 ? '.' : `: ${more.join(' ')}`}`;
}
