import { describe, expect, it } from 'vitest';
import { rehearsalOf } from '@/tests/support/rehearsal';
import { emptyDressRehearsalDraft } from '../../../grading/bench/dress-rehearsal/dress-rehearsal-submission';
import { handedOnBy } from '../../../grading/bench/dress-rehearsal/rehearsal-handed-on';
import { creepOver } from '../../../rehearsal/creep-over';
import type { BenchStage } from '../../../rehearsal/stages';
import { dressRehearsalTemplates, type DressRehearsalVariant } from './dress-rehearsal-variant';

const stagesOf = ({ benches }: DressRehearsalVariant): string[] => Object.keys(benches);

/** Whether the stage as it was found has a slip in it that the rest of the evening feels. */
function bites(variant: DressRehearsalVariant, stage: BenchStage): boolean {
  const found = handedOnBy(variant, emptyDressRehearsalDraft);
  switch (stage) {
    case 'finder':
      return Math.hypot(found.dot.rightArcmin, found.dot.upArcmin) > 10;
    case 'clock-and-place': {
      const slip = found.clockAndPlace;
      return slip !== null && Object.values(slip).some((value) => Math.abs(value) > 0.05);
    }
    case 'balance': {
      const { clamped, holdingTorqueNm } = found.tube;
      return [0, 30, 60, 85].some(
        (altitudeDeg) =>
          creepOver({ tube: clamped, holdingTorqueNm, altitudeDeg, minutes: 3 }) !== 0,
      );
    }
    case 'power':
      return found.power === null || found.power.resetsAtSlew !== null;
    default:
      return false;
  }
}

describe('one student’s evening', () => {
  it('is the same for the same seed, and another for another', () => {
    expect(rehearsalOf('from-the-boxes', 3)).toEqual(rehearsalOf('from-the-boxes', 3));
    const [one, other] = [rehearsalOf('from-the-boxes', 3), rehearsalOf('from-the-boxes', 15)];
    // Fifteen is of the same kit and place.
    expect(one.kitName).toBe(other.kitName);
    expect(one.benches).not.toEqual(other.benches);
    expect(one.telescope).not.toEqual(other.telescope);
  });

  it.each(dressRehearsalTemplates)(
    'has a bench for every stage, of its own kit: %s',
    (template) => {
      for (let number = 0; number < 6; number += 1) {
        const variant = rehearsalOf(template, number);
        expect(variant.template).toBe(template);
        expect(stagesOf(variant)).toHaveLength(6);
        for (const bench of Object.values(variant.benches)) {
          expect(bench.kitName).toBe(variant.kitName);
        }
        const { 'put-it-together': built, finder } = variant.benches;
        // An open tube by day is what no stage may ask for.
        if (finder.day !== null) {
          expect(built.kind).toBe('build-by-day');
        }
      }
    },
  );

  it('finds two slips of somebody else where somebody set it up, and one where it is hurried', () => {
    const seen = new Set<BenchStage>();
    for (let number = 0; number < 12; number += 1) {
      const variant = rehearsalOf('somebody-set-it-up', number);
      expect(new Set(variant.foundDone).size).toBe(2);
      for (const stage of variant.foundDone) {
        seen.add(stage);
        expect(bites(variant, stage), `${stage} of evening ${number}`).toBe(true);
      }
      const hurried = rehearsalOf('hurried-evening', number);
      expect(hurried.foundDone).toHaveLength(1);
      expect(hurried.minutesAllowed).not.toBeNull();
    }
    expect(seen.size).toBe(4);
  });

  it('has somebody meet a leg on windy evenings alone, and cold cells on cold ones', () => {
    for (const template of dressRehearsalTemplates) {
      const { events, benches } = rehearsalOf(template, 1);
      expect(events.kick !== null).toBe(template === 'windy-evening');
      expect(benches.power.night !== null).toBe(template === 'cold-evening');
    }
  });
});
