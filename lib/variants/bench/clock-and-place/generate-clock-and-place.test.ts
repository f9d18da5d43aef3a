import { describe, expect, it } from 'vitest';
import { clockTask, manyClockTasks } from '@/tests/support/clock-tasks';
import { believedSkyOf, missDeg, seenAt } from '../../../clock/believed-place';
import { entriesThatDiffer, formInstantMs, latitudeDegOf } from '../../../clock/mount-form';
import { clockAndPlaceVariantSchema } from '../../../data/lab-tasks/bench/stored-clock-and-place';
import { mountFormSchema } from '../../../grading/bench/clock-and-place/clock-and-place-submission';
import { azAltFromDirection } from '../../../units/vector';
import { instantOfLocalTime } from '../../../sky/local-time';
import { clockAndPlaceTemplates, type ClockAndPlaceVariant } from './clock-and-place-variant';

const each = 70;
const of = (template: (typeof clockAndPlaceTemplates)[number]) => manyClockTasks(each, [template]);
const instantOf = ({ right, summerTimeMinutes }: ClockAndPlaceVariant) =>
  formInstantMs(right, summerTimeMinutes) ?? NaN;
const fullGiven = ({ given }: ClockAndPlaceVariant) => mountFormSchema.parse(given);
const wrongIn = (task: ClockAndPlaceVariant) =>
  entriesThatDiffer(fullGiven(task), task.right, task.summerTimeMinutes);

describe('a task of clock and place', () => {
  it('is the same for the same seed, and read back from its JSON whole', () => {
    for (const [index, template] of clockAndPlaceTemplates.entries()) {
      const task = clockTask('same', template, index);
      expect(clockTask('same', template, index)).toEqual(task);
      expect(clockAndPlaceVariantSchema.parse(JSON.parse(JSON.stringify(task)))).toEqual(task);
    }
  });

  it('gives no two students of a class the same form to hand in', () => {
    for (const template of clockAndPlaceTemplates) {
      const forms = Array.from({ length: 30 }, (_, index) =>
        JSON.stringify(clockTask(`student ${String(index)}`, template).right),
      );
      expect(new Set(forms).size).toBe(30);
    }
  });

  it('shows a sky with stars to slew to, where the card says', () => {
    for (const task of manyClockTasks(14)) {
      const { sky, stars, right } = task;
      expect(sky.latitudeDeg).toBeCloseTo(latitudeDegOf(right), 9);
      expect(stars.filter(({ judged }) => judged).length).toBeGreaterThanOrEqual(2);
      for (const star of stars) {
        expect(azAltFromDirection(seenAt(star, sky)).altitudeDeg).toBeGreaterThan(4.99);
      }
    }
  });

  it('keeps to the scenario’s evening where the card is written at home', () => {
    for (let index = 0; index < 40; index += 1) {
      const task = clockTask(`window ${String(index)}`, 'enter-the-card');
      // Ottawa, 19:30 in winter, five hours behind UTC.
      const off = Math.abs(instantOf(task) - Date.UTC(2026, 11, 6, 0, 30)) / 60_000;
      expect(off).toBeLessThanOrEqual(40);
      expect(task.open).toHaveLength(6);
    }
  });
});

describe('the form to check', () => {
  it('has two wrong rows, and each would be seen on the sky', () => {
    const seen = new Set<string>();
    for (const task of of('check-the-form')) {
      const wrong = wrongIn(task);
      expect(wrong).toHaveLength(2);
      for (const row of wrong) seen.add(row);
      const believed = believedSkyOf(fullGiven(task), task);
      if (believed === null) throw new Error('a mount would refuse it');
      const misses = task.stars
        .filter(({ judged }) => judged)
        .map((star) => missDeg(star, believed, task.sky));
      expect(Math.max(...misses)).toBeGreaterThan(0.5);
    }
    expect(seen.size).toBe(6);
  });
});

describe('dew on the card', () => {
  it('leaves one wrong row among three that cannot be read, and every row has its turn', () => {
    const seen = new Set<string>();
    for (const task of of('dew-on-the-card')) {
      const [wrong, ...others] = wrongIn(task);
      expect(others).toEqual([]);
      expect(task.card.smudged).toHaveLength(3);
      expect(task.card.smudged).toContain(wrong);
      seen.add(wrong ?? '');
    }
    expect(seen.size).toBe(6);
  });
});

describe('the night of the change', () => {
  it('asks for what the clock rules say: twice, skipped or plain', () => {
    const seen = new Set<string>();
    for (const { change, card, right, summerTimeMinutes } of of('night-of-the-change')) {
      if (change === null) throw new Error('there is no change');
      seen.add(change.verdict);
      expect(change.readings).toHaveLength(4);
      if (change.meant === null) {
        expect(change.verdict).toBe('plain');
        expect({ hour: right.hour, minute: right.minute }).toEqual({
          hour: card.time.hour,
          minute: card.time.minute,
        });
        continue;
      }
      expect(change.canMean).toContain(change.meant);
      const { hour, minute, day, summerTime } = right;
      expect(change.readings[change.meant]).toMatchObject({ hour, minute, day, summerTime });
      // The other reading is the other side of the change: an hour away, half an hour on Lord Howe.
      const instants = change.canMean.map((index) => {
        const reading = change.readings[index];
        if (reading === undefined) throw new Error('no such reading');
        return formInstantMs({ ...right, ...reading }, summerTimeMinutes) ?? NaN;
      });
      expect(Math.abs((instants[0] ?? NaN) - (instants[1] ?? NaN))).toBe(
        summerTimeMinutes * 60_000,
      );
    }
    expect([...seen].sort()).toEqual(['plain', 'skipped', 'twice']);
  });

  it('names the two readings that the zone’s own rules name', () => {
    let checked = 0;
    for (let index = 0; index < 60; index += 1) {
      const { change, card } = clockTask(`berlin ${String(index)}`, 'night-of-the-change', 1);
      if (change === null || change.meant === null || card.placeName.includes(',')) continue;
      const { year, month, day } = card.date;
      const two = (value: number) => String(value).padStart(2, '0');
      const text = (of: { day: number; hour: number; minute: number }) =>
        `${String(year)}-${two(month)}-${two(of.day)}T${two(of.hour)}:${two(of.minute)}`;
      const found = instantOfLocalTime(text({ day, ...card.time }), 'Europe/Berlin');
      // Half the tasks are far off, where clocks change on other nights.
      if (found.ok) continue;
      const named = change.canMean.map((i) => {
        const reading = change.readings[i];
        return reading === undefined
          ? ''
          : text(reading) + (reading.summerTime ? '+02:00' : '+01:00');
      });
      expect([...named].sort()).toEqual([...found.candidates].sort());
      checked += 1;
    }
    expect(checked).toBeGreaterThan(10);
  });
});

describe('far from home', () => {
  it('goes south or west, with a watch whose clock is two hours off or more', () => {
    for (const { card, right, summerTimeMinutes } of of('far-from-home')) {
      if (card.watch === null) throw new Error('there is no watch');
      const { latitudeArcmin, longitudeArcmin } = card.place;
      expect(latitudeArcmin < 0 || longitudeArcmin < 0).toBe(true);
      const here = right.zoneMinutes + (right.summerTime ? summerTimeMinutes : 0);
      // A change of the clocks may fall between the day drawn and the hour drawn.
      expect(Math.abs(here - card.watch.aheadMinutes)).toBeGreaterThanOrEqual(60);
      const { year, month, day } = card.date;
      const byWatch = Date.UTC(year, month - 1, day, card.time.hour, card.time.minute);
      const byForm = Date.UTC(right.year, right.month - 1, right.day, right.hour, right.minute);
      expect(byWatch - card.watch.aheadMinutes * 60_000).toBe(byForm - here * 60_000);
    }
  });
});

describe('by the needle', () => {
  it('is where a compass errs by six degrees and more', () => {
    for (const { declinationDeg, open } of of('by-the-needle')) {
      expect(Math.abs(declinationDeg ?? 0)).toBeGreaterThanOrEqual(6);
      expect(open).toEqual(['latitude', 'longitude']);
    }
  });
});
