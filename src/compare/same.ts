type Values = Readonly<Record<string, unknown>>;

const isNothing = (value: unknown) => value === undefined || (Array.isArray(value) && value.length === 0);

/** Whether two values of the model say the same: an empty list says as little as a field that is not there. */
export function same(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (isNothing(one) || isNothing(other)) return isNothing(one) && isNothing(other);
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (Array.isArray(one) || Array.isArray(other)) {
    if (!Array.isArray(one) || !Array.isArray(other) || one.length !== other.length) return false;
    return one.every((value, at) => same(value, other[at]));
  }
  const [these, those] = [one as Values, other as Values];
  for (const key in these) if (!same(these[key], those[key])) return false;
  for (const key in those) if (!(key in these) && !isNothing(those[key])) return false;
  return true;
}

/** A text that is the same for two values just where `same` holds. */
export const keyOfValue = (value: unknown): string =>
  JSON.stringify(value, (_, inner: unknown) => {
    if (isNothing(inner)) return undefined;
    if (typeof inner !== 'object' || inner === null || Array.isArray(inner)) return inner;
    return Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)));
  });
