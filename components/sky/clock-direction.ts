/** A place in a round field, from its middle: to the right and to the top as it is looked at. */
type Beside = { rightArcmin: number; upArcmin: number };

/** The hour that a clock's hand would show: 12 at the top, 3 at the right. */
export function clockHour({ rightArcmin, upArcmin }: Beside): number {
  const hour = Math.round((Math.atan2(rightArcmin, upArcmin) / (2 * Math.PI)) * 12);
  return hour <= 0 ? hour + 12 : hour;
}

/** How far out, in tenths of the field's radius, as an eye at the eyepiece would judge it. */
export const tenthsOut = ({ rightArcmin, upArcmin }: Beside, radiusArcmin: number): number =>
  Math.round((Math.hypot(rightArcmin, upArcmin) / radiusArcmin) * 10);

/** "in the middle"; "towards 4 o’clock, 3 tenths of the way out" */
export function fieldPlaceInWords(beside: Beside, radiusArcmin: number): string {
  const tenths = tenthsOut(beside, radiusArcmin);
  if (tenths === 0) return 'in the middle';
  const far =
    tenths === 10
      ? 'at the edge'
      : tenths === 1
        ? 'one tenth of the way out'
        : `${String(tenths)} tenths of the way out`;
  return `towards ${String(clockHour(beside))} o’clock, ${far}`;
}
