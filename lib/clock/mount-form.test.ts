import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  entriesThatDiffer,
  formEntries,
  formInstantMs,
  formProblem,
  latitudeDegOf,
  longitudeDegOf,
  placeFields,
  withEntry,
  type MountForm,
} from './mount-form';

const right: MountForm = {
  year: 2026,
  month: 8,
  day: 14,
  hour: 22,
  minute: 30,
  zoneMinutes: 60,
  summerTime: true,
  ...placeFields(50 * 60 + 7, -(8 * 60 + 41)),
};
const differ = (slip: Partial<MountForm>) => entriesThatDiffer({ ...right, ...slip }, right, 60);

describe('the form of a mount', () => {
  it('says an instant: 22:30 an hour ahead and in summer time is 20:30 UTC', () => {
    expect(formInstantMs(right, 60)).toBe(Date.UTC(2026, 7, 14, 20, 30));
  });

  it('writes a place in degrees, minutes and a side, and reads it back', () => {
    expect(right).toMatchObject({ longitudeDegrees: 8, longitudeMinutes: 41, longitudeSide: 'W' });
    fc.assert(
      fc.property(
        fc.integer({ min: -5400, max: 5400 }),
        fc.integer({ min: -10_800, max: 10_800 }),
        (latitudeArcmin, longitudeArcmin) => {
          const form = { ...right, ...placeFields(latitudeArcmin, longitudeArcmin) };
          expect(latitudeDegOf(form) * 60).toBeCloseTo(latitudeArcmin, 8);
          expect(longitudeDegOf(form) * 60).toBeCloseTo(longitudeArcmin, 8);
          expect(formProblem(form)).toBeNull();
        },
      ),
    );
  });

  it('is taken by no mount with a day that is none, or a place off the globe', () => {
    expect(formProblem({ ...right, month: 2, day: 30 })).toBe('no-such-date');
    expect(formProblem({ ...right, latitudeDegrees: 90, latitudeMinutes: 1 })).toBe(
      'latitude-beyond-90',
    );
    expect(formProblem({ ...right, longitudeDegrees: 180, longitudeMinutes: 1 })).toBe(
      'longitude-beyond-180',
    );
  });
});

describe('two forms', () => {
  it('differ in the rows that say something else', () => {
    expect(differ({})).toEqual([]);
    expect(differ({ summerTime: false })).toEqual(['summer-time']);
    expect(differ({ month: 7, longitudeSide: 'E' })).toEqual(['date', 'longitude']);
  });

  it('do not differ by a minute of arc, which is how decimals round', () => {
    expect(differ({ latitudeMinutes: 8, longitudeMinutes: 40 })).toEqual([]);
    expect(differ({ latitudeMinutes: 9 })).toEqual(['latitude']);
  });

  it('do not differ where zone and summer time make the same hour together', () => {
    expect(differ({ zoneMinutes: 120, summerTime: false })).toEqual([]);
    expect(differ({ zoneMinutes: 120 })).toEqual(['zone']);
  });

  it('do not differ where a visitor’s watch is entered with the watch’s own zone', () => {
    expect(differ({ day: 15, hour: 5, minute: 30, zoneMinutes: 540, summerTime: false })).toEqual(
      [],
    );
  });

  it('differ in nothing any more when every row was taken over', () => {
    const other: MountForm = {
      year: 2025,
      month: 1,
      day: 2,
      hour: 3,
      minute: 4,
      zoneMinutes: -300,
      summerTime: false,
      ...placeFields(-100, 200),
    };
    expect(formEntries.reduce((form, entry) => withEntry(form, entry, right), other)).toEqual(
      right,
    );
    expect(entriesThatDiffer(other, right, 60)).toEqual([...formEntries]);
  });
});
