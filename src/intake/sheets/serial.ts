/** From which day a workbook counts: 1 is 1900-01-01, or 0 is 1904-01-01 (ECMA-376 Part 1, 18.17.4.1). */
export type Epoch = 1900 | 1904;

const DAY = 86_400_000;
const ZERO = { 1900: Date.UTC(1899, 11, 31), 1904: Date.UTC(1904, 0, 1) } as const;
// The count of 1900 has a 29 February in that year, which there never was; the days after it are one too high.
const LEAP_DAY_THAT_WAS_NOT = 60;
const LAST = { 1900: 2_958_465, 1904: 2_957_003 } as const;

/** A day number of a spreadsheet as a date and a time of day, each in ISO 8601; undefined where it is no day. */
export function fromSerial(serial: number, epoch: Epoch): { date: string; time?: string } | undefined {
  let day = Math.floor(serial);
  let seconds = Math.round((serial - day) * 86_400);
  if (seconds === 86_400) {
    day++;
    seconds = 0;
  }
  const first = epoch === 1900 ? 1 : 0;
  if (!(day >= first && day <= LAST[epoch])) return undefined;
  if (epoch === 1900 && day === LEAP_DAY_THAT_WAS_NOT) return undefined;
  const since = epoch === 1900 && day > LEAP_DAY_THAT_WAS_NOT ? day - 1 : day;
  const date = new Date(ZERO[epoch] + since * DAY).toISOString().slice(0, 10);
  return seconds === 0 ? { date } : { date, time: timeOf(seconds) };
}

/** A time of day, in seconds since midnight, as HH:MM or HH:MM:SS. */
export function timeOf(seconds: number): string {
  const iso = new Date(seconds * 1000).toISOString();
  return seconds % 60 === 0 ? iso.slice(11, 16) : iso.slice(11, 19);
}
