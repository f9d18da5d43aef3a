import type { SkyLight } from '@/components/sky/sky-lights';
import type { SkyMark } from '@/components/sky/sky-mark';
import type { SkyObjectId } from '@/lib/pointing/answer-key';

type MarksInput = {
  lightOf: (id: SkyObjectId) => Pick<SkyLight, 'azimuthDeg' | 'altitudeDeg'> | null;
  selected: SkyObjectId | null;
  kept: readonly { hip: number; name: string }[];
  proposedHip: number | null;
  /** The kept star whose look-alikes are asked for. */
  askedHip: number | null;
};

/** What the scene rings and names. */
export function skyMarks({
  lightOf,
  selected,
  kept,
  proposedHip,
  askedHip,
}: MarksInput): SkyMark[] {
  const marks: SkyMark[] = [];
  const add = (kind: SkyMark['kind'], id: SkyObjectId, label: string | null): void => {
    const light = lightOf(id);
    if (light === null) return;
    marks.push({ kind, azimuthDeg: light.azimuthDeg, altitudeDeg: light.altitudeDeg, label });
  };
  const asked = askedHip === null ? null : (`hip-${askedHip}` as const);
  for (const { hip, name } of kept) {
    // A wide ring and a name would cover the very neighbour to be found; the panel names the star.
    if (hip === askedHip) add('asked', `hip-${hip}`, null);
    else add('kept', `hip-${hip}`, name);
  }
  if (proposedHip !== null) add('proposed', `hip-${proposedHip}`, null);
  if (selected !== null && selected !== asked) add('selected', selected, null);
  return marks;
}
