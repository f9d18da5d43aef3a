import { readFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, expect, test } from 'vitest';
import { gradeFault } from '@/lib/grading/grade-fault';
import { decodeCatalogue } from '@/lib/sky/catalogue';
import { generateFaultVariant } from '@/lib/variants/generate-fault-variant';
import type { FaultAnswerKey, FaultVariant } from '@/lib/variants/fault-variant';
import { looks } from '@/lib/variants/fault-variant';
import { faultAdviceInWords, verdictInWords } from '@/components/grading/fault-result-words';
import { eveningScenario } from '@/tests/support/evening';
import { cureWords } from './cure-words';
import { landingInWords } from './evidence/landing-words';
import { faultHints } from './fault-hints';
import { faultView } from './fault-view';
import type { FaultView } from './fault-view';
import { faultWords } from './fault-words';

const settings = ['summer-time', 'time-zone', 'date', 'longitude-sign', 'latitude'];
const evenings: { variant: FaultVariant; answerKey: FaultAnswerKey; view: FaultView }[] = [];

beforeAll(() => {
  const catalogue = decodeCatalogue(
    JSON.parse(readFileSync(path.join(process.cwd(), 'content/stars/catalogue.json'), 'utf8')),
  );
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
      view: faultView(made.variant, { placeName: 'Testham', catalogue }),
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
  for (const { view } of evenings)
    expect(Object.keys(view).sort()).toEqual(
      [
        ...['template', 'evidence', 'open', 'testSlews', 'faults', 'cures', 'kit'],
        ...['facts', 'places', 'fieldRadiusArcmin', 'solvesForZero'],
      ].sort(),
    );
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
