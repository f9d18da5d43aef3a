import { describe, expect, it } from 'vitest';
import { loadCatalogue } from '@/lib/content/sky-catalogue';
import {
  dressRehearsalResultSchema,
  dressRehearsalVariantSchema,
} from '@/lib/data/lab-tasks/bench/stored-dress-rehearsal';
import { randomFrom } from '@/lib/variants/random';
import { dressRehearsalTemplates } from '@/lib/variants/bench/dress-rehearsal/dress-rehearsal-variant';
import { markOf, rehearsalOf, rehearsed } from '@/tests/support/rehearsal';
import { packUpSteps } from '../../../rehearsal/pack-up';
import type { DressRehearsalResult } from './dress-rehearsal-result';
import {
  dressRehearsalSubmissionSchema,
  emptyDressRehearsalDraft,
  longestRehearsalAsJson,
  workAfter,
} from './dress-rehearsal-submission';
import { gradeDressRehearsal } from './grade-dress-rehearsal';

const { benches, clutchesLocked, plannedPair, log, packedUp } = emptyDressRehearsalDraft;
const untouched = { benches, clutchesLocked, plannedPair, log, packedUp };

/** What a missed star is laid to. */
function causeOf(result: DressRehearsalResult, kind: string): string | undefined {
  const miss = result.misses.find((one) => one.kind === kind);
  const attribution = miss?.attribution;
  return attribution?.ok === true ? attribution.shares[0]?.cause : attribution?.reason;
}
const lostOn = (result: DressRehearsalResult, id: string): number => {
  const criterion = result.criteria.find((one) => one.id === id);
  return (criterion?.possible ?? NaN) - (criterion?.earned ?? NaN);
};
const notShown = ({ skills }: DressRehearsalResult): string[] =>
  skills.filter(({ shown }) => !shown).map(({ skill }) => skill);

describe('a perfect evening', () => {
  it.each(dressRehearsalTemplates)(
    'earns all of 100 and is ready for the field: %s',
    (template) => {
      for (let number = 0; number < 4; number += 1) {
        const variant = rehearsalOf(template, number);
        const submission = rehearsed(variant);
        const result = markOf(variant, submission);
        const about = JSON.stringify([number, result.criteria, result.slips, result.gates]);
        expect(result.total, about).toBeGreaterThan(99.99);
        expect(result.gates, about).toEqual([]);
        expect(result.slips, about).toEqual([]);
        expect(notShown(result), about).toEqual([]);
        expect(result.readyForTheField, about).toBe(true);
        expect(result.misses.map(({ kind }) => kind)).toEqual([
          'first-slew',
          'first-view',
          'second-slew',
          'third',
        ]);
      }
    },
  );

  it('comes through the database as it was', () => {
    const variant = rehearsalOf('somebody-set-it-up', 1);
    const submission = rehearsed(variant);
    const result = markOf(variant, submission);
    const throughJson = (value: unknown): unknown => JSON.parse(JSON.stringify(value));
    expect(dressRehearsalVariantSchema.parse(throughJson(variant))).toEqual(variant);
    expect(dressRehearsalResultSchema.parse(throughJson(result))).toEqual(throughJson(result));
    expect(dressRehearsalSubmissionSchema.parse(throughJson(submission))).toEqual(submission);
    expect(JSON.stringify(submission).length).toBeLessThan(longestRehearsalAsJson);
  });
});

describe('slips that come back at the eyepiece', () => {
  it('a clutch that was not locked: the third star is missed by it', () => {
    const variant = rehearsalOf('from-the-boxes', 0);
    // Met after the second star it spoils every go-to, and no alignment.
    const events = {
      ...variant.events,
      ifNotLocked: { afterConfirm: 2, azimuthDeg: 1, altitudeDeg: -1 },
    };
    const later = { ...variant, events };
    const result = markOf(
      later,
      rehearsed(later, () => ({ clutchesLocked: false })),
    );
    expect(causeOf(result, 'third')).toBe('clutch');
    expect(lostOn(result, 'alignment-run')).toBeGreaterThan(0);
  });

  it('a kicked tripod whose legs were not locked, and only that one', () => {
    const variant = rehearsalOf('windy-evening', 1);
    const kick = { afterConfirm: 2, tiltDeg: 1.2, risesTowardsDeg: 30, azimuthDeg: 1 };
    const windy = { ...variant, events: { ...variant.events, kick } };
    expect(markOf(windy, rehearsed(windy)).total).toBeGreaterThan(99.99);
    const result = markOf(
      windy,
      rehearsed(windy, ({ benches }) => ({
        benches: {
          ...benches,
          'put-it-together': {
            ...benches['put-it-together'],
            order: benches['put-it-together'].order.filter((step) => step !== 'lock-legs'),
          },
        },
      })),
    );
    expect(causeOf(result, 'third')).toBe('kick');
  });

  it('a tube out of balance creeps after the second star', () => {
    const variant = rehearsalOf('from-the-boxes', 2);
    const result = markOf(
      variant,
      rehearsed(variant, ({ benches }) => ({
        benches: { ...benches, balance: { actions: [], readingMm: null } },
      })),
    );
    expect(causeOf(result, 'third')).toBe('creep');
    expect(lostOn(result, 'balance')).toBeGreaterThan(0);
  });

  it('a finder that was left as it was found: the first star stands beside the eyepiece', () => {
    const variant = rehearsalOf('from-the-boxes', 1);
    const { finder } = untouched.benches;
    const result = markOf(
      variant,
      rehearsed(variant, ({ benches }) => ({ benches: { ...benches, finder } })),
    );
    const view = result.misses.find(({ kind }) => kind === 'first-view');
    expect(causeOf(result, 'first-view')).toBe('finder');
    expect(view?.attribution.ok === true && view.attribution.missArcmin).toBeGreaterThan(5);
    expect(result.slips).toContainEqual({ code: 'not-done', stage: 'finder', lostMarks: 9 });
    // The stars were centred in the eyepiece: the alignment has nothing of it.
    expect(causeOf(result, 'third')).not.toBe('finder');
    expect(notShown(result)).toContain('finder');
  });

  it('an hour too many on the clock: off at first, and the computer refuses or absorbs it', () => {
    const variant = rehearsalOf('from-the-boxes', 0);
    const result = markOf(
      variant,
      rehearsed(variant, ({ benches }) => {
        const clock = benches['clock-and-place'];
        const hour = (clock.form.hour ?? 0) === 0 ? 1 : (clock.form.hour ?? 0) - 1;
        const form = { ...clock.form, hour };
        return { benches: { ...benches, 'clock-and-place': { ...clock, form } } };
      }),
    );
    expect(causeOf(result, 'first-slew')).toBe('clock');
    const third = result.misses.find(({ kind }) => kind === 'third')?.attribution;
    expect(third).toMatchObject({ ok: false, reason: 'refused', mends: ['clock'] });
    expect(lostOn(result, 'clock-and-place')).toBeGreaterThan(0);
  });

  it('cells that cannot carry a slew: there is no alignment, and it says why', () => {
    const variant = rehearsalOf('cold-evening', 0);
    const { setup } = variant.benches.power;
    const strained = {
      ...variant,
      benches: {
        ...variant.benches,
        power: {
          ...variant.benches.power,
          // Motors that draw several times as much: Ohm's law does the rest.
          setup: { ...setup, needs: { ...setup.needs, slewingA: 8 } },
        },
      },
    };
    const result = markOf(
      strained,
      rehearsed(strained, ({ benches }) => ({
        benches: { ...benches, power: { ...benches.power, plan: 'go' as const } },
      })),
    );
    expect(result.run).toBeNull();
    expect(result.slips).toContainEqual({
      code: 'not-ready',
      reason: 'resets-at-once',
      lostMarks: 30,
    });
    expect(result.readyForTheField).toBe(false);
  });

  it('a star left at the edge of the field is traced to that centring', () => {
    const variant = rehearsalOf('from-the-boxes', 1);
    const off = { offByShareOfField: 0.6, offTowardsDeg: 90 };
    const result = markOf(variant, rehearsed(variant, undefined, { second: off }));
    expect(causeOf(result, 'third')).toBe('second-centring');
    expect(result.slips[0]).toMatchObject({ code: 'alignment-run' });
  });

  it('every share of every miss sums to it', () => {
    const variant = rehearsalOf('from-the-boxes', 3);
    const result = markOf(
      variant,
      rehearsed(variant, () => ({ clutchesLocked: false })),
    );
    for (const { attribution } of result.misses) {
      if (!attribution.ok) continue;
      const { shares, togetherArcmin, missArcmin } = attribution;
      const sum = shares.reduce((total, { arcmin }) => total + arcmin, togetherArcmin);
      expect(Math.abs(sum - missArcmin)).toBeLessThanOrEqual(1e-9 * missArcmin);
    }
  });
});

describe('gates', () => {
  it('of packing up hold the evening back, whatever the mark', () => {
    const variant = rehearsalOf('hurried-evening', 0);
    const dropped = packUpSteps.filter((step) => step !== 'hold-tube');
    const result = markOf(
      variant,
      rehearsed(variant, () => ({ packedUp: [...dropped, 'hold-tube' as const] })),
    );
    expect(result.total).toBeGreaterThan(90);
    expect(result.gates).toEqual([{ id: 'pack-up', gate: 'open-clamp' }]);
    expect(result.readyForTheField).toBe(false);
    expect(notShown(result)).toEqual(['safety']);
  });

  it('of a bench carry its stage’s name, and take its skill with them', () => {
    const variant = rehearsalOf('from-the-boxes', 0);
    const result = markOf(
      variant,
      rehearsed(variant, ({ benches }) => ({
        benches: {
          ...benches,
          // Alone with an open tube by day.
          finder: {
            ...benches.finder,
            actions: benches.finder.actions.filter((action) => action.do !== 'companion'),
          },
        },
      })),
    );
    expect(result.gates.map(({ id, gate }) => [id, gate])).toContainEqual(['finder', 'no-adult']);
    expect(notShown(result)).toEqual(expect.arrayContaining(['finder', 'safety']));
  });

  it('of a bench that was left unfinished hold the evening back too, though it has no mark', () => {
    const variant = rehearsalOf('from-the-boxes', 0);
    const result = markOf(
      variant,
      rehearsed(variant, ({ benches: work }) => ({
        benches: {
          ...work,
          // The screws loosened again at the end: the lab itself would not take this work.
          finder: {
            ...work.finder,
            actions: [
              ...work.finder.actions.filter((action) => action.do !== 'companion'),
              { do: 'lock', on: false } as const,
            ],
          },
          // The stop screw and then the clamp opened with no hand at the tube: it lies on the ground.
          balance: {
            ...work.balance,
            actions: [
              ...work.balance.actions,
              { do: 'stop', in: false } as const,
              { do: 'clamp', open: true } as const,
            ],
          },
        },
      })),
    );
    expect(result.benches.finder).toBeNull();
    expect(result.benches.balance).toBeNull();
    const failed = result.gates.map(({ id, gate }) => [id, gate]);
    expect(failed).toContainEqual(['finder', 'no-adult']);
    expect(failed).toContainEqual(['balance', 'opened-unsupported']);
    expect(result.readyForTheField).toBe(false);
  });
});

describe('work that is none', () => {
  it('earns nothing where nothing was touched, and every stage says so', () => {
    const variant = rehearsalOf('from-the-boxes', 0);
    const result = markOf(variant, untouched);
    expect(result.total).toBeLessThan(10);
    expect(result.readyForTheField).toBe(false);
    expect(result.misses).toEqual([]);
    expect(result.slips.some(({ code }) => code === 'not-ready')).toBe(true);
  });

  it('of random clicking stays far below the pass mark', () => {
    const random = randomFrom('clicks');
    for (const template of dressRehearsalTemplates) {
      const variant = rehearsalOf(template, 0);
      const { cards } = variant.benches['put-it-together'];
      for (let tried = 0; tried < 40; tried += 1) {
        const result = markOf(variant, {
          ...untouched,
          benches: {
            ...untouched.benches,
            'put-it-together': {
              order: random.shuffle(cards),
              hazards: { unfolding: [], lifting: [], finishing: [] },
            },
          },
          packedUp: random.shuffle(packUpSteps),
        });
        expect(result.total).toBeLessThan(40);
        expect(result.readyForTheField).toBe(false);
      }
    }
  });

  it('refuses a log whose readings its own moves do not lead to', () => {
    const variant = rehearsalOf('from-the-boxes', 0);
    const submission = rehearsed(variant);
    const log = submission.log.map((action) =>
      action.do === 'this-is-the-star'
        ? { ...action, readings: { ...action.readings, altitudeDeg: 12 } }
        : action,
    );
    expect(
      gradeDressRehearsal({
        variant,
        submission: { ...submission, log },
        catalogue: loadCatalogue(),
      }),
    ).toMatchObject({ ok: false, refusal: { code: 'does-not-add-up' } });
  });

  it('refuses a run that was steered on another set-up than was handed in', () => {
    const variant = rehearsalOf('from-the-boxes', 0);
    const submission = rehearsed(variant);
    const level = untouched.benches.level;
    expect(
      gradeDressRehearsal({
        variant,
        submission: {
          ...submission,
          benches: { ...submission.benches, power: untouched.benches.power, level },
        },
        catalogue: loadCatalogue(),
      }),
    ).toMatchObject({ ok: false, refusal: { code: 'does-not-add-up' } });
  });
});

describe('going back', () => {
  const underWay = {
    ...emptyDressRehearsalDraft,
    log: [{ at: 0, do: 'set-start' as const, azimuthDeg: 0, altitudeDeg: 0 }],
  };

  it('to a bench makes an alignment under way begin again, and says so', () => {
    const packedUp = [...packUpSteps];
    const benches = { ...underWay.benches, level: { ...underWay.benches.level, actions: [] } };
    expect(workAfter(underWay, 'level', { benches })).toMatchObject({
      draft: { log: [] },
      runBeginsAgain: true,
    });
    expect(workAfter(underWay, 'pack-up', { packedUp })).toMatchObject({
      draft: { log: underWay.log, packedUp },
      runBeginsAgain: false,
    });
    const unbegun = { ...underWay, log: [] };
    expect(workAfter(unbegun, 'level', { benches }).runBeginsAgain).toBe(false);
  });
});
