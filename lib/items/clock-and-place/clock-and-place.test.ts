import { describe, expect, it } from 'vitest';
import { loadItemWorld } from '../../content/item-world';
import { skyFrameAt } from '../../sky/frame-at';
import { placeCatalogue } from '../../sky/star-places';
import { declinationAt } from '../../clock/declination';
import { drawItem } from '../draw-item';
import type { Item } from '../item';
import type { ItemFamily } from '../item-family';
import { moment } from './moment';
import { needleAndNorth } from './needle-and-north';
import { seasons } from './seasons';
import { toldWrong } from './told-wrong';
import { turningSky } from './turning-sky';
import { whereItStands } from './where-it-stands';
import { whereabouts } from './words';
import { inFists } from '../../wording/fists';

const world = loadItemWorld();
const draws = 60;

type Kind = Item['kind'];
/** So many questions of one template, all of the kind that it makes. */
function drawn<K extends Kind>(family: ItemFamily, template: string, kind: K) {
  return Array.from({ length: draws }, (_, n) =>
    drawItem(family, template, { seed: `recomputed ${String(n)}`, world }),
  ).flatMap((item) => (item.kind === kind ? [item as Extract<Item, { kind: K }>] : []));
}

/** What a pattern finds in a text, or a failure that shows the text. */
function found(text: string, pattern: RegExp): string[] {
  const match = pattern.exec(text);
  if (match === null) throw new Error(`${String(pattern)} is not in “${text}”`);
  return [...match];
}
const numberIn = (text: string, pattern: RegExp): number => Number(found(text, pattern)[1]);

const monthNames = [
  ...['January', 'February', 'March', 'April', 'May', 'June', 'July'],
  ...['August', 'September', 'October', 'November', 'December'],
];

/** Latitude and instant that a prompt speaks of; drawn skies are of 2026 and 2027. */
function skyOf(prompt: string) {
  const [, degrees, side, day, month, hour, minute] = found(
    prompt,
    /At (\d+)° (north|south), (\d+) (\w+), (\d+):(\d\d)/,
  );
  const latitudeDeg = Number(degrees) * (side === 'south' ? -1 : 1);
  const at = (year: number) =>
    Date.UTC(year, monthNames.indexOf(month ?? ''), Number(day), Number(hour), Number(minute));
  return { latitudeDeg, instants: [at(2026), at(2027)] };
}

/** Where the ephemeris and the whole catalogue have a star, by another way than by turning a drawn sky. */
function ephemeris(name: string, latitudeDeg: number, ms: number) {
  const place = { latitudeDeg, longitudeDeg: 0, elevationM: 0 };
  const frame = skyFrameAt({ instant: new Date(ms), place });
  const star = world.catalogue.stars.find((one) => one.name === name);
  if (star === undefined) throw new Error(`${name} is in no catalogue`);
  const placed = placeCatalogue({ version: 'one', stars: [star], figures: [] }, frame);
  return {
    azimuthDeg: placed.azimuthDeg[0] ?? Number.NaN,
    altitudeDeg: placed.altitudeDeg[0] ?? Number.NaN,
  };
}

/** Everything that a place may be called whose degrees are right to a third of one. */
function namesOf({ azimuthDeg, altitudeDeg }: { azimuthDeg: number; altitudeDeg: number }) {
  const near = [-0.35, 0, 0.35];
  return new Set(
    near.flatMap((da) =>
      near.map((dh) =>
        whereabouts({
          azimuthDeg: azimuthDeg + da / Math.cos((altitudeDeg * Math.PI) / 180),
          altitudeDeg: altitudeDeg + dh,
        }),
      ),
    ),
  );
}
const plain = (text: string) => text.replace(/\.$/, '').replace(/^[A-Z]/, (c) => c.toLowerCase());

/** Right where the ephemeris, for one of the two years, has the star after so many hours or days. */
function isThere(text: string, prompt: string, name: string, laterMs: number): boolean {
  const { latitudeDeg, instants } = skyOf(prompt);
  return instants.some((ms) =>
    namesOf(ephemeris(name, latitudeDeg, ms + laterMs)).has(plain(text)),
  );
}

describe('where it stands', () => {
  it('has its point on the chart at the azimuth and altitude of the question, and no other there', () => {
    for (const item of drawn(whereItStands, 'point-at-it', 'point')) {
      const azimuthDeg = numberIn(item.prompt, /azimuth (\d+)°/);
      const altitudeDeg = numberIn(item.prompt, /altitude (\d+)°/);
      for (const spot of item.spots) {
        // Back from the page: the zenith at (160, 160), the horizon 128 from it, east on the left.
        const [east, north] = [160 - spot.x, 160 - spot.y];
        const altitude = 90 - (Math.hypot(east, north) / 128) * 90;
        const azimuth = ((Math.atan2(east, north) * 180) / Math.PI + 360) % 360;
        const there = Math.abs(altitude - altitudeDeg) < 1 && Math.abs(azimuth - azimuthDeg) < 1;
        expect(there, `${item.prompt} ${spot.where}`).toBe(spot.id === item.key);
        const turned = (azimuth + 360) % 360;
        if (spot.misconception === 'azimuth-from-south') {
          expect(Math.abs(turned - ((azimuthDeg + 180) % 360))).toBeLessThan(1);
        }
        if (spot.misconception === 'azimuth-anticlockwise') {
          expect(Math.abs(turned - (360 - azimuthDeg))).toBeLessThan(1);
        }
        if (spot.misconception === 'altitude-looks-higher') {
          expect(Math.abs(altitude - 1.5 * altitudeDeg)).toBeLessThan(1);
        }
      }
    }
  });

  it('counts a gap in fists of 10°, and the distractor that looks so is 1.26 times too wide', () => {
    for (const item of drawn(whereItStands, 'gap-on-the-horizon', 'choice')) {
      const [, from, to] = found(item.prompt, /azimuth (\d+)° and .+ at (\d+)°/);
      const gap = (Number(to) - Number(from) + 360) % 360;
      for (const { id, text, misconception } of item.options) {
        expect(text === inFists(gap), item.prompt).toBe(id === item.key);
        if (misconception === 'azimuth-gap-looks-wider') expect(text).toBe(inFists(gap * 1.26));
      }
    }
  });

  it('names only what is so of a star, whichever way it is put', () => {
    for (const item of drawn(whereItStands, 'claims-that-hold', 'several')) {
      const azimuthDeg = numberIn(item.prompt, /azimuth (\d+)°/);
      for (const { text, right } of item.options) {
        const facing = /Facing (\w+), you find it (.+) to the (left|right)/.exec(text);
        if (facing === null) continue;
        const [, side = '', fists, hand] = facing;
        const from = 90 * ['north', 'east', 'south', 'west'].indexOf(side);
        const cross = Math.sin(((azimuthDeg - from) * Math.PI) / 180);
        expect((cross > 0 ? 'right' : 'left') === hand, text).toBe(right);
        const apart = Math.abs(((azimuthDeg - from + 540) % 360) - 180);
        expect(fists).toBe(inFists(apart));
      }
    }
  });
});

describe('the turning sky', () => {
  it('puts a star hours later where the ephemeris of that later time has it, and nowhere else', () => {
    for (const item of drawn(turningSky, 'where-will-it-be', 'choice')) {
      const [, name = '', hours] = found(item.prompt, /\. ([^.]+) stands .+ stand (\d+) hours/);
      for (const { id, text } of item.options) {
        const there = isThere(text, item.prompt, name, Number(hours) * 3_600_000);
        expect(there, `${item.prompt} → ${text}`).toBe(id === item.key);
      }
    }
  });

  it('lets those stars set that the ephemeris has below the horizon, and no others', () => {
    for (const item of drawn(turningSky, 'gone-by-then', 'several')) {
      const { latitudeDeg, instants } = skyOf(item.prompt);
      const hours = numberIn(item.prompt, /set (\d+) hours/);
      const fits = instants.some((ms) =>
        item.options.every(({ text, right }) => {
          const name = text.split(',')[0] ?? '';
          return ephemeris(name, latitudeDeg, ms + hours * 3_600_000).altitudeDeg < 0 === right;
        }),
      );
      expect(fits, item.prompt).toBe(true);
    }
  });

  it('turns 360° in a sidereal day of 23 h 56 m 4.0905 s', () => {
    // mean sidereal day in mean solar time: Explanatory Supplement, from memory
    const dayMinutes = 23 * 60 + 56 + 4.0905 / 60;
    for (const item of drawn(turningSky, 'turn-of-the-sky', 'numeric')) {
      const [, h1, m1, h2, m2] = found(item.prompt, /from (\d+):(\d+) to (\d+):(\d+)/).map(Number);
      const minutes = (60 * ((h2 ?? 0) - (h1 ?? 0)) + (m2 ?? 0) - (m1 ?? 0) + 1440) % 1440;
      expect(item.key).toBeCloseTo((360 * minutes) / dayMinutes, 3);
    }
  });

  it('goes against the clock round the north pole and with it round the south pole', () => {
    for (const item of drawn(turningSky, 'round-the-pole', 'point')) {
      const north = item.prompt.includes('look north');
      const [, h1, , h2] = found(item.prompt, /at (\d+):(\d+)\. .+ at (\d+):/).map(Number);
      const hours = ((h2 ?? 0) - (h1 ?? 0) + 24) % 24;
      const star = item.drawing.shapes.find((one) => one.kind === 'circle' && one.r === 7);
      if (star?.kind !== 'circle') throw new Error('the star is drawn');
      // On a page y grows down: a turn against the clock takes (x, y) to (x cos + y sin, y cos − x sin).
      const turn = ((north ? 1 : -1) * hours * Math.PI) / 12;
      const [x, y] = [star.cx - 160, star.cy - 150];
      const to = {
        x: 160 + x * Math.cos(turn) + y * Math.sin(turn),
        y: 150 + y * Math.cos(turn) - x * Math.sin(turn),
      };
      for (const spot of item.spots) {
        const there = Math.hypot(spot.x - to.x, spot.y - to.y) < 4;
        expect(there, item.prompt).toBe(spot.id === item.key);
      }
    }
  });
});

describe('earlier every night', () => {
  it('is 3 m 55.9 s a day, as the sidereal day has it', () => {
    for (const item of drawn(seasons, 'minutes-earlier', 'numeric')) {
      const days = numberIn(item.prompt, /in (\d+) days/);
      expect(item.key).toBeCloseTo((days * (24 * 3600 - 86_164.0905)) / 60, 2);
    }
  });

  it('puts a star weeks later where the ephemeris of that date has it, and nowhere else', () => {
    const days: Record<string, number> = {
      'two weeks': 14,
      'three weeks': 21,
      'a month': 30,
      'six weeks': 42,
      'two months': 61,
    };
    for (const item of drawn(seasons, 'same-hour-later', 'choice')) {
      const [, name = '', span = ''] = found(item.prompt, /\. ([^.]+) stands .+ stand (.+) later/);
      for (const { id, text } of item.options) {
        const there = isThere(text, item.prompt, name, (days[span] ?? Number.NaN) * 86_400_000);
        expect(there, `${item.prompt} → ${text}`).toBe(id === item.key);
      }
    }
  });

  it('has each star cross the meridian at the hour of the question in mid-month, within forty minutes', () => {
    for (const item of drawn(seasons, 'month-of-the-meridian', 'match')) {
      const hour = numberIn(item.prompt, /cross at (\d+):00/);
      const [, degrees = '', side = ''] = found(item.prompt, /At (\d+)° (north|south)/);
      const latitudeDeg = Number(degrees) * (side === 'south' ? -1 : 1);
      for (const pair of item.pairs) {
        const name = item.left.find(({ id }) => id === pair.left)?.text.split(',')[0] ?? '';
        const month = item.right.find(({ id }) => id === pair.right)?.text ?? '';
        // Due south or north seen from the equator, by the ephemeris of that very month.
        const { azimuthDeg, altitudeDeg } = ephemeris(
          name,
          0,
          Date.UTC(2026, monthNames.indexOf(month), 15, hour),
        );
        const east =
          Math.sin((azimuthDeg * Math.PI) / 180) * Math.cos((altitudeDeg * Math.PI) / 180);
        const up = Math.sin((altitudeDeg * Math.PI) / 180);
        const hourAngle = (Math.atan2(-east, up) * 12) / Math.PI;
        expect(Math.abs(hourAngle), `${name} in ${month}`).toBeLessThan(0.65);
        // Where the question is asked the star is well up by then.
        const there = ephemeris(
          name,
          latitudeDeg,
          Date.UTC(2026, monthNames.indexOf(month), 15, hour),
        );
        expect(there.altitudeDeg, `${name}, ${item.prompt}`).toBeGreaterThan(7);
      }
    }
  });
});

/** The instant of a clock in words, by the offset that ISO 8601 writes behind it. */
function instantOf(words: string): number {
  const [, hour = '', minute = '', zone = '', summer = ''] = found(
    words,
    /(\d\d):(\d\d), zone (.+?), summer time (on|off)/,
  );
  const behind = zone.includes('behind');
  const hours = zone.includes('itself') ? 0 : numberIn(zone, /(\d+) h/);
  const offset = (behind ? -hours : hours) + (summer === 'on' ? 1 : 0);
  const iso = `${offset < 0 ? '-' : '+'}${String(Math.abs(offset)).padStart(2, '0')}:00`;
  return Date.parse(`2026-07-10T${hour}:${minute}:00${iso}`);
}
const utcOf = (ms: number) => new Date(ms).toISOString().slice(11, 16);

describe('one moment, many clocks', () => {
  it('comes to the UTC that ISO 8601 gives for the same offset', () => {
    for (const item of drawn(moment, 'clock-to-utc', 'numeric')) {
      expect(item.key).toBe(new Date(instantOf(item.prompt)).getUTCHours());
    }
    for (const item of drawn(moment, 'one-moment', 'several')) {
      const [, utc] = found(item.prompt, /It is (\d\d:\d\d) by UTC/);
      for (const { text, right } of item.options) {
        expect(utcOf(instantOf(text)) === utc, `${item.prompt} ${text}`).toBe(right);
      }
    }
  });

  it('names the slip that leads to each wrong clock', () => {
    for (const item of drawn(moment, 'one-moment', 'several')) {
      const [, utc] = found(item.prompt, /It is (\d\d:\d\d) by UTC/);
      for (const { text, misconception } of item.options) {
        if (misconception === 'summer-time-hour') {
          expect(utcOf(instantOf(text.replace('time on', 'time off')))).toBe(utc);
        }
        if (misconception === 'zone-the-wrong-way') {
          const other = text.includes('ahead of') ? 'behind' : 'ahead of';
          expect(utcOf(instantOf(text.replace(/ahead of|behind/, other)))).toBe(utc);
        }
      }
    }
  });

  it('orders moments as their instants go', () => {
    for (const item of drawn(moment, 'moments-in-order', 'order')) {
      const at = (id: string) => instantOf(item.steps.find((step) => step.id === id)?.text ?? '');
      for (const { first, then } of item.rules) expect(at(first)).toBeLessThan(at(then));
      expect(item.rules.length).toBe(item.steps.length - 1);
    }
  });

  it('takes a forgotten switch for an hour later than it is, and for nothing else', () => {
    for (const item of drawn(moment, 'what-is-forgotten', 'choice')) {
      const forgotten = `${utcOf(instantOf(item.prompt) + 3_600_000)} by UTC`;
      for (const { id, text } of item.options) expect(text === forgotten).toBe(id === item.key);
    }
  });

  it('has one row of the form that says something else than the card', () => {
    for (const item of drawn(moment, 'row-that-is-wrong', 'point')) {
      const { alternative } = item.drawing;
      const card = found(
        item.prompt,
        /says: (\d+) (\w+) (\d+), (\d+):(\d\d) in the evening by the clock, zone (.+?), summer time on, (.+?), (.+?)\. One/,
      );
      const [
        ,
        day = '',
        month = '',
        year = '',
        hour = '',
        minute = '',
        zone = '',
        lat = '',
        lon = '',
      ] = card;
      const two = (value: number) => String(value).padStart(2, '0');
      const letters = (text: string) =>
        text.replace(/(north|south|east|west)/, (w) => w.charAt(0).toUpperCase());
      const rows = [
        `Date: ${year}-${two(monthNames.indexOf(month) + 1)}-${two(Number(day))}.`,
        `Clock: ${String(Number(hour) + 12)}:${minute}.`,
        `Zone: ${zone}.`,
        'Summer time: on.',
        `Latitude: ${letters(lat)}.`,
        `Longitude: ${letters(lon)}.`,
      ];
      const wrong = rows.filter((row) => !alternative.includes(row));
      expect(wrong.length, alternative).toBe(1);
      const key = item.spots.find(({ id }) => id === item.key);
      expect(key?.where).toBe(`The row “${(wrong[0] ?? '').split(':')[0] ?? ''}”`);
    }
  });
});

describe('told a wrong time or place', () => {
  it('sends the tube where the ephemeris has the star at the time that was told, and nowhere else', () => {
    for (const item of drawn(toldWrong, 'where-the-tube-looks', 'point')) {
      const [, hours = '', way] = found(item.prompt, /clock is ([\d½]+) hours? (ahead|behind)/);
      const [, name = ''] = found(item.prompt, /yet\. ([^.]+) stands/);
      const ms = 3_600_000 * Number(hours.replace('½', '.5')) * (way === 'ahead' ? 1 : -1);
      for (const { id, where } of item.spots) {
        expect(isThere(where, item.prompt, name, ms), `${item.prompt} ${where}`).toBe(
          id === item.key,
        );
      }
    }
  });

  it('turns the sky by 360.9856° a day of clock, by 0.9856° a date and by 1° a degree of longitude', () => {
    let recomputed = 0;
    for (const { prompt, key } of drawn(toldWrong, 'how-far-turned', 'numeric')) {
      const clock = /clock is (\d+) minutes/.exec(prompt);
      const date = /entered (\d+) days/.exec(prompt);
      const off = /longitude was entered (\d+)°/.exec(prompt);
      const swapped = /at longitude (\d+)°/.exec(prompt);
      const expected =
        clock !== null
          ? (360.985_647_366 * Number(clock[1])) / 1440
          : date !== null
            ? 0.985_647_366 * Number(date[1])
            : off !== null
              ? Number(off[1])
              : swapped !== null
                ? 2 * Number(swapped[1])
                : null;
      if (expected === null) continue;
      recomputed += 1;
      expect(key, prompt).toBeCloseTo(expected, 3);
    }
    expect(recomputed).toBeGreaterThan(draws / 2);
  });

  it('finds one slip alone that turns the sky by as much as was seen', () => {
    for (const item of drawn(toldWrong, 'which-slip-was-it', 'choice')) {
      const seen = numberIn(item.prompt, /about (\d+)° away/);
      for (const { id, reason } of item.options) {
        if (id === item.key) continue;
        const turns = numberIn(reason, /turns the sky by ([\d.]+)°/);
        expect(Math.abs(turns - seen), item.prompt).toBeGreaterThan(0.8);
      }
    }
  });
});

describe('needle and true north', () => {
  it('adds what the World Magnetic Model gives to what the compass shows', () => {
    for (const { prompt, key } of drawn(needleAndNorth, 'from-needle-to-azimuth', 'numeric')) {
      const [, off, side, bearing] = found(prompt, /points (\d+)° (east|west).* is at (\d+)°/);
      const declination = Number(off) * (side === 'west' ? -1 : 1);
      expect(key).toBe((Number(bearing) + declination + 360) % 360);
    }
    const halifax = declinationAt(
      { latitudeDeg: 44.64, longitudeDeg: -63.58, elevationM: 0 },
      '2026-11-25T00:00:00Z',
    );
    const prompts = drawn(needleAndNorth, 'from-needle-to-azimuth', 'numeric').map(
      (one) => one.prompt,
    );
    const said = prompts.find((prompt) => prompt.includes('Halifax')) ?? '';
    expect(halifax.ok && said.includes(`${halifax.declinationDeg.toFixed(0).slice(1)}° west`)).toBe(
      true,
    );
  });

  it('leads the tube to the true direction by the right bearing alone', () => {
    for (const item of drawn(needleAndNorth, 'bearing-of-true-north', 'choice')) {
      const [, off, side, name = ''] = found(
        item.prompt,
        /points (\d+)° (east|west).*along true (\w+)\./,
      );
      const meant = 90 * ['north', 'east', 'south', 'west'].indexOf(name);
      for (const { id, text } of item.options) {
        const azimuth = Number(text.replace('°', '')) + Number(off) * (side === 'west' ? -1 : 1);
        expect((azimuth - meant + 720) % 360 === 0, item.prompt).toBe(id === item.key);
      }
    }
  });

  it('has Polaris as high as the ephemeris has it, to half a fist, and no brighter than that star', () => {
    for (const item of drawn(needleAndNorth, 'is-it-polaris', 'choice')) {
      const { latitudeDeg, instants } = skyOf(item.prompt);
      const key = item.options.find(({ id }) => id === item.key)?.text ?? '';
      const fits = instants.some((ms) => {
        const { altitudeDeg } = ephemeris('Polaris', latitudeDeg, ms);
        // The latitude is Polaris’s height to 0.8°, and half a fist is 5°.
        return [-0.8, 0, 0.8].some((d) => key.includes(`${inFists(altitudeDeg + d)} up`));
      });
      expect(fits, `${item.prompt} ${key}`).toBe(true);
    }
  });
});
