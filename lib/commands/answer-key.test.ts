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

  it('explains itself', () => {
    expect(run('', '--help')).toMatchObject({ status: 0, stderr: '' });
  }, 60_000);
});
