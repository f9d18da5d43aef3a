/** A decimal comma counts as a point. Text that is no number stays text, for the schema to refuse. */
export function readNumber(text: string): number | string {
  const clean = text.trim().replace(',', '.').replace('\u2212', '-');
  if (clean === '') return text;
  const value = Number(clean);
  return Number.isFinite(value) ? value : text;
}
