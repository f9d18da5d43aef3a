/**
 * Stars against ERFA 2.0.0 (the open form of the IAU's SOFA library): 240 topocentric positions at 12
 * sites and dates, UT1−UTC = 0, no polar motion. See data/README.md.
 */
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { loadCatalogue } from '../../lib/content/sky-catalogue';
import type { StarCatalogue } from '../../lib/sky/catalogue';
import { skyFrameAt } from '../../lib/sky/frame-at';
import { placeCatalogue } from '../../lib/sky/star-places';
import { directionFromAzAlt, separationDeg } from '../../lib/units/vector';
import { decimal, fixtureRows } from './fixture';

const rows = fixtureRows(
  'star_altaz.csv',
  z.object({
    case: z.string(),
    utc: z.string(),
    lat_deg: decimal,
    lon_deg_east: decimal,
    height_m: decimal,
    hip: decimal,
    az_norefr: decimal,
    alt_norefr: decimal,
    alt_refr: decimal,
  }),
);

function compare(catalogue: StarCatalogue) {
  const indexOf = new Map(catalogue.stars.map((star, i) => [star.hip, i]));
  return rows.map((row) => {
    const places = placeCatalogue(
      catalogue,
      skyFrameAt({
        instant: row.utc,
        place: {
          latitudeDeg: row.lat_deg,
          longitudeDeg: row.lon_deg_east,
          elevationM: row.height_m,
        },
      }),
    );
    const i = indexOf.get(row.hip) ?? NaN;
    const [east = NaN, north = NaN, up = NaN] = places.directions.subarray(3 * i, 3 * i + 3);
    const published = directionFromAzAlt(row.az_norefr, row.alt_norefr);
    return {
      hip: row.hip,
      offArcsec: separationDeg([east, north, up], published) * 3600,
      publishedAltitudeDeg: row.alt_refr,
      refractedOffArcsec: Math.abs((places.altitudeDeg[i] ?? NaN) - row.alt_refr) * 3600,
    };
  });
}

const catalogue = loadCatalogue();
const compared = compare(catalogue);

describe('240 star positions of ERFA', () => {
  // What the method leaves out is the bound: annual parallax (up to 0.75″ for α Centauri), diurnal
  // aberration (0.32″) and the truncated nutation of astronomy-engine.
  it('are met to 0.85″ without refraction', () => {
    expect(compared).toHaveLength(240);
    for (const { hip, offArcsec } of compared) {
      expect(offArcsec, `HIP ${hip}`).toBeLessThan(0.85);
    }
  });

  // ERFA's refraction is a two-term model for 0.55 µm and dry air, ours a formula for the eye.
  it.each([
    [45, 90, 3],
    [20, 45, 7],
    [10, 20, 10],
  ])('between %d° and %d° are met to %d″ with refraction', (from, to, boundArcsec) => {
    const band = compared.filter(
      ({ publishedAltitudeDeg: altitude }) => altitude >= from && altitude < to,
    );
    expect(band.length).toBeGreaterThan(10);
    for (const { hip, refractedOffArcsec } of band) {
      expect(refractedOffArcsec, `HIP ${hip}`).toBeLessThan(boundArcsec);
    }
  });

  it('cannot be met without proper motion: 61 Cygni would be off by 158″', () => {
    const stopped = compare({
      ...catalogue,
      stars: catalogue.stars.map((star) => ({ ...star, pmRaMasYr: 0, pmDecMasYr: 0 })),
    });
    const worst = stopped.reduce((a, b) => (b.offArcsec > a.offArcsec ? b : a));
    // HIP 104214 and 104217 are the two components.
    expect([104214, 104217]).toContain(worst.hip);
    expect(worst.offArcsec).toBeCloseTo(158, -1);
  });
});
