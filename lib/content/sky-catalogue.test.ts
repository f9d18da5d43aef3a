import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { GET } from '@/app/sky-data/catalogue/route';
import { compileCatalogue } from '../commands/compile-content';
import { decodeCatalogue } from '../sky/catalogue';
import { horizonAltitudeDeg } from '../sky/horizon';
import { loadCatalogue, loadCatalogueText, loadKits, loadSites } from './sky-catalogue';

const catalogue = loadCatalogue();
const named = (name: string) => catalogue.stars.find((star) => star.name === name);

describe('the star catalogue', () => {
  it('is what compile-content makes of the tables', () => {
    expect(JSON.parse(loadCatalogueText())).toEqual(compileCatalogue());
  });

  it('holds 5,110 stars, brightest first, with 432 names', () => {
    expect(catalogue.stars).toHaveLength(5110);
    const magnitudes = catalogue.stars.map((star) => star.magnitude);
    expect(magnitudes).toEqual([...magnitudes].sort((a, b) => a - b));
    expect(catalogue.stars.filter((star) => star.name !== null)).toHaveLength(432);
    expect(new Set(catalogue.stars.map((star) => star.hip)).size).toBe(5110);
  });

  it('calls ε Boötis by its own name, not by its companion’s', () => {
    const star = catalogue.stars.find(
      ({ bayer, constellation }) => bayer + constellation === 'εBoo',
    );
    expect(star?.name).toBe('Izar');
  });

  it('knows Sirius as the table has it', () => {
    expect(named('Sirius')).toEqual({
      hip: 32349,
      hr: 2491,
      raDeg: 101.2871554,
      decDeg: -16.7161159,
      pmRaMasYr: -546.04,
      pmDecMasYr: -1223.11,
      magnitude: -1.44,
      colourIndex: 0.01,
      name: 'Sirius',
      bayer: 'α',
      constellation: 'CMa',
      largeAmplitudeVariable: false,
    });
  });

  it('marks the stars whose V is that of a maximum as large-amplitude variables', () => {
    expect(catalogue.stars.filter((star) => star.largeAmplitudeVariable)).toHaveLength(68);
    expect(named('Mira')?.largeAmplitudeVariable).toBe(true);
    expect(named('Vega')?.largeAmplitudeVariable).toBe(false);
  });

  it('draws 88 figures between stars that stand close together', () => {
    expect(catalogue.figures).toHaveLength(88);
    const orion = catalogue.figures.find((figure) => figure.constellation === 'Ori');
    const names = orion?.lines.flat().map((i) => catalogue.stars[i]?.name);
    expect(names).toEqual(expect.arrayContaining(['Betelgeuse', 'Rigel', 'Bellatrix', 'Alnilam']));
  });

  it('is at most 150 kB on the wire', () => {
    expect(gzipSync(loadCatalogueText()).length).toBeLessThanOrEqual(150_000);
  });
});

describe('serving the catalogue', () => {
  const ask = (query: string) =>
    GET(
      new Request(`http://localhost/sky-data/catalogue${query}`, {
        headers: { 'Accept-Encoding': 'gzip, br' },
      }),
    );

  it('keeps the current version for good and no other', () => {
    expect(ask(`?v=${catalogue.version}`).headers.get('Cache-Control')).toBe(
      'public, max-age=31536000, immutable',
    );
    expect(ask('?v=older').headers.get('Cache-Control')).toBe('no-cache');
    expect(ask('').headers.get('Cache-Control')).toBe('no-cache');
  });

  it('sends it as it is: the server compresses, and twice compressed it could not be read', async () => {
    const answer = ask('');
    expect(answer.headers.get('Content-Encoding')).toBeNull();
    expect(decodeCatalogue(await answer.json())).toEqual(catalogue);
  });
});

describe('the kits', () => {
  const kits = loadKits();

  it('are Wren, Heron and Owl', () => {
    expect(
      kits.map(({ name, telescope }) => [name, telescope.apertureMm, telescope.focalLengthMm]),
    ).toEqual([
      ['Wren', 80, 80 * 6.25],
      ['Heron', 120, 120 * 5],
      ['Owl', 105, 105 * 13],
    ]);
  });

  it.each(kits)('$name centres to a tenth of its 25 mm field radius', (kit) => {
    const centring = kit.eyepieces.find(({ id }) => id === kit.centringEyepieceId);
    const magnification = kit.telescope.focalLengthMm / (centring?.focalLengthMm ?? NaN);
    const radiusArcmin = ((centring?.apparentFieldDeg ?? NaN) / magnification / 2) * 60;
    expect(centring?.focalLengthMm).toBe(25);
    expect(kit.telescope.centringArcmin).toBeCloseTo(radiusArcmin / 10, 3);
  });

  it('look at targets through 9 mm, Owl through 25 mm', () => {
    expect(kits.map((kit) => kit.observingEyepieceId)).toEqual(['9mm', '9mm', '25mm']);
  });
});

describe('the sites', () => {
  it('are three, each closing in more of the sky', () => {
    const sites = loadSites();
    expect(sites.map((site) => site.name)).toEqual(['Open field', 'School yard', 'Between houses']);
    const hidden = sites.map(({ horizon }) =>
      Math.max(...Array.from({ length: 360 }, (_, az) => horizonAltitudeDeg(horizon, az))),
    );
    expect(hidden).toEqual([7, 33, 47]);
  });
});

describe('the sources', () => {
  it('of the catalogue hold a line for every star', () => {
    const table = readFileSync('content/stars/source/stars.csv', 'utf8');
    expect(table.trimEnd().split('\n')).toHaveLength(5111);
  });
});
