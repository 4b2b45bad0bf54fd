/** A number as a person would write it: spreadsheets keep 0.1 + 0.2 with 17 figures, and show 15 at most. */
export function plainNumber(value: string): string {
  if (/^-?\d{1,15}$/.test(value)) return value;
  const number = Number(value);
  return value.trim() !== '' && Number.isFinite(number) ? String(Number(number.toPrecision(15))) : value;
}
