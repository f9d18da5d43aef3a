import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { perfectEvening, someSizes, surveyedKits } from '@/tests/support/perfect-evening';
import { loadCatalogue } from '../content/sky-catalogue';
import { surveyLookAlikes } from '../variants/survey-look-alikes';
import { runEvening, type EveningShown } from './evening';
import { cureIds, faultIds, type FaultId } from './fault-ids';
import { faultOf, faults } from './faults';
import { topics, type Evening } from './faulty-evening';
import { centringLimitDeg, cluesBetween, comparisons, shownBy } from './look-alikes';

/** Pairs as the section of DEVELOPERS.md names them. */
function reviewed(): Set<string> {
  const text = readFileSync('DEVELOPERS.md', 'utf8').replaceAll(/\s+/g, ' ');
  const section = text.slice(text.indexOf('## Faults that look alike'));
  const found = [...section.matchAll(/([a-z-]+) · ([a-z-]+)/g)];
  return new Set(found.map(([, one = '', other = '']) => [one, other].sort().join(' ')));
}

const firstShown = (id: FaultId, evening: Evening): EveningShown => {
  const [form] = faultOf(id).forms(evening, someSizes);
  if (form === undefined) throw new Error(`${id} cannot happen`);
  return runEvening(form);
};

it('every named fault is made once, with a cure, and every cure cures something', () => {
  expect(faults.map(({ id }) => id).sort()).toEqual([...faultIds].sort());
  expect(faults.every(({ cures }) => cures.length > 0)).toBe(true);
  expect([...new Set(faults.flatMap(({ cures }) => cures))].sort()).toEqual([...cureIds].sort());
});

describe('every fault’s evidence', () => {
  it('is told apart from every other’s on every evening, but for the reviewed look-alikes', () => {
    const { evenings, pairs } = surveyLookAlikes({
      // As the command draws them unless it is told otherwise.
      seed: 'look-alikes',
      evenings: 40,
      kits: surveyedKits,
      catalogue: loadCatalogue(),
    });
    expect(evenings).toBeGreaterThan(35);
    const list = reviewed();
    expect(list.size).toBeGreaterThan(5);
    const found = pairs.map(({ faults: pair }) => [...pair].sort().join(' '));
    expect(found.filter((pair) => !list.has(pair))).toEqual([]);
    // The list is no blank cheque: what it calls alike on every evening is.
    const always = pairs.filter(({ both, unnoticed }) => unnoticed === both);
    expect(always.map(({ faults: pair }) => pair.join(' ')).sort()).toEqual(
      [
        'backlash wrong-final-approach',
        'tube-slips clutch-unlocked',
        'clutch-unlocked tripod-bumped',
        'clutch-unlocked cable-snag',
        'tripod-bumped cable-snag',
      ].sort(),
    );
    // What bystanders notice tells all apart but those that differ in nothing one could see.
    const lookers = pairs.filter(({ noticed }) => noticed > 0).map(({ faults: pair }) => pair);
    expect(
      lookers.filter(
        (pair) =>
          ![
            'backlash wrong-final-approach',
            'wrong-star planet',
            'swapped-stars wrong-star',
          ].includes(pair.join(' ')),
      ),
    ).toEqual([]);
  }, 120_000);

  it('is a number wherever it is one', () => {
    for (const computer of ['fixed-zero', 'solved-zero'] as const) {
      for (const fault of faults) {
        for (const shown of shownBy(fault, perfectEvening(computer), someSizes)) {
          expect(JSON.stringify(shown)).not.toMatch(
            /"(rightDeg|upDeg|\w+Arcmin|baseTiltDeg)":null/,
          );
        }
      }
    }
  });
});

describe('clues between two evenings', () => {
  const evening = perfectEvening();

  it('are none between an evening and itself', () => {
    for (const { id } of faults) {
      const shown = firstShown(id, evening);
      expect(cluesBetween(evening, shown, shown)).toEqual([]);
    }
  });

  it('do not depend on which is named first', () => {
    const shown = faults.map(({ id }) => firstShown(id, evening));
    for (const one of shown) {
      for (const other of shown) {
        expect(cluesBetween(evening, one, other)).toEqual(cluesBetween(evening, other, one));
      }
    }
  });

  it('are the card alone between summer time and a zone one hour off', () => {
    const summer = firstShown('summer-time', evening);
    const zones = shownBy(faultOf('time-zone'), evening, someSizes);
    expect(zones.map((zone) => cluesBetween(evening, summer, zone))).toContainEqual(['card']);
  });

  it('are the card alone between a latitude and a base that leans the same way', () => {
    const latitude = firstShown('latitude', evening);
    const bases = shownBy(faultOf('base-not-level'), evening, someSizes);
    expect(bases.map((base) => cluesBetween(evening, latitude, base))).toContainEqual(['card']);
  });

  it('are what somebody noticed between a slipping tube and a loose clutch', () => {
    const witnessed = { ...evening, noticed: topics };
    const slipping = firstShown('tube-slips', witnessed);
    const loose = shownBy(faultOf('clutch-unlocked'), witnessed, someSizes);
    expect(loose.map((one) => cluesBetween(evening, slipping, one))).toContainEqual([
      'observations',
    ]);
  });

  it('do not arise from two centrings that differ by less than two standard deviations', () => {
    const left = evening.centringArcmin;
    const astray = (sign: number): EveningShown =>
      runEvening({
        ...evening,
        habits: {
          ...evening.habits,
          centring: [
            { rightArcmin: sign * left, upArcmin: sign * left },
            { rightArcmin: sign * left, upArcmin: sign * left },
          ],
        },
      });
    expect(cluesBetween(evening, astray(1), astray(-1))).toEqual([]);
    expect(centringLimitDeg(7.5) * 60).toBeCloseTo(21.2, 1);
  });
});

describe('comparisons', () => {
  it('carry the test slews of the form that comes nearest to what was seen', () => {
    const evening = perfectEvening();
    const fault = faultOf('base-not-level');
    const forms = shownBy(fault, evening, someSizes);
    const slews = new Set(forms.map(({ testSlews }) => JSON.stringify(testSlews)));
    expect(slews.size).toBeGreaterThan(2);
    // Whichever way the base leans, what it shows is told from itself by nothing.
    for (const shown of forms) {
      const found = comparisons(evening, someSizes, shown).find(({ fault: id }) => id === fault.id);
      expect(found?.testSlews).toEqual(shown.testSlews);
    }
  });

  it('have no test slew for what cannot happen that evening', () => {
    const evening = perfectEvening();
    const shown = firstShown('summer-time', evening);
    for (const { differsBy, testSlews } of comparisons(evening, someSizes, shown))
      if (differsBy === Infinity) expect(testSlews).toEqual([]);
  });

  it('call the fault that happened alike, and name for each other one what tells it apart', () => {
    const evening = perfectEvening();
    // Ottawa's longitude taken for an eastern one would put both stars below the ground.
    for (const { id } of faults.filter((fault) => fault.id !== 'longitude-sign')) {
      const shown = firstShown(id, evening);
      for (const one of comparisons(evening, someSizes, shown)) {
        if (one.fault === id) expect(one).toMatchObject({ alike: true, tellTale: null });
        else if (one.differsBy < Infinity) expect(one.alike).toBe(one.tellTale === null);
      }
    }
  });

  it('know a fault that cannot happen', () => {
    const evening = { ...perfectEvening(), mistakable: [[], []] } as const;
    const found = comparisons(evening, someSizes, runEvening(evening)).find(
      ({ fault }) => fault === 'planet',
    );
    expect(found).toMatchObject({ alike: false, differsBy: Infinity });
  });
});
