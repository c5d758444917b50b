// What follows from a record is asked for by many checks and pages; it is worked out once for each record.

/** The same work, done once for an object and kept as long as the object is. */
export function once<Of extends object, Result>(work: (of: Of) => Result): (of: Of) => Result {
  const done = new WeakMap<Of, { result: Result }>();
  return (of) => {
    const known = done.get(of);
    if (known) return known.result;
    const result = work(of);
    done.set(of, { result });
    return result;
  };
}

/** The same for each key of an object: worked out for a key when it is first asked for. */
export function onceEach<Key, Of extends object, Result>(
  work: (key: Key, of: Of) => Result,
): (key: Key, of: Of) => Result {
  const kept = once((_of: Of) => new Map<Key, { result: Result }>());
  return (key, of) => {
    const done = kept(of);
    const known = done.get(key);
    if (known) return known.result;
    const result = work(key, of);
    done.set(key, { result });
    return result;
  };
}
