/** Every text in a value of any form, with the way to it. */
export function* textsIn(
  value: unknown,
  way: readonly string[] = [],
): Generator<[text: string, way: string]> {
  if (typeof value === 'string') yield [value, way.join(' → ')];
  else if (typeof value === 'object' && value !== null)
    for (const [key, inner] of Object.entries(value))
      yield* textsIn(inner, /^\d+$/.test(key) ? way : [...way, key]);
}
