/** Adds a value to those that a table holds under a key. */
export function addTo<Key, Value>(table: Map<Key, Value[]>, key: Key, value: Value): void {
  const known = table.get(key);
  if (known === undefined) table.set(key, [value]);
  else known.push(value);
}
