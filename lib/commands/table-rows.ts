/** A table in plain text, columns as wide as their widest cell; nothing for no rows. */
export function rows(head: readonly string[], body: readonly (readonly string[])[]): string {
  if (body.length === 0) return '';
  const widths = head.map((cell, i) =>
    Math.max(cell.length, ...body.map((row) => (row[i] ?? '').length)),
  );
  return [head, ...body]
    .map((row) =>
      row
        .map((cell, i) => cell.padEnd(widths[i] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}
