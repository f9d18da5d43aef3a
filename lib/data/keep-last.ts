/**
 * Keeps what was computed last, by what it was computed of, in this process alone; beyond `most` the one
 * longest unasked for is let go. For pure computations: what is handed out is shared, so never changed.
 * What takes a while is asked for by several at once and reckoned once; what fails is not kept.
 */
export function keepLast<Value extends object>(
  most: number,
): (computedOf: unknown, compute: () => Promise<Value>) => Promise<Value> {
  const kept = new Map<string, Promise<Value>>();
  return (computedOf, compute) => {
    const key = JSON.stringify(computedOf);
    const value = kept.get(key) ?? compute();
    value.catch(() => {
      if (kept.get(key) === value) kept.delete(key);
    });
    // A Map keeps the order of writing: what was asked for last stands last.
    kept.delete(key);
    kept.set(key, value);
    for (const oldest of kept.keys()) {
      if (kept.size <= most) break;
      kept.delete(oldest);
    }
    return value;
  };
}
