import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { eveningJson } from '@/tests/support/evening';

// The command as `npm run answer-key` starts it, with the scenario on standard input.
function run(input: string, ...options: string[]) {
  const command = ['--conditions=react-server', '--import', 'tsx', 'lib/commands/answer-key.ts'];
  return spawnSync(process.execPath, [...command, ...options], {
    input,
    encoding: 'utf8',
    maxBuffer: 64_000_000,
  });
}
const evening = JSON.stringify(eveningJson);

describe('npm run answer-key', () => {
  it('prints the key as JSON with the names of the public format', () => {
    const { status, stdout, stderr } = run(evening, '-');
    expect([status, stderr]).toEqual([0, '']);
    const key = z
      .strictObject({
        instant: z.literal('2026-12-06T00:30:00.000Z'),
        nakedEyeLimit: z.number(),
        stars: z.array(
          z.strictObject({
            hip: z.number(),
            name: z.string(),
            azimuthDeg: z.number(),
            altitudeDeg: z.number(),
            magnitude: z.number(),
            usable: z.boolean(),
            reasons: z.array(z.looseObject({ code: z.string() })),
            cautions: z.array(z.looseObject({ neighbour: z.string() })),
          }),
        ),
        pairs: z.array(
          z.strictObject({
            stars: z.tuple([z.number(), z.number()]),
            separationDeg: z.number(),
            expectedErrorArcmin: z.number().nullable(),
            hitRate: z.number().min(0).max(1),
            mark: z.number().min(0).max(100),
          }),
        ),
      })
      .parse(JSON.parse(stdout));
    expect(key.stars.length).toBeGreaterThan(5000);
    expect(key.pairs[0]?.mark).toBe(100);
  }, 60_000);

  it('prints tables for people', () => {
    const { status, stdout } = run(evening, '-', '--table');
    expect(status).toBe(0);
    expect(stdout).toMatch(/Usable stars: \d+/);
    expect(stdout).toMatch(/Best pairs \(20 of \d+\)/);
    expect(stdout).toMatch(/Betelgeuse .*below 20°/);
  }, 60_000);

  it('warns of the Sun by day', () => {
    const noon = JSON.stringify({ ...eveningJson, localTime: '2026-12-05T12:00' });
    expect(run(noon, '-', '--table').stdout).toMatch(/CAUTION: the Sun is up/);
  }, 60_000);

  it.each<[string, string, string[], RegExp]>([
    [
      'a broken field',
      JSON.stringify({ ...eveningJson, timeZone: 'Nowhere' }),
      ['-'],
      /timeZone: /,
    ],
    ['no JSON', '{"place":', ['-'], /is not JSON/],
    ['a file that is not there', '', ['no-such-scenario.json'], /cannot be read/],
    [
      'a broken hidden error',
      JSON.stringify({ ...eveningJson, setup: { coneArcmin: 'much', backlash: 3 } }),
      ['-', '--run'],
      /setup\.coneArcmin: is "much", but must be a number\.\n.*setup\.backlash: is not a field/,
    ],
    ['an unknown option', evening, ['-', '--loud'], /--loud/],
  ])(
    '%s: a message, exit code 2, no stack trace',
    (_, input, options, message) => {
      const { status, stdout, stderr } = run(input, ...options);
      expect(status).toBe(2);
      expect(stdout).toBe('');
      expect(stderr).toMatch(message);
      expect(stderr).not.toMatch(/\n\s+at /);
    },
    60_000,
  );

  it('says what a perfect operator gets: all there is on a mount that gets nothing wrong', () => {
    const { status, stdout, stderr } = run(evening, '-', '--run');
    expect([status, stderr]).toEqual([0, '']);
    const { run: made } = z
      .object({
        run: z.strictObject({
          stars: z.tuple([z.number(), z.number()]),
          outcome: z.strictObject({
            kind: z.literal('agree'),
            mismatchArcmin: z.number(),
            baseTiltDeg: z.number(),
            altitudeZeroDeg: z.number(),
          }),
          hitRate: z.number(),
          rmsArcmin: z.number(),
          minutes: z.number().positive(),
          thirds: z.array(
            z.strictObject({ hip: z.number(), missArcmin: z.number(), inField: z.literal(true) }),
          ),
        }),
      })
      .parse(JSON.parse(stdout));
    // Encoders count by 15″, in each axis at each star: nothing can be truer than that.
    expect(Math.abs(made.outcome.mismatchArcmin)).toBeLessThan(1);
    expect(made.outcome.baseTiltDeg * 60).toBeLessThan(1);
    expect(Math.abs(made.outcome.altitudeZeroDeg) * 60).toBeLessThan(1);
    expect(made.rmsArcmin).toBeLessThan(1);
    expect(made.hitRate).toBe(1);
    expect(made.thirds.length).toBeGreaterThan(0);
  }, 60_000);

  it('keeps quiet about the hidden errors when it is not asked for a run', () => {
    const { status, stdout } = run(JSON.stringify({ ...eveningJson, setup: {} }), '-');
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).not.toHaveProperty('run');
  }, 60_000);

  it('says it when nobody can align', () => {
    const everywhere = { azimuthDeg: 0, altitudeDeg: 90, radiusDeg: 90 };
    const clouded = JSON.stringify({ ...eveningJson, clouds: [everywhere] });
    const { status, stdout } = run(clouded, '-', '--run');
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({ run: { stars: null, reason: 'no-usable-pair' } });
    expect(run(clouded, '-', '--run', '--table').stdout).toMatch(/nobody can align on two stars/);
  }, 60_000);

  it('takes the example with a set-up, also for people', () => {
    const { status, stdout } = run(
      '',
      'content/scenarios/autumn-evening-run.json',
      '--run',
      '--table',
    );
    expect(status).toBe(0);
    expect(stdout).toMatch(/A perfect operator on this mount\n.*Capella/);
    expect(stdout).toMatch(/in the eyepiece +\d+\.\d %/);
  }, 60_000);

  it('explains itself', () => {
    expect(run('', '--help')).toMatchObject({ status: 0, stderr: '' });
  }, 60_000);
});
