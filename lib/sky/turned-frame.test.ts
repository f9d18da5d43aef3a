/**
 * Against `skyFrameAt` of the later instant (astronomy-engine, itself held against ERFA and JPL DE405
 * in tests/reference).
 */
import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '../content/sky-catalogue';
import { directionFromAzAlt, separationDeg } from '../units/vector';
import { skyFrameAt } from './frame-at';
import type { BodyPlace } from './sky-frame';
import { placeCatalogue } from './star-places';
import { latitudeOfFrameDeg, turnedFrame } from './turned-frame';

const catalogue = loadCatalogue();

const evenings = [
  ['Ottawa', 45.4, -75.7, '2026-12-06T00:30:00Z'],
  ['Sydney', -33.9, 151.2, '2027-05-05T10:00:00Z'],
  ['Singapore', 1.3, 103.8, '2027-08-05T13:00:00Z'],
  ['Tromsø', 69.6, 18.9, '2030-01-10T18:00:00Z'],
  ['Ushuaia', -54.8, -68.3, '2024-06-21T23:00:00Z'],
] as const;

function laterOf(latitudeDeg: number, longitudeDeg: number, instant: string, seconds: number) {
  const place = { latitudeDeg, longitudeDeg, elevationM: 0 };
  const frame = skyFrameAt({ instant, place });
  const later = new Date(Date.parse(instant) + seconds * 1000);
  return {
    turned: turnedFrame(frame, latitudeDeg, seconds),
    computed: skyFrameAt({ instant: later, place }),
  };
}

const seen = ({ azimuthDeg, altitudeDeg }: BodyPlace) =>
  directionFromAzAlt(azimuthDeg, altitudeDeg);

describe.each(evenings)('the sky over %s, turned', (_, latitudeDeg, longitudeDeg, instant) => {
  // Left out: the turn of aberration (20.5″ · 2π a year, 0.03″ in two hours), precession (50″ a year,
  // 0.01″) and nutation's daily change, at most as much.
  it.each([30, 120])('has every star within 0.1″ after %d minutes', (minutes) => {
    const { turned, computed } = laterOf(latitudeDeg, longitudeDeg, instant, minutes * 60);
    const ours = placeCatalogue(catalogue, turned);
    const theirs = placeCatalogue(catalogue, computed);
    expect(ours.azimuthDeg.length).toBeGreaterThan(1000);
    let worstArcsec = 0;
    ours.azimuthDeg.forEach((azimuthDeg, i) => {
      const off = separationDeg(
        directionFromAzAlt(azimuthDeg, ours.altitudeDeg[i] ?? NaN),
        directionFromAzAlt(theirs.azimuthDeg[i] ?? NaN, theirs.altitudeDeg[i] ?? NaN),
      );
      worstArcsec = Math.max(worstArcsec, off * 3600);
    });
    expect(worstArcsec).toBeLessThan(0.1);
    expect(turned.instant).toBe(computed.instant);
    expect(turned.yearsFromJ2000).toBeCloseTo(computed.yearsFromJ2000, 9);
  });

  it('leaves out the Sun’s own way, 2.5′ an hour, the planets’ and the Moon’s', () => {
    const { turned, computed } = laterOf(latitudeDeg, longitudeDeg, instant, 1800);
    // The Sun moves by 0.953° to 1.019° a day along the ecliptic.
    expect(separationDeg(seen(turned.sun), seen(computed.sun)) * 60).toBeLessThan(1.3);
    turned.planets.forEach((planet, i) => {
      const other = computed.planets[i];
      if (other?.body !== planet.body) throw new Error('planets in another order');
      // None is faster than Mercury, 2.2° a day; refraction of what is below the horizon does not count.
      const off = separationDeg(
        directionFromAzAlt(planet.azimuthDeg, planet.trueAltitudeDeg),
        directionFromAzAlt(other.azimuthDeg, other.trueAltitudeDeg),
      );
      expect(off * 60, planet.body).toBeLessThan(2.8);
    });
    // 11.8° to 15.4° a day seen from the Earth's centre: 14.7′ to 19.3′ in half an hour. The turn of its
    // parallax (61.5′ at most, by 7.5°: 8.0′) takes off while the Moon is high and adds while it is down.
    const moon = separationDeg(
      directionFromAzAlt(turned.moon.azimuthDeg, turned.moon.trueAltitudeDeg),
      directionFromAzAlt(computed.moon.azimuthDeg, computed.moon.trueAltitudeDeg),
    );
    expect(moon * 60).toBeGreaterThan(6.7);
    expect(moon * 60).toBeLessThan(27.3);
  });

  it('comes back when it is turned back', () => {
    const frame = skyFrameAt({
      instant,
      place: { latitudeDeg, longitudeDeg, elevationM: 0 },
    });
    const back = turnedFrame(turnedFrame(frame, latitudeDeg, 3600), latitudeDeg, -3600);
    back.icrsToLocal.forEach((value, i) =>
      expect(value).toBeCloseTo(frame.icrsToLocal[i] ?? 9, 12),
    );
    expect(back.moon.azimuthDeg).toBeCloseTo(frame.moon.azimuthDeg, 9);
    expect(back.sun.altitudeDeg).toBeCloseTo(frame.sun.altitudeDeg, 9);
  });

  // Nutation is left out: at most 9.2″ in obliquity and 17.2″ · sin ε = 6.8″ across it.
  it('tells its latitude to 12″', () => {
    const frame = skyFrameAt({
      instant,
      place: { latitudeDeg, longitudeDeg, elevationM: 0 },
    });
    expect(Math.abs(latitudeOfFrameDeg(frame) - latitudeDeg) * 3600).toBeLessThan(12);
  });
});
