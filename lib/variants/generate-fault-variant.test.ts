import { beforeAll, describe, expect, it } from 'vitest';
import { surveyedKits } from '@/tests/support/perfect-evening';
import { eveningScenario } from '@/tests/support/evening';
import { loadCatalogue } from '../content/sky-catalogue';
import { faultFamilies, faultOf, type FaultFamily } from '../faults/faults';
import { faultIds, type FaultId } from '../faults/fault-ids';
import { gradeFault } from '../grading/grade-fault';
import type { FaultSubmission } from '../grading/fault-submission';
import type { Scenario } from '../pointing/scenario';
import { generateFaultVariant } from './generate-fault-variant';
import { openLooks } from './fault-candidates';
import {
  faultTemplates,
  type FaultAnswerKey,
  type FaultTemplate,
  type FaultVariant,
} from './fault-variant';
import { randomFrom } from './random';

const catalogue = loadCatalogue();
const seedsPerTemplate = 200;

type Made = { variant: FaultVariant; answerKey: FaultAnswerKey };

const skies = [
  { place: { latitudeDeg: 45.4, longitudeDeg: -75.7 }, timeZone: 'America/Toronto' },
  { place: { latitudeDeg: 54.6, longitudeDeg: -3.13 }, timeZone: 'Europe/London' },
  { place: { latitudeDeg: -33.87, longitudeDeg: 151.21 }, timeZone: 'Australia/Sydney' },
  { place: { latitudeDeg: 69.65, longitudeDeg: 18.96 }, timeZone: 'Europe/Oslo' },
  { place: { latitudeDeg: -1.29, longitudeDeg: 36.82 }, timeZone: 'Africa/Nairobi' },
];
const evenings = ['2026-03-05T20:30', '2026-07-12T22:45', '2027-10-20T20:00', '2028-12-28T19:15'];

/** A few dozen scenarios, so that their skies need not be worked out anew for every seed. */
function scenarioOf(seed: number): { scenario: Scenario; kit: (typeof surveyedKits)[number] } {
  const random = randomFrom(`scenario ${String(seed)}`);
  const kit = random.pick(surveyedKits);
  const sky = random.pick(skies);
  if (kit === undefined || sky === undefined) throw new Error('nothing to choose from');
  const computer = random.integer(0, 1) === 0 ? 'fixed-zero' : 'solved-zero';
  const altitudeZeroArcmin = computer === 'fixed-zero' ? 10 : 30;
  return {
    kit,
    scenario: eveningScenario({
      ...sky,
      localTime: random.pick(evenings),
      telescope: { ...kit.telescope, computer, altitudeZeroArcmin },
      eyepiece: kit.eyepiece,
    }),
  };
}

function generate(seed: string, template: FaultTemplate, scenarioSeed: number): Made {
  const { scenario, kit } = scenarioOf(scenarioSeed);
  // Every fourth evening is moved; the others share their skies' cost.
  const windowMinutes = scenarioSeed % 4 === 0 ? 40 : 0;
  return generateFaultVariant({
    seed,
    scenario,
    templates: [template],
    catalogue,
    kit,
    windowMinutes,
  });
}

const marked = ({ variant, answerKey }: Made, submission: Partial<FaultSubmission>): number => {
  const cure = answerKey.cures[answerKey.fault]?.[0];
  if (cure === undefined) throw new Error(`no cure for ${answerKey.fault}`);
  const sent = { looked: [], testSlew: null, fault: answerKey.fault, cure, ...submission };
  const grading = gradeFault({ variant, answerKey, submission: sent });
  if (!grading.ok) throw new Error(grading.refusal.code);
  return grading.result.total;
};

describe.each(faultTemplates)('the template %s', (template) => {
  const made: Made[] = [];
  beforeAll(() => {
    for (let seed = 0; seed < seedsPerTemplate; seed++) {
      made.push(generate(`${template} ${String(seed)}`, template, seed % 40));
    }
  }, 240_000);

  it('is what was asked for', () => {
    expect(made.every(({ variant }) => variant.template === template)).toBe(true);
    expect(made.every(({ variant }) => variant.open === openLooks[template])).toBe(true);
  });

  it('gives full marks to the key and to every look-alike with its own cure', () => {
    for (const one of made) {
      expect(marked(one, {})).toBe(100);
      for (const fault of one.answerKey.alike) {
        for (const cure of one.answerKey.cures[fault] ?? []) {
          expect(marked(one, { fault, cure })).toBe(100);
        }
      }
    }
  });

  it('never gives full marks, nor half of them, to a fault that is not alike', () => {
    for (const one of made) {
      const wrong = one.variant.faults.filter((fault) => !one.answerKey.alike.includes(fault));
      expect(wrong.length).toBeGreaterThanOrEqual(2);
      for (const fault of wrong) {
        for (const cure of one.variant.cures) expect(marked(one, { fault, cure })).toBeLessThan(50);
      }
    }
  });

  it('offers five to seven faults, the right one and every look-alike among them, each once', () => {
    for (const { variant, answerKey } of made) {
      expect(variant.faults.length).toBeGreaterThanOrEqual(5);
      expect(variant.faults.length).toBeLessThanOrEqual(7);
      expect(new Set(variant.faults).size).toBe(variant.faults.length);
      expect(answerKey.alike).toContain(answerKey.fault);
      expect(variant.faults).toEqual(expect.arrayContaining([...answerKey.alike]));
      expect(variant.cures.length).toBeGreaterThanOrEqual(5);
      // More than seven only where the offered faults have as many cures between them.
      const theirs = new Set(variant.faults.flatMap((fault) => faultOf(fault).cures));
      expect(variant.cures.length).toBeLessThanOrEqual(Math.max(7, theirs.size));
      expect(new Set(variant.cures).size).toBe(variant.cures.length);
      const cures = answerKey.alike.flatMap((fault) => answerKey.cures[fault] ?? []);
      expect(variant.cures).toEqual(expect.arrayContaining(cures));
    }
  });

  it('offers every cure of every offered fault, so that none is told by its lack of one', () => {
    for (const { variant } of made) {
      for (const fault of variant.faults) {
        expect(variant.cures).toEqual(expect.arrayContaining([...faultOf(fault).cures]));
      }
    }
  });

  it('says for every offered fault that it is not what would have told', () => {
    for (const { variant, answerKey } of made) {
      for (const fault of variant.faults) {
        expect(answerKey.tellTales[fault] === undefined).toBe(answerKey.alike.includes(fault));
      }
    }
  });

  it('says for every offered fault but the real one where the test slews would have landed', () => {
    for (const { variant, answerKey } of made) {
      expect(Object.keys(answerKey.testSlewsIf ?? {}).sort()).toEqual(
        variant.faults.filter((fault) => fault !== answerKey.fault).sort(),
      );
    }
  });

  it('holds numbers only, and survives being stored', () => {
    for (const one of made) {
      expect(JSON.parse(JSON.stringify(one))).toEqual(one);
    }
  });

  it('puts the right one in no favoured place', () => {
    const places = made.map(({ variant, answerKey }) => variant.faults.indexOf(answerKey.fault));
    for (let place = 0; place < 5; place++) {
      // A fifth to a seventh of them each: 28 to 40 of 200.
      expect(places.filter((one) => one === place).length).toBeGreaterThan(12);
    }
  });

  it('asks about many faults, none of them on a third of the variants', () => {
    const counts = new Map<FaultId, number>();
    for (const { answerKey } of made) {
      counts.set(answerKey.fault, (counts.get(answerKey.fault) ?? 0) + 1);
    }
    expect(counts.size).toBeGreaterThanOrEqual(8);
    expect(Math.max(...counts.values())).toBeLessThan(seedsPerTemplate / 3);
    for (const fault of counts.keys()) families[template].add(familyOf(fault));
  });
});

const families = Object.fromEntries(
  faultTemplates.map((template) => [template, new Set<FaultFamily>()]),
) as Record<FaultTemplate, Set<FaultFamily>>;

function familyOf(fault: FaultId): FaultFamily {
  for (const family of familyNames) {
    if (faultFamilies[family].some(({ id }) => id === fault)) return family;
  }
  throw new Error(`${fault} is in no family`);
}
const familyNames = [
  'clock-and-place',
  'stars',
  'base-and-start',
  'tube-and-motors',
  'power',
] as const satisfies readonly FaultFamily[];

it.each(familyNames)('the family %s is asked about in four kinds of evidence or more', (family) => {
  const kinds = faultTemplates.filter((template) => families[template].has(family));
  expect(kinds.length).toBeGreaterThanOrEqual(4);
});

describe('the same seed', () => {
  it('gives the same variant, and another one another', () => {
    expect(generate('a', 'first-slews', 3)).toEqual(generate('a', 'first-slews', 3));
    expect(generate('a', 'first-slews', 3)).not.toEqual(generate('b', 'first-slews', 3));
  });
});

describe('any sky', () => {
  const [kit] = surveyedKits;
  it.each([
    ['at noon', { localTime: '2026-06-21T12:00' }],
    ['under the midnight sun', { ...skies[3], localTime: '2026-06-21T23:59' }],
    ['at the pole', { place: { latitudeDeg: 90, longitudeDeg: 0 }, timeZone: 'Etc/UTC' }],
    ['at the other pole', { place: { latitudeDeg: -90, longitudeDeg: 0 }, timeZone: 'Etc/UTC' }],
    [
      'on the equator at Greenwich',
      { place: { latitudeDeg: 0, longitudeDeg: 0 }, timeZone: 'Etc/UTC' },
    ],
    [
      'where summer time is half an hour',
      { place: { latitudeDeg: -31.5, longitudeDeg: 159.1 }, timeZone: 'Australia/Lord_Howe' },
    ],
    ['wholly under cloud', { clouds: [{ azimuthDeg: 0, altitudeDeg: 90, radiusDeg: 90 }] }],
    ['after the last model of the Earth’s field', { localTime: '2040-12-05T19:30' }],
    ['with the window shut', { localTime: '1999-12-05T19:30' }],
  ])('has its evening: %s', (_, changes) => {
    if (kit === undefined) throw new Error('no kit');
    for (const template of faultTemplates) {
      const made = generateFaultVariant({
        seed: 'any',
        scenario: eveningScenario(changes),
        templates: [template],
        windowMinutes: 0,
        catalogue,
        kit,
      });
      expect(made.variant.template).toBe(template);
      expect(marked(made, {})).toBe(100);
    }
  });
});

it('every fault is drawn some day', () => {
  const drawn = new Set<FaultId>();
  for (let seed = 0; drawn.size < faultIds.length && seed < 1500; seed++) {
    drawn.add(generate(`any ${String(seed)}`, 'first-slews', seed % 40).answerKey.fault);
    drawn.add(generate(`any ${String(seed)}`, 'after-the-alignment', seed % 40).answerKey.fault);
  }
  expect([...faultIds].filter((fault) => !drawn.has(fault))).toEqual([]);
}, 120_000);
