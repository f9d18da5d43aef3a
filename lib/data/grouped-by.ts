/** The rows of each key, in their order; keys in the order of their first rows. */
export function groupedBy<Row, Key extends string>(
  rows: readonly Row[],
  key: (row: Row) => Key,
): Map<Key, Row[]> {
  const found = new Map<Key, Row[]>();
  for (const row of rows) {
    const of = key(row);
    const there = found.get(of);
    if (there === undefined) found.set(of, [row]);
    else there.push(row);
  }
  return found;
}
