/** A function that is worked out once for each text or object given to it, and gives the very same value from then on. */
export function once<Key, Value>(work: (key: Key) => Value): (key: Key) => Value {
  const done = new Map<Key, Value>();
  return (key) => {
    let value = done.get(key);
    if (value === undefined && !done.has(key)) {
      value = work(key);
      done.set(key, value);
    }
    return value as Value;
  };
}

/** What is worked out when it is first asked for, and kept from then on: large tables that most answers do without. */
export function atFirstUse<Value extends object>(work: () => Value): () => Value {
  let value: Value | undefined;
  return () => {
    value ??= work();
    return value;
  };
}
