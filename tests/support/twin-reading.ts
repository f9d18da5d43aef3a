import type { ImageOrientation } from '@/lib/optics/image-orientation';

/** Along the horizon and upward, of what is seen; degrees, or tenths of a field. */
export type Seen = { right: number; up: number };

const halves = ['half a', 'one', 'one and a half', 'two', 'two and a half', 'three'];

/** "one and a half fists right, half a fist down" → degrees, as it can be read. */
export function fistDegreesIn(text: string): Seen {
  const part = (more: string, less: string): number => {
    const found = new RegExp(`(?:^|, )([a-z ]+) fists? (${more}|${less})`).exec(text);
    if (found === null) return 0;
    const size = (halves.indexOf(found[1] ?? '') + 1) * 5;
    return found[2] === more ? size : -size;
  };
  return { right: part('right', 'left'), up: part('up', 'down') };
}

/** "1.5° right, 0.5° down", "15′ left" → degrees. */
export function finderDegreesIn(text: string): Seen {
  const part = (more: string, less: string): number => {
    const found = new RegExp(`([\\d.]+)([°′]) (${more}|${less})`).exec(text);
    if (found === null) return 0;
    const size = Number(found[1]) / (found[2] === '°' ? 1 : 60);
    return found[3] === more ? size : -size;
  };
  return { right: part('right', 'left'), up: part('up', 'down') };
}

const onSky: Record<ImageOrientation, readonly [right: number, up: number]> = {
  true: [1, 1],
  mirrored: [-1, 1],
  turned: [-1, -1],
};

/** "towards 4 o’clock, 3 tenths of the way out" → tenths of the radius, on the sky. */
export function fieldTenthsIn(text: string, orientation: ImageOrientation): Seen {
  const hour = Number(/towards (\d+) o/.exec(text)?.[1] ?? 0);
  const tenths = text.includes('at the edge')
    ? 10
    : text.includes('one tenth')
      ? 1
      : Number(/(\d+) tenths/.exec(text)?.[1] ?? 0);
  const [right, up] = onSky[orientation];
  const angle = (hour * Math.PI) / 6;
  return { right: right * tenths * Math.sin(angle), up: up * tenths * Math.cos(angle) };
}

export const nearEnough = (place: string): boolean =>
  place === 'in the middle' || place.includes('one tenth');

const wholeFists = ['less', 'half', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight'];

/**
 * "The red dot is four and a half fists up, …" → by how much the azimuth axis must turn for a degree
 * on the sky up there.
 */
export function axisPerSkyIn(dotText: string): number {
  if (dotText.includes('almost straight up')) return 6;
  const said = /The red dot is ([a-z ]+?) fists? up/.exec(dotText)?.[1] ?? '';
  const [first = ''] = said.split(' ');
  const whole = Math.max(0, wholeFists.indexOf(first) - 1);
  const heightDeg = said === 'half a' ? 5 : 10 * whole + (said.includes('and a half') ? 5 : 0);
  return 1 / Math.cos((Math.min(80, heightDeg) * Math.PI) / 180);
}
