/** Numbers come back from the database's JSON with 16 digits; what differs by more is another number. */
const digitsLost = 1e-14;

/** Whether two JSON values say the same, one of which may have been to the database and back. */
export function sameJson(one: unknown, other: unknown): boolean {
  if (typeof one === 'number' && typeof other === 'number') {
    return Math.abs(one - other) <= digitsLost * Math.max(Math.abs(one), Math.abs(other));
  }
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) {
    return one === other;
  }
  if (Array.isArray(one) !== Array.isArray(other)) return false;
  const [entries, others] = [Object.entries(one), new Map(Object.entries(other))];
  return (
    entries.length === others.size &&
    entries.every(([name, value]) => others.has(name) && sameJson(value, others.get(name)))
  );
}
