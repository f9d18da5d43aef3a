/** One catalogue entry. ICRS, epoch J2000.0; `pmRaMasYr` is μα cos δ. */
export type CatalogueStar = {
  hip: number;
  hr: number;
  raDeg: number;
  decDeg: number;
  pmRaMasYr: number;
  pmDecMasYr: number;
  /** Johnson V; of the maximum where `largeAmplitudeVariable`. */
  magnitude: number;
  /** B−V, null where unknown. */
  colourIndex: number | null;
  /** IAU proper name, null where there is none. */
  name: string | null;
  /** Bayer letter with superscript, '' where there is none. */
  bayer: string;
  /** IAU three-letter constellation abbreviation. */
  constellation: string;
  largeAmplitudeVariable: boolean;
};

/** The stars in fixed order (brightest first); index i means the same star in every derived array. */
export type StarCatalogue = {
  /** Changes whenever any number in it does; stored with every attempt. */
  version: string;
  stars: readonly CatalogueStar[];
  /** Constellation figures: polylines as catalogue indices. */
  figures: readonly { constellation: string; lines: readonly (readonly number[])[] }[];
};
