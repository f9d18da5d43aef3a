import type { SkyObjectId } from '@/lib/pointing/answer-key';
import type { SkyLight } from '@/components/sky/sky-lights';

/**
 * The table leaves out what looks more than this many magnitudes fainter than the faintest star that
 * may serve: the air takes less than that from a star that is high enough to.
 */
const listedBelowFaintest = 1;
/** Beside a kept star, lights fainter still by this are listed too: they may be taken for it. */
const neighboursBelowListed = 0.8;
/** About as many as an eye takes in before it has to look more closely. */
const listedAtFirst = 60;

/** 0 → A … 25 → Z, 26 → AA … */
export function letterOf(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : letterOf(Math.floor(index / 26) - 1) + letter;
}

export type LabelledLight = SkyLight & {
  /**
   * Tells nothing about what it is: lights are lettered round the horizon from north, those of the
   * shortest list first, so that its letters follow one another.
   */
  letter: string;
  /** 'first': among the brightest. 'more': listed on request. 'neighbour': only beside a kept star. */
  listed: 'first' | 'more' | 'neighbour';
};

const listOrder: readonly LabelledLight['listed'][] = ['first', 'more', 'neighbour'];

/** Lights for the table, lettered and sorted by direction within each list. */
export function labelledLights(
  brightestFirst: readonly SkyLight[],
  faintestMagnitude: number,
  always: readonly SkyObjectId[] = [],
): LabelledLight[] {
  const faintestListed = faintestMagnitude + listedBelowFaintest;
  const faintestNeighbour = faintestListed + neighboursBelowListed;
  return brightestFirst
    .filter((light) => light.seenAs <= faintestNeighbour || always.includes(light.id))
    .map((light, rank) => {
      const listable = light.seenAs <= faintestListed || always.includes(light.id);
      const listed = !listable ? 'neighbour' : rank < listedAtFirst ? 'first' : 'more';
      return { ...light, listed } as const;
    })
    .sort(
      (a, b) =>
        listOrder.indexOf(a.listed) - listOrder.indexOf(b.listed) || a.azimuthDeg - b.azimuthDeg,
    )
    .map((light, index) => ({ ...light, letter: letterOf(index) }));
}
