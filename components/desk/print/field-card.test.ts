import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brokenEdges } from '@/lib/assembly/graph';
import { neededSteps } from '@/lib/assembly/steps';
import { faultIds } from '@/lib/faults/fault-ids';
import { faultOf } from '@/lib/faults/faults';
import { packUpSteps } from '@/lib/rehearsal/pack-up';
import { packUpName } from '@/lib/drawings/pack-up-words';
import { stepName } from '@/components/lab/put-it-together/step-words';
import { cureWords } from '@/components/lab/fault/cure-words';
import { buildSteps, cardSteps } from './card-steps';
import { cardDirection, fistsInFigures, settingsInWords } from './card-words';
import { checklist } from './checklist-items';
import { curesOf, faultRows } from './fault-rows';
import { placeLabels } from './place-labels';

const tubes = ['refractor', 'reflector', 'maksutov-cassegrain'] as const;
const bearings: Readonly<Record<string, number>> = {
  north: 0,
  'north-east': 45,
  east: 90,
  'south-east': 135,
  south: 180,
  'south-west': 225,
  west: 270,
  'north-west': 315,
};

/** Reads a direction back as a person with a fist of 10° would: azimuth and altitude in degrees. */
function readBack(text: string): { azimuthDeg: number; altitudeDeg: number } {
  const match = /^(\S+) fists? up, (?:due (\S+)|(\S+) (right|left) of (\S+))$/.exec(text) ?? [];
  const [, up = '', due, aside = '0', side, of] = match;
  const turn = number(aside) * 10 * (side === 'left' ? -1 : 1);
  const from = bearings[due ?? of ?? ''] ?? NaN;
  return { azimuthDeg: from + turn, altitudeDeg: number(up) * 10 };
}
const number = (figures: string): number =>
  Number(figures.replace('½', '') || 0) + (figures.endsWith('½') ? 0.5 : 0);

describe('directions on a card', () => {
  it('lead back to within half a half fist of the star, up and along', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 360, noNaN: true, maxExcluded: true }),
        fc.double({ min: 20, max: 70, noNaN: true }),
        (azimuthDeg, altitudeDeg) => {
          const told = readBack(cardDirection({ azimuthDeg, altitudeDeg }));
          expect(Math.abs(told.altitudeDeg - altitudeDeg)).toBeLessThanOrEqual(2.5 + 1e-9);
          const aside = Math.abs(((told.azimuthDeg - azimuthDeg + 540) % 360) - 180);
          expect(aside).toBeLessThanOrEqual(2.5 + 1e-9);
        },
      ),
    );
  });

  it('are short: figures, the side, the nearest of eight directions', () => {
    expect(cardDirection({ azimuthDeg: 157, altitudeDeg: 46 })).toBe(
      '4½ fists up, 2 right of south-east',
    );
    expect(cardDirection({ azimuthDeg: 359, altitudeDeg: 20 })).toBe('2 fists up, due north');
    expect([0, 0.5, 1, 6.5].map(fistsInFigures)).toEqual(['0', '½', '1', '6½']);
  });
});

it('settings carry west and south as words, and round up to a whole degree', () => {
  const told = settingsInWords({
    localTime: '2026-12-05T18:00:00',
    zoneOffsetMinutes: -300,
    summerTime: false,
    summerTimeMinutes: 60,
    latitudeDeg: -0.22,
    longitudeDeg: -77.9999,
  });
  expect(told).toEqual([
    ['Date', '5 December 2026'],
    ['Zone', 'UTC−5:00'],
    ['Summer time', 'no'],
    ['Latitude', '0° 13′ S'],
    ['Longitude', '78° 0′ W'],
  ]);
});

describe('the steps on a card', () => {
  it.each(tubes)('build a %s in an order that breaks nothing, caps on', (tubeType) => {
    const steps = buildSteps(tubeType);
    expect(brokenEdges({ tubeType, kind: 'build-by-day' }, steps)).toEqual([]);
    expect(steps).toEqual(neededSteps({ tubeType, kind: 'build-by-day' }));
    expect(cardSteps(tubeType).build.map(({ text }) => text)).not.toContain(stepName['caps-off']);
  });

  it('of a telescope of one’s own put nothing before the eyepiece', () => {
    expect(buildSteps(null).filter((step) => /prism|diagonal/.test(step))).toEqual([]);
  });

  it('say what lifts and pinches before it is done, and that the Sun must have set', () => {
    const { build, then } = cardSteps('refractor');
    const cautionAt = (text: string) =>
      [...build, ...then].find((one) => one.text.startsWith(text))?.caution ?? '';
    expect(cautionAt('Spread the three legs')).toMatch(/fingers/i);
    expect(cautionAt('Set the mount on')).toMatch(/two people/i);
    expect(cautionAt('Slide the tube in')).toMatch(/two people/i);
    expect(cautionAt('Caps off')).toMatch(/Sun has set/);
    expect(cautionAt('Power')).toMatch(/Mains is the teacher/);
  });
});

describe('if this, then that', () => {
  it('holds the whole fault catalogue, each fault once', () => {
    expect(faultRows.flatMap(({ faults }) => faults).toSorted()).toEqual([...faultIds].sort());
  });

  it('names for each fault the cures of the catalogue', () => {
    for (const row of faultRows) {
      for (const id of row.faults) {
        for (const cure of faultOf(id).cures) expect(curesOf(row)).toContain(cureWords[cure].name);
      }
    }
  });
});

describe('the checklist', () => {
  const items = checklist.flatMap(({ items: all }) => all);

  it('packs up in the order that lets nothing fall', () => {
    const last = checklist.at(-1)?.items.map(({ text }) => text) ?? [];
    expect(last.slice(0, packUpSteps.length)).toEqual(packUpSteps.map(packUpName));
  });

  it('gives to students nothing that is the teacher’s: Sun, mains, thunder', () => {
    for (const { text, caution = '', who } of items) {
      if (/^sun has set|mains only|thunder heard/i.test(`${text} ${caution}`)) {
        expect(who, text).toBe('teacher');
      }
    }
    expect(items.filter(({ caution }) => /SUN/.test(caution ?? ''))).toHaveLength(1);
  });

  it('says nothing twice', () => {
    expect(new Set(items.map(({ text }) => text)).size).toBe(items.length);
  });
});

it('names of two stars close together do not lie over each other', () => {
  const size = 8.5;
  const placed = placeLabels(
    [
      { x: 100, y: 40, text: 'Polaris' },
      { x: 112, y: 42, text: 'Kochab' },
      { x: 350, y: 40, text: 'Aldebaran' },
    ],
    { size, width: 360, gap: 6.5 },
  );
  const [one, other, edge] = placed;
  const apart =
    Math.abs((one?.labelY ?? 0) - (other?.labelY ?? 0)) >= size ||
    (one?.labelX ?? 0) + 7 * size * 0.56 <= (other?.labelX ?? 0) ||
    (other?.labelX ?? 0) + 6 * size * 0.56 <= (one?.labelX ?? 0);
  expect(apart).toBe(true);
  expect((edge?.labelX ?? 0) + 9 * size * 0.56).toBeLessThanOrEqual(360);
});
