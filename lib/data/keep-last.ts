/**
 * Keeps what was computed last, by what it was computed of, in this process alone; beyond `most` the one
 * longest unasked for is let go. For pure computations: what is handed out is shared, so never changed.
 */
export function keepLast<Value extends object>(
  most: number,
): (computedOf: unknown, compute: () => Value) => Value {
  const kept = new Map<string, Value>();
  return (computedOf, compute) => {
    const key = JSON.stringify(computedOf);
    const value = kept.get(key) ?? compute();
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
