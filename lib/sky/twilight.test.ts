import { describe, expect, it } from 'vitest';
import { duskAndDawn, sunAltitudeAtDeg, sunAltitudeDeg, type NightTimes } from './twilight';

const place = (latitudeDeg: number, longitudeDeg: number) => ({
  latitudeDeg,
  longitudeDeg,
  elevationM: 0,
});
const greenwich = place(51.4769, 0);

const expectedAltitude: Record<keyof NightTimes, number> = {
  sunset: sunAltitudeAtDeg.riseAndSet,
  civilDusk: sunAltitudeAtDeg.civil,
  nauticalDusk: sunAltitudeAtDeg.nautical,
  astronomicalDusk: sunAltitudeAtDeg.astronomical,
  astronomicalDawn: sunAltitudeAtDeg.astronomical,
  nauticalDawn: sunAltitudeAtDeg.nautical,
  civilDawn: sunAltitudeAtDeg.civil,
  sunrise: sunAltitudeAtDeg.riseAndSet,
};
const nightMoments: (keyof NightTimes)[] = [
  'sunset',
  'civilDusk',
  'nauticalDusk',
  'astronomicalDusk',
  'astronomicalDawn',
  'nauticalDawn',
  'civilDawn',
  'sunrise',
];

const minutesBetween = (a: string | null, b: string | null) =>
  a === null || b === null ? NaN : (Date.parse(b) - Date.parse(a)) / 60_000;

describe('dusk and dawn', () => {
  it.each([
    ['Greenwich', greenwich, '2026-12-05', 'Europe/London'],
    ['Quito', place(-0.18, -78.47), '2026-03-20', 'America/Guayaquil'],
    ['Ushuaia', place(-54.8, -68.3), '2026-09-01', 'America/Argentina/Ushuaia'],
    ['Auckland', place(-36.85, 174.76), '2026-01-10', 'Pacific/Auckland'],
    // Solar noon comes at about 14:50 by this clock.
    ['Kashgar', place(39.47, 75.99), '2026-10-10', 'Asia/Shanghai'],
  ])('at %s come in order, with the Sun at their altitudes', (_, site, localDate, timeZone) => {
    const night = duskAndDawn({ place: site, localDate, timeZone });
    const times = nightMoments.map((moment) => Date.parse(night[moment] ?? ''));
    expect(times).toEqual([...times].sort((a, b) => a - b));
    for (const moment of nightMoments) {
      const altitude = sunAltitudeDeg(site, new Date(night[moment] ?? ''));
      // The Sun moves 4 · 10⁻⁶ degree in the millisecond that times are kept to.
      expect(Math.abs(altitude - expectedAltitude[moment])).toBeLessThan(5e-6);
    }
    const evening = new Intl.DateTimeFormat('sv', { timeZone, dateStyle: 'short' });
    expect(evening.format(new Date(night.sunset ?? ''))).toBe(localDate);
  });

  // London on the longest day, almanac values to the minute, from memory: sunset 21:21, sunrise 04:43 BST.
  it('agree with the almanac for London at midsummer', () => {
    const night = duskAndDawn({
      place: place(51.5074, -0.1278),
      localDate: '2024-06-20',
      timeZone: 'Europe/London',
    });
    expect(Math.abs(minutesBetween(night.sunset, '2024-06-20T20:21:00Z'))).toBeLessThan(1);
    expect(Math.abs(minutesBetween(night.sunrise, '2024-06-21T03:43:00Z'))).toBeLessThan(1);
  });

  // On the equator at an equinox the Sun sinks straight down, 15° an hour: from −0.833° to −6° in
  // 20.7 minutes and by 6° more in 24.
  it('on the equator at an equinox are as far apart as the turning sky makes them', () => {
    const night = duskAndDawn({ place: place(0, 0), localDate: '2026-03-20', timeZone: 'UTC' });
    expect(minutesBetween(night.sunset, night.civilDusk)).toBeCloseTo(20.7, 1);
    expect(minutesBetween(night.civilDusk, night.nauticalDusk)).toBeCloseTo(24, 1);
    expect(minutesBetween(night.nauticalDusk, night.astronomicalDusk)).toBeCloseTo(24, 1);
  });

  // The midnight Sun at latitude φ stands at φ + δ − 90°; at midsummer δ = 23.44°.
  it('at 60° N in June lack an astronomical night, and a nautical one', () => {
    const night = duskAndDawn({
      place: place(60, 10),
      localDate: '2026-06-21',
      timeZone: 'Europe/Oslo',
    });
    expect(night.astronomicalDusk).toBeNull();
    expect(night.astronomicalDawn).toBeNull();
    expect(night.nauticalDusk).toBeNull();
    expect(night.civilDusk).not.toBeNull();
  });

  it('at midsummer have an astronomical night south of 48.56° and none north of it', () => {
    const dusk = (latitudeDeg: number) =>
      duskAndDawn({ place: place(latitudeDeg, 10), localDate: '2026-06-21', timeZone: 'UTC' })
        .astronomicalDusk;
    expect(dusk(48.5)).not.toBeNull();
    expect(dusk(48.6)).toBeNull();
  });

  it('beyond the polar circle: no sunset in June, no sunset but a dusk in December', () => {
    const tromso = place(69.65, 18.96);
    const june = duskAndDawn({ place: tromso, localDate: '2026-06-21', timeZone: 'Europe/Oslo' });
    expect(Object.values(june)).toEqual(Array(8).fill(null));
    const december = duskAndDawn({
      place: tromso,
      localDate: '2026-12-21',
      timeZone: 'Europe/Oslo',
    });
    expect(december.sunset).toBeNull();
    expect(december.sunrise).toBeNull();
    expect(december.civilDusk).not.toBeNull();
    expect(december.astronomicalDusk).not.toBeNull();
  });

  it('a sunset after midnight belongs to the evening before', () => {
    const night = duskAndDawn({
      place: place(64.15, -21.94),
      localDate: '2026-06-20',
      timeZone: 'Atlantic/Reykjavik',
    });
    expect(night.sunset?.slice(0, 10)).toBe('2026-06-21');
    expect(minutesBetween(night.sunset, night.sunrise)).toBeGreaterThan(0);
  });

  it('at the pole at midsummer and midwinter have nothing to offer, and do not fail', () => {
    for (const localDate of ['2026-06-21', '2026-12-21']) {
      const night = duskAndDawn({ place: place(90, 0), localDate, timeZone: 'UTC' });
      expect(Object.values(night)).toEqual(Array(8).fill(null));
    }
  });

  it('refuse a date or place that is none', () => {
    expect(() =>
      duskAndDawn({ place: greenwich, localDate: '2026-02-30', timeZone: 'UTC' }),
    ).toThrow(RangeError);
    expect(() =>
      duskAndDawn({ place: place(91, 0), localDate: '2026-02-20', timeZone: 'UTC' }),
    ).toThrow(RangeError);
  });
});
