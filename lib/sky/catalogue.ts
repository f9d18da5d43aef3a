/** One catalogue entry. ICRS, epoch J2000.0; `pmRaMasYr` is μα cos δ. */
export type CatalogueStar = {
  hip: number;
  /** Bright Star Catalogue number, null for the few entries that have none. */
  hr: number | null;
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

/**
 * The file `content/stars/catalogue.json`: one array a quantity, whole numbers in the source's last
 * digit, so that it compresses well and nothing is lost.
 */
export type CompactCatalogue = {
  format: 1;
  version: string;
  /** IAU abbreviations; other columns refer to them by position. */
  constellations: string[];
  hip: number[];
  /** 0 where there is none. */
  hr: number[];
  /** In 10⁻⁷ degree. */
  ra: number[];
  /** In 10⁻⁷ degree. */
  dec: number[];
  /** μα cos δ in 10⁻² mas/yr. */
  pmRa: number[];
  /** In 10⁻² mas/yr. */
  pmDec: number[];
  /** V in 10⁻² mag. */
  magnitude: number[];
  /** B−V in 10⁻² mag, null where unknown. */
  colourIndex: (number | null)[];
  constellation: number[];
  /** All Bayer letters joined by commas, empty where there is none. */
  bayer: string;
  /** Catalogue index and IAU proper name. */
  names: [number, string][];
  /** Catalogue indices of the large-amplitude variables. */
  variables: number[];
  /** Constellation index and polylines of catalogue indices. */
  figures: [number, number[][]][];
};

/**
 * Reads the compact columnar file. Written out by hand, without a schema library, because every
 * page with a sky runs it in the browser.
 *
 * @throws {TypeError} naming the column, when the file is not what `compile-content` writes: that
 * is a broken deployment, not something a user can mend.
 */
export function decodeCatalogue(json: unknown): StarCatalogue {
  const file = record(json, 'catalogue');
  if (file.format !== 1) throw new TypeError('catalogue: format 1 was expected');
  const version = text(file.version, 'version');
  const constellations = list(file.constellations, 'constellations').map((item) =>
    text(item, 'constellations'),
  );
  const hip = list(file.hip, 'hip').map((item) => whole(item, 'hip'));
  const column = (name: string): number[] => wholeColumn(file[name], name, hip.length);
  const hr = column('hr');
  const ra = column('ra');
  const dec = column('dec');
  const pmRa = column('pmRa');
  const pmDec = column('pmDec');
  const magnitude = column('magnitude');
  const constellation = column('constellation');
  const colourIndex = list(file.colourIndex, 'colourIndex', hip.length);
  const bayer = list(text(file.bayer, 'bayer').split(','), 'bayer', hip.length);
  const index = (item: unknown, where: string): number => position(item, where, hip.length);
  const abbreviation = (item: unknown, where: string): string =>
    at(constellations, position(item, where, constellations.length));
  const names = new Map(
    list(file.names, 'names').map((item) => {
      const [star, name] = list(item, 'names', 2);
      return [index(star, 'names'), text(name, 'names')];
    }),
  );
  const variables = new Set(
    list(file.variables, 'variables').map((item) => index(item, 'variables')),
  );

  return {
    version,
    stars: hip.map((number, i) => ({
      hip: number,
      hr: at(hr, i) === 0 ? null : at(hr, i),
      raDeg: at(ra, i) / 1e7,
      decDeg: at(dec, i) / 1e7,
      pmRaMasYr: at(pmRa, i) / 100,
      pmDecMasYr: at(pmDec, i) / 100,
      magnitude: at(magnitude, i) / 100,
      colourIndex: colourIndex[i] === null ? null : whole(colourIndex[i], 'colourIndex') / 100,
      name: names.get(i) ?? null,
      bayer: text(bayer[i], 'bayer'),
      constellation: abbreviation(constellation[i], 'constellation'),
      largeAmplitudeVariable: variables.has(i),
    })),
    figures: list(file.figures, 'figures').map((item) => {
      const [of, lines] = list(item, 'figures', 2);
      return {
        constellation: abbreviation(of, 'figures'),
        lines: list(lines, 'figures').map((line) =>
          list(line, 'figures').map((star) => index(star, 'figures')),
        ),
      };
    }),
  };
}

function record(value: unknown, where: string): Record<string, unknown> {
  if (typeof value !== 'object' || value === null) throw new TypeError(`${where}: not an object`);
  return { ...value };
}

function list(value: unknown, where: string, length?: number): unknown[] {
  if (!Array.isArray(value)) throw new TypeError(`${where}: not a list`);
  if (length !== undefined && value.length !== length) {
    throw new TypeError(`${where}: ${String(value.length)} entries, ${String(length)} expected`);
  }
  return value;
}

function text(value: unknown, where: string): string {
  if (typeof value !== 'string') throw new TypeError(`${where}: not a text`);
  return value;
}

function whole(value: unknown, where: string): number {
  if (typeof value !== 'number' || !Number.isInteger(value)) {
    throw new TypeError(`${where}: not a whole number`);
  }
  return value;
}

function wholeColumn(value: unknown, where: string, length: number): number[] {
  return list(value, where, length).map((item) => whole(item, where));
}

function position(value: unknown, where: string, length: number): number {
  const index = whole(value, where);
  if (index < 0 || index >= length) throw new TypeError(`${where}: ${String(index)} is no entry`);
  return index;
}

function at<T>(values: readonly T[], index: number): T {
  const value = values[index];
  if (value === undefined) throw new TypeError(`entry ${String(index)} is missing`);
  return value;
}
