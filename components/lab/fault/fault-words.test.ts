import { expect, test } from 'vitest';
import { cureIds, faultIds } from '@/lib/faults/fault-ids';
import { emptyFaultDraft } from '@/lib/grading/fault-submission';
import { looks } from '@/lib/variants/fault-variant';
import { faultyEvening } from '@/tests/support/faulty-evening';
import { cureWords } from './cure-words';
import { changeFaultChoice, startFaultChoice } from './fault-choice';
import { faultHints } from './fault-hints';
import { faultGroups, faultWords } from './fault-words';

test('every fault stands in the list exactly once', () => {
  const listed = faultGroups.flatMap(({ faults }) => faults);
  expect([...listed].sort()).toEqual([...faultIds].sort());
});

test('no two faults or cures have the same name or line', () => {
  for (const words of [
    faultIds.map((id) => faultWords[id].name),
    faultIds.map((id) => faultWords[id].line),
    cureIds.map((id) => cureWords[id].name),
  ])
    expect(new Set(words).size).toBe(words.length);
});

test('cures that bring people near the Sun, cells, a loose tube, a heavy stand or a cable carry a caution', () => {
  for (const cure of [
    'set-the-finder',
    'fresh-cells-and-align-again',
    'balance-and-tighten-the-tube',
    'stand-it-firm-and-align-again',
    'level-the-base',
    'free-the-cable-and-align-again',
  ] as const)
    expect(cureWords[cure].caution).toBeTruthy();
  expect(cureWords['set-the-finder'].caution).toMatch(/Sun blinds/);
  expect(cureWords['fresh-cells-and-align-again'].caution).toMatch(/mains/);
});

test('no hint names a fault or a cure, whatever has been seen', () => {
  const view = faultyEvening();
  const seenSets = [[], ...looks.map((look) => [look]), [...looks]];
  const names = [
    ...faultIds.map((id) => faultWords[id].name),
    ...cureIds.map((id) => cureWords[id].name),
  ].map((name) => name.toLowerCase());
  for (const seen of seenSets) {
    const hints = faultHints(view, seen);
    expect(hints).toHaveLength(3);
    for (const hint of hints)
      for (const name of names) expect(hint.toLowerCase()).not.toContain(name);
  }
});

test('hints do not tell of what was not looked at', () => {
  const agreeing = faultyEvening().evidence;
  const other = { ...agreeing, outcome: { kind: 'disagree' as const, mismatchArcmin: 192 } };
  const seen = ['first', 'second'] as const;
  expect(faultHints({ evidence: agreeing }, seen)).toEqual(faultHints({ evidence: other }, seen));
});

test('a second test slew is not made, and a look counts once', () => {
  const once = changeFaultChoice(startFaultChoice(emptyFaultDraft), { type: 'test-slew', hip: 1 });
  expect(changeFaultChoice(once, { type: 'test-slew', hip: 2 })).toBe(once);
  const looked = changeFaultChoice(once, { type: 'look', look: 'card' });
  expect(changeFaultChoice(looked, { type: 'look', look: 'card' })).toBe(looked);
});

test('nothing goes on before a fault and a cure are named', () => {
  const start = startFaultChoice(emptyFaultDraft);
  expect(changeFaultChoice(start, { type: 'go-on' })).toBe(start);
  const named = changeFaultChoice(start, { type: 'name-fault', fault: 'date' });
  const cure = changeFaultChoice(named, { type: 'go-on' });
  expect(cure.step).toBe('cure');
  expect(changeFaultChoice(cure, { type: 'go-on' })).toBe(cure);
});
