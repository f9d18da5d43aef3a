import { readFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { gradeFault } from '@/lib/grading/grade-fault';
import { decodeCatalogue } from '@/lib/sky/catalogue';
import { generateFaultVariant } from '@/lib/variants/generate-fault-variant';
import type { FaultAnswerKey, FaultVariant, Look } from '@/lib/variants/fault-variant';
import { looks } from '@/lib/variants/fault-variant';
import { faultAdviceInWords, verdictInWords } from '@/components/grading/fault/fault-result-words';
import type { Landing } from '@/lib/faults/evidence';
import { faultyEvening } from '@/tests/support/faulty-evening';
import { eveningScenario } from '@/tests/support/evening';
import { cureWords } from './cure-words';
import { landingInWords } from './evidence/landing-words';
import { faultHints } from './fault-hints';
import { faultView, wholeFaultView } from './fault-view';
import type { FaultView, WholeFaultView } from './fault-view';
import { faultWords } from './fault-words';

const settings = ['summer-time', 'time-zone', 'date', 'longitude-sign', 'latitude'];
const evenings: {
  variant: FaultVariant;
  answerKey: FaultAnswerKey;
  /** As the page holds it before anything has been asked for. */
  fresh: FaultView;
  view: WholeFaultView;
}[] = [];

const about = () => ({
  placeName: 'Testham',
  catalogue: decodeCatalogue(
    JSON.parse(readFileSync(path.join(process.cwd(), 'content/stars/catalogue.json'), 'utf8')),
  ),
});

beforeAll(() => {
  const { placeName, catalogue } = about();
  for (let seed = 0; seed < 40; seed += 1) {
    const made = generateFaultVariant({
      seed: `evening ${String(seed)}`,
      scenario: eveningScenario(seed % 2 === 0 ? {} : { localTime: '2026-08-12T22:30' }),
      templates: [],
      catalogue,
      kit: {
        name: 'Wren',
        tubeType: 'refractor',
        orientation: 'true',
        centringEyepiece: { focalLengthMm: 25, apparentFieldDeg: 50 },
      },
    });
    evenings.push({
      ...made,
      fresh: faultView(made.variant, { placeName, catalogue }),
      view: wholeFaultView(made.variant, { placeName, catalogue }),
    });
  }
}, 60_000);

test('the card differs from the right one exactly where a setting is the fault', () => {
  for (const { view, answerKey } of evenings) {
    const wrong = JSON.stringify(view.evidence.card) !== JSON.stringify(view.facts.right);
    expect(wrong).toBe(settings.includes(answerKey.fault));
  }
});

test('every star that the telescope was sent to has a place above the horizon', () => {
  for (const { view } of evenings) {
    const { first, second, later } = view.evidence;
    for (const { hip } of [first, second, ...later, ...view.testSlews])
      expect(view.places[hip]?.altitudeDeg).toBeGreaterThan(0);
  }
});

test('what the lab is given holds neither the answer key nor the settings of the true sky', () => {
  for (const { view, fresh } of evenings)
    for (const one of [view, fresh])
      expect(Object.keys(one).sort()).toEqual(
        [
          ...['template', 'evidence', 'open', 'testSlew', 'testSlews', 'faults', 'cures', 'kit'],
          ...['facts', 'places', 'fieldRadiusArcmin', 'solvesForZero'],
        ].sort(),
      );
});

/** The figures of a JSON value, whole numbers left out: those stand everywhere. */
const figuresIn = (json: unknown): string[] =>
  JSON.stringify(json).match(/-?\d+\.\d+(e-?\d+)?/g) ?? [];

/** What of an item of evidence could be found in a page: figures, codes, the words on the card. */
function tracesOf(look: Look, { evidence, facts }: WholeFaultView): string[] {
  const landing = ({ rightDeg, upDeg }: Landing) => figuresIn([rightDeg, upDeg]);
  switch (look) {
    case 'first':
    case 'second':
      return landing(evidence[look]);
    case 'later':
      return evidence.later.flatMap(landing);
    case 'outcome':
      return figuresIn(evidence.outcome);
    case 'observations':
      return [...evidence.observations];
    case 'card': {
      // What a right clock and the map say too tells nothing of what was entered.
      const right = Object.values(facts.right);
      return Object.values(evidence.card).flatMap((entry) =>
        typeof entry === 'string' && !right.includes(entry) ? [entry] : [],
      );
    }
  }
}

/** A figure may begin or end another one, so only whole values count. */
const holds = (json: string, trace: string): boolean =>
  new RegExp(`[:[,"]${trace.replaceAll(/[.+]/g, '\\$&')}[,}\\]"]`).test(json);

test('a fresh page holds no trace of evidence that was not asked for', () => {
  const searchedFor = new Set<Look>();
  for (const { view, fresh } of evenings) {
    const json = JSON.stringify(fresh);
    for (const look of looks) {
      const traces = tracesOf(look, view);
      const isOpen = view.open.includes(look);
      // What lies open is found: the search can find.
      for (const trace of traces) expect(holds(json, trace), `${look} ${trace}`).toBe(isOpen);
      if (!isOpen && traces.length > 0) searchedFor.add(look);
    }
    for (const { rightDeg, upDeg } of view.testSlews)
      for (const figure of figuresIn([rightDeg, upDeg])) expect(holds(json, figure)).toBe(false);
    expect(fresh.testSlews.map(({ hip }) => hip)).toEqual(view.testSlews.map(({ hip }) => hip));
  }
  // Each was face down on some evening and had figures or words to be found by.
  expect([...looks].filter((look) => !searchedFor.has(look))).toEqual([]);
});

test('what has been asked for comes with the page, and nothing more', () => {
  const { placeName, catalogue } = about();
  const variant = faultyEvening();
  const [capella, polaris] = variant.testSlews;
  if (capella === undefined || polaris === undefined) throw new Error('two slews are offered');
  const seen = { looked: ['card' as const], testSlew: polaris.hip };
  const view = faultView(variant, { placeName, catalogue, seen });
  expect(Object.keys(view.evidence).sort()).toEqual(['card', 'first', 'outcome', 'second']);
  expect(view.testSlew).toEqual(polaris);
  expect(holds(JSON.stringify(view), String(capella.rightDeg))).toBe(false);
});

test('no hint of a real evening names what is offered', () => {
  for (const { view } of evenings)
    for (const hint of faultHints(view, [...looks]))
      for (const name of [
        ...view.faults.map((id) => faultWords[id].name),
        ...view.cures.map((id) => cureWords[id].name),
      ])
        expect(hint.toLowerCase()).not.toContain(name.toLowerCase());
});

test('every answer to a real evening is told in whole sentences', () => {
  for (const { variant, answerKey, view } of evenings)
    for (const fault of variant.faults) {
      const cure = variant.cures[0];
      if (cure === undefined) throw new Error('no cure is offered');
      const graded = gradeFault({
        variant,
        answerKey,
        submission: { looked: [], testSlew: null, fault, cure },
      });
      if (!graded.ok) throw new Error(graded.refusal.code);
      const said = `${verdictInWords(graded.result)} ${faultAdviceInWords(graded.result, view.open)}`;
      expect(said).toMatch(/\.$/);
      expect(said).not.toMatch(/undefined|NaN|null/);
      expect(verdictInWords(graded.result).startsWith('It was')).toBe(
        !answerKey.alike.includes(fault),
      );
    }
});

test('every landing can be told', () => {
  for (const { view } of evenings)
    for (const landing of [view.evidence.first, ...view.testSlews])
      expect(landingInWords(landing)).toMatch(/^(right on the star|[\d.]+[°′] too )/);
});
