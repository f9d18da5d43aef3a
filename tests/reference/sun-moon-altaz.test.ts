/** Sun and Moon against JPL DE405 + ERFA: 150 topocentric, unrefracted instants of each. See data/README.md. */
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { skyFrameAt } from '../../lib/sky/frame-at';
import { directionFromAzAlt, separationDeg } from '../../lib/units/vector';
import { decimal, fixtureRows } from './fixture';

const rows = fixtureRows(
  'sun_moon_altaz.csv',
  z.object({
    body: z.enum(['sun', 'moon']),
    place: z.string(),
    utc: z.string(),
    lat_deg: decimal,
    lon_deg_east: decimal,
    height_m: decimal,
    az_norefr: decimal,
    alt_norefr: decimal,
  }),
);

describe('Sun and Moon of JPL DE405', () => {
  // The bounds are those of domain §2 for one value of ΔT (69.184 s); the Moon moves 0.5″ a second of it.
  it.each([
    ['sun' as const, 2.5],
    ['moon' as const, 3.3],
  ])('the %s is met to %d″', (body, boundArcsec) => {
    const cases = rows.filter((row) => row.body === body);
    expect(cases).toHaveLength(150);
    for (const row of cases) {
      const found = skyFrameAt({
        instant: row.utc,
        place: {
          latitudeDeg: row.lat_deg,
          longitudeDeg: row.lon_deg_east,
          elevationM: row.height_m,
        },
      })[body];
      const off = separationDeg(
        directionFromAzAlt(found.azimuthDeg, found.trueAltitudeDeg),
        directionFromAzAlt(row.az_norefr, row.alt_norefr),
      );
      expect(off * 3600, `${row.place} ${row.utc}`).toBeLessThan(boundArcsec);
    }
  });
});
