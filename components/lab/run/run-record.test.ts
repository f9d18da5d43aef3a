import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { act, startRun, viewAt } from '@/lib/alignment/alignment-run';
import { bestStars } from '@/lib/alignment/operator-stars';
import {
  longestActionAsJson,
  longestLog,
  longestLogAsJson,
  runActionSchema,
  type RunAction,
} from '@/lib/alignment/run-log';
import { runDraftSchema } from '@/lib/grading/run-submission';
import { eveningRun } from '@/tests/support/evening-run';
import { RunRecord } from './run-record';

const input = eveningRun({ mayPause: true });
const stars = bestStars(input);
if (stars === null) throw new Error('no pair');

/** As long as JSON writes a number of this sign: 17 digits and an exponent. */
const long = -1.2345678901234567e-100;
const longest: RunAction[] = [
  { at: 7_200_000, do: 'set-start', azimuthDeg: -long, altitudeDeg: long },
  { at: 7_200_000, do: 'go-to', hip: Number.MAX_SAFE_INTEGER },
  { at: 7_200_000, do: 'rockers', azimuth: -5, altitude: -5 },
  { at: 7_200_000, do: 'step', azimuthArcmin: long, altitudeArcmin: long },
  { at: 7_200_000, do: 'stop' },
  { at: 7_200_000, do: 'focus', position: long },
  { at: 7_200_000, do: 'this-is-the-star', readings: { azimuthDeg: -long, altitudeDeg: long } },
  { at: 7_200_000, do: 'another-star' },
  { at: 7_200_000, do: 'start-again' },
  { at: 7_200_000, do: 'paused', waitedMs: 86_400_000 },
  { at: 7_200_000, do: 'judge', trust: false },
];

describe('how long a log can be', () => {
  test.each(longest)('as JSON, $do at its longest is within the measure', (action) => {
    expect(runActionSchema.safeParse(action).success).toBe(true);
    expect(JSON.stringify(action).length).toBeLessThanOrEqual(longestActionAsJson);
  });

  test('every kind of action is weighed', () => {
    const kinds = runActionSchema.options.map((option) => option.shape.do.value);
    expect(new Set(longest.map(({ do: what }) => what))).toEqual(new Set(kinds));
  });
});

/** What a page might ask for: mostly what there is, at times what no log may hold. */
const asked: fc.Arbitrary<RunAction> = fc.oneof(
  fc.record({
    at: fc.integer({ min: 0, max: 7_400_000 }),
    do: fc.constant('step' as const),
    azimuthArcmin: fc.double({ min: -20_000, max: 20_000, noNaN: true }),
    altitudeArcmin: fc.double({ noNaN: true, noDefaultInfinity: false }),
  }),
  fc.record({
    at: fc.oneof(fc.integer({ min: 0, max: 7_200_000 }), fc.double({ min: 0, max: 100 })),
    do: fc.constant('rockers' as const),
    azimuth: fc.integer({ min: -6, max: 6 }),
    altitude: fc.integer({ min: -6, max: 6 }),
  }),
  fc.record({
    at: fc.integer({ min: 0, max: 7_200_000 }),
    do: fc.constant('focus' as const),
    position: fc.double({ min: -12, max: 12 }),
  }),
  fc.record({
    at: fc.integer({ min: 0, max: 7_200_000 }),
    do: fc.constant('paused' as const),
    waitedMs: fc.integer({ min: -1, max: 100_000_000 }),
  }),
  fc.record({
    at: fc.integer({ min: 0, max: 7_200_000 }),
    do: fc.constant('go-to' as const),
    hip: fc.constantFrom(...stars, 0),
  }),
);
const start: RunAction = { at: 0, do: 'set-start', azimuthDeg: 0, altitudeDeg: 0 };

describe('what the record takes', () => {
  test('the server’s reader takes too, whatever is asked for', () => {
    let taken = 0;
    fc.assert(
      fc.property(fc.array(asked, { maxLength: 12 }), (actions) => {
        const record = new RunRecord(input, [start]);
        for (const action of actions) if (record.take(action) === null) taken += 1;
        const read = runDraftSchema.safeParse(JSON.parse(JSON.stringify({ log: record.log })));
        expect(read.success).toBe(true);
      }),
    );
    expect(taken).toBeGreaterThan(50);
  });

  test('comes to no more than can be kept, and then leaves room for the judgement', () => {
    let run = startRun(input);
    const log: RunAction[] = [];
    const done = (action: RunAction): void => {
      run = act(run, action);
      log.push(action);
    };
    done(start);
    for (const hip of stars) {
      done({ at: run.lastMs, do: 'go-to', hip });
      const at = run.arrivesAtMs ?? NaN;
      done({ at, do: 'this-is-the-star', readings: viewAt(run, at).readings });
    }
    expect(run.confirms).toHaveLength(2);
    const record = new RunRecord(input, log);
    const more = { at: run.lastMs, do: 'focus', position: 1.2345678901234567e-5 } as const;
    let refusal: ReturnType<RunRecord['take']> = null;
    for (let i = 0; refusal === null && i <= longestLog; i += 1) refusal = record.take(more);
    expect(refusal).toBe('too-many');
    expect(record.full).toBe(true);
    expect(record.take({ at: run.lastMs, do: 'judge', trust: true })).toBeNull();
    expect(record.log.length).toBeLessThanOrEqual(longestLog);
    const draft = { log: record.log };
    expect(runDraftSchema.safeParse(draft).success).toBe(true);
    expect(JSON.stringify(draft).length).toBeLessThanOrEqual(longestLogAsJson);
  });

  test('can be forgotten, and the run begun anew', () => {
    const record = new RunRecord(input, [start]);
    record.forget();
    expect(record.log).toEqual([]);
    expect(record.run.progress.stage).toBe('start-position');
    expect(record.take(start)).toBeNull();
  });
});
