import { AstroTime, DefineStar, Body, Equator, Horizon, Observer } from 'astronomy-engine';
import { beforeAll, describe, expect, it } from 'vitest';
import { loadCatalogue, loadKits, loadSites } from '../content/sky-catalogue';
import { answerKeyFor } from '../pointing/answer-key-for';
import { fieldRadiusArcmin } from '../pointing/field-radius';
import { rankPairs } from '../pointing/rank-pairs';
import { scenarioSchema } from '../pointing/scenario';
import { skyTargets } from '../optics/sky-targets';
import { separationDeg, directionFromAzAlt } from '../units/vector';
import { clockTime, eveningOf, momentsOf, type NightSite } from './evening';
import { fortnightFrom } from './fortnight';
import { alignMinutes, momentAt } from './night-pairs';
import { cardPairs } from './card-pairs';
import { goodHitRate, planNight, type LaterPair } from './plan-night';

const catalogue = loadCatalogue();
const kits = loadKits().map(({ id, name, telescope, eyepieces, observingEyepieceId }) => {
  const eyepiece = eyepieces.find((one) => one.id === observingEyepieceId);
  if (eyepiece === undefined) throw new Error(`${id} has no observing eyepiece`);
  return { id, name, telescope, eyepieces, eyepiece };
});
const openField = loadSites()[0]?.horizon ?? [];

function siteAt(latitudeDeg: number, longitudeDeg: number, timeZone: string): NightSite {
  const { place, horizon, sky, settings } = scenarioSchema.parse({
    place: { latitudeDeg, longitudeDeg },
    horizon: openField,
    localTime: '2026-12-05T20:00',
    timeZone,
    telescope: kits[0]?.telescope,
    eyepiece: { focalLengthMm: 25, apparentFieldDeg: 50 },
  });
  return { place, horizon, sky, settings, timeZone };
}

const [optics] = kits;
if (optics === undefined) throw new Error('there are no telescopes');

const north = siteAt(52, 0, 'Europe/London');
const equator = siteAt(-0.2, -78.5, 'America/Guayaquil');
const south = siteAt(-42.9, 147.3, 'Australia/Hobart');
const places = [
  ['52° north', north],
  ['the equator', equator],
  ['43° south', south],
] as const;

const pause = () => Promise.resolve();

async function planOf(site: NightSite, localDate = '2026-12-05', endsAt = '22:30') {
  const planned = await planNight({ site, kits, catalogue, localDate, endsAt, pause });
  if (!planned.ok) throw new Error(planned.reason);
  return planned.plan;
}

const planned = await Promise.all(
  places.map(async ([name, site]) => [name, site, await planOf(site)] as const),
);

describe.each(planned)('a night plan at %s', (_, site, plan) => {
  it('begins when two stars may serve and not a step earlier', () => {
    const moments = momentsOf(plan.evening, { stepMinutes: 10, timeZone: site.timeZone });
    const start = moments.indexOf(plan.twoStarsFrom ?? '');
    expect(start).toBeGreaterThan(0);
    const usable = (index: number) => momentAt(site, catalogue, moments[index] ?? '').usable.length;
    expect(usable(start)).toBeGreaterThanOrEqual(2);
    expect(usable(start - 1)).toBeLessThan(2);
  });

  it('names for each telescope pairs that serve through their whole window and not beyond', () => {
    const moments = momentsOf(plan.evening, { stepMinutes: 10, timeZone: site.timeZone });
    for (const { pairs } of plan.hours.flatMap((hour) => hour.pairs)) {
      expect(pairs.length).toBeGreaterThan(0);
      for (const { stars, from, until } of pairs) {
        const serve = (instant: string | undefined): boolean =>
          instant !== undefined &&
          stars.every(({ hip }) =>
            momentAt(site, catalogue, instant).usable.some((star) => star.hip === hip),
          );
        expect(serve(from)).toBe(true);
        expect(serve(until)).toBe(true);
        expect(serve(moments[moments.indexOf(from) - 1])).toBe(false);
        expect(serve(moments[moments.indexOf(until) + 1])).toBe(false);
      }
    }
  });

  // The answer key, with all of the catalogue: as a student's choice is judged.
  it('takes the stars and cautions of the answer key, though it looks at far fewer stars', () => {
    for (const { instant } of plan.hours) {
      const moment = momentAt(site, catalogue, instant);
      const scenario = { ...site, clouds: [], localTime: '', ...optics };
      const key = answerKeyFor({ scenario, instant, frame: moment.frame, catalogue });
      const usable = key.stars.filter((star) => star.usable);
      expect(moment.usable.map(({ hip, cautions }) => ({ hip, cautions }))).toEqual(
        usable.map(({ hip, cautions }) => ({ hip, cautions })),
      );
    }
  });

  it('never names a pair of fainter stars where a brighter one is worth as much and stays as long', () => {
    for (const { instant, pairs } of plan.hours) {
      const moment = momentAt(site, catalogue, instant);
      const brightness = new Map(moment.usable.map(({ hip, seenAs }) => [hip, seenAs]));
      const fainter = (stars: readonly number[]) =>
        Math.max(...stars.map((hip) => brightness.get(hip) ?? NaN));
      const risky = (stars: readonly number[]) =>
        moment.usable.some(({ hip, cautions }) => stars.includes(hip) && cautions.length > 0);
      for (const { kitId, pairs: own } of pairs) {
        const kit = kits.find(({ id }) => id === kitId);
        const [chosen] = own;
        if (kit === undefined || chosen === undefined) throw new Error(`no pair for ${kitId}`);
        const hips = chosen.stars.map(({ hip }) => hip);
        const ranked = rankPairs(
          moment.usable,
          kit.telescope,
          fieldRadiusArcmin(kit.telescope, kit.eyepiece),
        );
        const soon = new Date(Date.parse(instant) + alignMinutes * 60_000);
        const then = momentAt(site, catalogue, soon.toISOString()).usable;
        const stays = (stars: readonly number[]) =>
          soon.toISOString() > plan.evening.to ||
          stars.every((hip) => then.some((star) => star.hip === hip));
        const better = ranked.filter(
          ({ stars, hitRate }) =>
            hitRate >= chosen.hitRate &&
            !risky(stars) &&
            stays(stars) &&
            fainter(stars) < fainter(hips),
        );
        expect(better).toEqual([]);
        // Two points for the brightness, five for doing without a look-alike and for time to align.
        expect(chosen.hitRate).toBeGreaterThanOrEqual((ranked[0]?.hitRate ?? 1) - 0.07);
      }
    }
  });

  it('gives a second pair that does without the stars of the first', () => {
    for (const { pairs } of plan.hours.flatMap((hour) => hour.pairs)) {
      const [one, other] = pairs.map(({ stars }) => stars.map(({ hip }) => hip));
      expect(other?.some((hip) => one?.includes(hip)) ?? false).toBe(false);
    }
  });

  // The same places by the general library's own star routine, which knows nothing of ours.
  it('shows what stands two fists up, where astronomy-engine finds it', () => {
    const observer = new Observer(site.place.latitudeDeg, site.place.longitudeDeg, 0);
    const fixed = plan.toShow.filter(({ kind }) => kind === 'cluster' || kind === 'double');
    expect(fixed.length).toBeGreaterThan(3);
    for (const { name, best } of fixed) {
      const target = skyTargets.find((one) => one.name === name);
      if (target === undefined) throw new Error(`${name} is no target`);
      DefineStar(Body.Star1, target.rightAscensionDeg / 15, target.declinationDeg, 1000);
      const time = new AstroTime(new Date(best.instant));
      const { ra, dec } = Equator(Body.Star1, time, observer, true, true);
      const seen = Horizon(time, observer, ra, dec, 'normal');
      expect(
        separationDeg(
          directionFromAzAlt(best.azimuthDeg, best.altitudeDeg),
          directionFromAzAlt(seen.azimuth, seen.altitude),
        ),
        name,
      ).toBeLessThan(0.05);
      expect(seen.altitude).toBeGreaterThan(19.9);
    }
  });

  it('leaves clusters for the time when the Sun is 12° down', () => {
    const observer = new Observer(site.place.latitudeDeg, site.place.longitudeDeg, 0);
    const clusters = plan.toShow.filter(({ kind }) => kind === 'cluster');
    expect(clusters.length).toBeGreaterThan(0);
    for (const instant of clusters.flatMap(({ from, until, best }) => [
      from,
      until,
      best.instant,
    ])) {
      const time = new AstroTime(new Date(instant));
      const { ra, dec } = Equator(Body.Sun, time, observer, true, true);
      expect(Horizon(time, observer, ra, dec).altitude).toBeLessThanOrEqual(-12);
    }
  });

  it('looks at nothing overhead that stands lower at another time of the evening', () => {
    const moments = momentsOf(plan.evening, { stepMinutes: 10, timeZone: site.timeZone });
    const observer = new Observer(site.place.latitudeDeg, site.place.longitudeDeg, 0);
    for (const { name, best, from, until } of plan.toShow) {
      const target = skyTargets.find((one) => one.name === name);
      if (target === undefined || best.altitudeDeg <= site.settings.highestAltitudeDeg) continue;
      DefineStar(Body.Star1, target.rightAscensionDeg / 15, target.declinationDeg, 1000);
      for (const instant of moments.filter((one) => one >= from && one <= until)) {
        const time = new AstroTime(new Date(instant));
        const { ra, dec } = Equator(Body.Star1, time, observer, true, true);
        const { altitude } = Horizon(time, observer, ra, dec, 'normal');
        expect(altitude, name).toBeGreaterThan(site.settings.highestAltitudeDeg - 0.05);
      }
    }
  });
});

describe('a telescope that begins with a poor pair', () => {
  // In the southern midsummer the first two stars at dusk stand none too well for each other.
  const yard = {
    ...south,
    horizon: loadSites().find(({ id }) => id === 'school-yard')?.horizon ?? [],
  };
  let poor: ({ plan: Awaited<ReturnType<typeof planOf>> } & LaterPair)[] = [];
  beforeAll(async () => {
    const dates = ['2027-01-05', '2027-01-12'];
    const plans = await Promise.all(dates.map((date) => planOf(yard, date, '23:30')));
    poor = plans.flatMap((plan) => plan.goodLater.map((late) => ({ plan, ...late })));
  });

  it('is told when a good one comes, and none was good before', () => {
    expect(poor.filter(({ later }) => later !== null).length).toBeGreaterThan(0);
    for (const { plan, kitId, later } of poor) {
      const own = plan.hours.flatMap(({ instant, pairs }) =>
        pairs
          .filter((one) => one.kitId === kitId)
          .map((one) => ({ instant, hitRate: one.pairs[0]?.hitRate ?? 0 })),
      );
      expect(own[0]?.hitRate).toBeLessThan(goodHitRate);
      const early = own.filter(({ instant }) => later === null || instant < later.instant);
      expect(early.every(({ hitRate }) => hitRate < goodHitRate)).toBe(true);
      if (later === null) continue;
      expect(later.pair.hitRate).toBeGreaterThanOrEqual(goodHitRate);
      expect(Date.parse(later.pair.until)).toBeGreaterThanOrEqual(
        Date.parse(later.instant) + alignMinutes * 60_000,
      );
    }
  });

  it('takes out a card that begins with the good one', () => {
    for (const { plan, kitId, later } of poor) {
      const [first, ...rest] = cardPairs(plan, kitId);
      expect(first).toEqual(later ?? first);
      const times = [first, ...rest].map((one) => one?.instant ?? '');
      expect(times).toEqual([...new Set(times)].sort());
    }
  });
});

describe('an evening without two stars', () => {
  it('still shows the Moon and the planets that the eye finds', async () => {
    // The Moon of 24 June 2026 is past its first quarter, so it stands in the south at sunset (from memory:
    // full on 29 June 2026).
    const plan = await planOf(siteAt(60, 10.75, 'Europe/Oslo'), '2026-06-23', '23:00');
    expect(plan.twoStarsFrom).toBeNull();
    expect(plan.toShow.every(({ kind }) => kind === 'moon' || kind === 'planet')).toBe(true);
  });
});

describe('an evening', () => {
  it('may end after midnight', () => {
    const read = eveningOf(north, { localDate: '2026-12-05', endsAt: '01:00' });
    expect(read.ok && read.evening.to).toBe('2026-12-06T01:00:00.000Z');
  });

  it.each([
    [siteAt(69.6, 19, 'Europe/Oslo'), '2026-06-21', '23:30', 'sun-stays-up'],
    [north, '2026-06-21', '20:00', 'ends-before-sunset'],
    [north, '2026-02-30', '22:00', 'no-such-time'],
  ] as const)('is none where there is none (%#)', (site, localDate, endsAt, reason) => {
    expect(eveningOf(site, { localDate, endsAt })).toEqual({ ok: false, reason });
  });

  it('begins at noon where the Sun stays down', () => {
    const read = eveningOf(siteAt(69.6, 19, 'Europe/Oslo'), {
      localDate: '2026-12-21',
      endsAt: '21:00',
    });
    expect(read.ok && clockTime(read.evening.from, 'Europe/Oslo')).toBe('12:00');
  });
});

describe('a Moon that neither rises nor sets', () => {
  const tromso = siteAt(69.6, 18.95, 'Europe/Oslo');

  // Two days after full Moon (24 November 2026, almanac, from memory) it stands at about +25° of declination,
  // and everything north of 90° − 69.6° = 20.4° stays up there; two weeks later it is as far south.
  it.each([
    ['2026-11-26', true],
    ['2026-12-09', false],
  ])('is up or down for the whole evening of %s', (localDate, up) => {
    const read = eveningOf(tromso, { localDate, endsAt: '22:00' });
    if (!read.ok) throw new Error(read.reason);
    const { from, to, moon } = read.evening;
    expect(moon.passages).toEqual([]);
    expect(moon.up).toEqual(up ? [{ from, to }] : []);
    // The general library's own places.
    const observer = new Observer(69.6, 18.95, 0);
    for (const instant of [from, to]) {
      const time = new AstroTime(new Date(instant));
      const { ra, dec } = Equator(Body.Moon, time, observer, true, true);
      expect(Horizon(time, observer, ra, dec, 'normal').altitude > 0).toBe(up);
    }
  });

  it('is up between its rising and setting elsewhere', () => {
    for (let day = 1; day <= 28; day += 3) {
      const read = eveningOf(north, {
        localDate: `2026-12-${String(day).padStart(2, '0')}`,
        endsAt: '23:30',
      });
      if (!read.ok) throw new Error(read.reason);
      const { from, to, moon } = read.evening;
      const edges = moon.up.flatMap((span) => [span.from, span.to]);
      expect(edges).toEqual([...edges].sort());
      for (const { instant } of moon.passages)
        expect(edges.includes(instant)).toBe(instant > from && instant < to);
    }
  });
});

describe('the hours of a plan', () => {
  it.each([
    ['Asia/Kathmandu', 27.7, 85.3],
    ['Australia/Adelaide', -34.9, 138.6],
    ['Europe/London', 52, 0],
  ])(
    'are whole ones of the clock on the wall in %s',
    async (timeZone, latitudeDeg, longitudeDeg) => {
      const { hours, twoStarsFrom } = await planOf(siteAt(latitudeDeg, longitudeDeg, timeZone));
      const shown = hours.map(({ instant }) => clockTime(instant, timeZone));
      expect(hours[0]?.instant).toBe(twoStarsFrom);
      expect(shown.slice(1).every((time) => time.endsWith(':00'))).toBe(true);
      expect(shown.length).toBeGreaterThan(1);
    },
  );
});

describe('a fortnight', () => {
  const fortnight = (site: NightSite, localDate: string, endsAt = '22:30') =>
    fortnightFrom(site, { localDate, endsAt }, pause);

  // Minute by minute, by the general library's own places of Sun and Moon. The Moon counts as up while its
  // upper limb is: 34′ of refraction and a half-width of 15.5′ (USNO, "Rise, Set, and Twilight Definitions").
  it.each([
    ['52° north', north, '2026-12-18'],
    ['43° south', south, '2026-11-26'],
    ['the polar night', siteAt(78.2, 15.6, 'Europe/Oslo'), '2026-12-16'],
  ])('counts the dark minutes, and those without the Moon, at %s', async (_, site, localDate) => {
    const [first] = (await fortnight(site, localDate)).evenings;
    const read = eveningOf(site, { localDate, endsAt: '22:30' });
    if (!read.ok) throw new Error(read.reason);
    const observer = new Observer(site.place.latitudeDeg, site.place.longitudeDeg, 0);
    const altitude = (body: Body, ms: number): number => {
      const time = new AstroTime(new Date(ms));
      const { ra, dec } = Equator(body, time, observer, true, true);
      return Horizon(time, observer, ra, dec).altitude;
    };
    let [dark, moonless] = [0, 0];
    const end = Date.parse(read.evening.to);
    for (let ms = Date.parse(read.evening.from) + 30_000; ms < end; ms += 60_000) {
      if (altitude(Body.Sun, ms) > -12) continue;
      dark += 1;
      if (altitude(Body.Moon, ms) <= -49.5 / 60) moonless += 1;
    }
    expect(dark).toBeGreaterThan(0);
    // A minute for the rounding of either end; another, as the Moon's half-width changes with its distance.
    expect(Math.abs((first?.darkMinutes ?? NaN) - dark)).toBeLessThanOrEqual(1);
    expect(Math.abs((first?.moonlessMinutes ?? NaN) - moonless)).toBeLessThanOrEqual(2);
  });

  // New Moon on 9 December 2026, full on 24 December: almanac, from memory.
  it('has its best evening without the Moon, and none such at full Moon', async () => {
    const { evenings, best } = await fortnight(north, '2026-12-12');
    expect(evenings.map(({ localDate }) => localDate)).toHaveLength(14);
    expect(best).toBe('2026-12-12');
    const full = evenings.find(({ localDate }) => localDate === '2026-12-24');
    expect(full?.moonlessMinutes).toBe(0);
    expect(full?.illuminatedFraction).toBeGreaterThan(0.98);
  });

  it('says why an evening has no sunset', async () => {
    const far = siteAt(69.6, 18.95, 'Europe/Oslo');
    const reasons = ['2026-12-10', '2026-06-21', '2026-10-10'].map(
      async (localDate) => (await fortnight(far, localDate, '22:00')).evenings[0]?.noSunset,
    );
    expect(await Promise.all(reasons)).toEqual(['sun-stays-down', 'sun-stays-up', null]);
  });

  // The midnight Sun stands at φ + δ − 90°: at 60° N it sinks 12° only while δ < 18°, which it is from
  // about 1 August on (δ by any almanac, from memory: 18.1° on 1 August, 17.0° on 5 August); by one in the
  // morning, when the class packs up, the Sun of that longitude is at its lowest.
  it('has no best where it never gets dark, and says when it does again', async () => {
    const far = siteAt(60, 10.75, 'Europe/Oslo');
    const light = await fortnight(far, '2026-06-14', '01:30');
    expect(light.best).toBeNull();
    expect(light.nextDark).toMatch(/^2026-08-0[1-5]$/);
    const dark = await fortnight(far, light.nextDark ?? '', '01:30');
    expect(dark).toMatchObject({ nextDark: null });
    expect(dark.evenings[0]?.darkMinutes).toBeGreaterThan(0);
  });

  it('looks ahead for a year and not for ever', async () => {
    // Who packs up at noon has gone before every sunset.
    const { nextDark } = await fortnight(north, '2026-06-14', '12:00');
    expect(nextDark).toBeNull();
  });
});
