/** A number as it was typed, with a point or a comma; null for none or one outside the limits. */
export function numberIn(text: string, least: number, most: number): number | null {
  const plain = text.trim().replace(',', '.').replace('−', '-');
  if (!/^[+-]?(\d+(\.\d*)?|\.\d+)$/.test(plain)) return null;
  const value = Number(plain);
  return value >= least && value <= most ? value : null;
}
