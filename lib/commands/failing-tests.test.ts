import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { failingBrowserTests, failingUnitTests } from './failing-tests.mjs';
import { root } from './steps.mjs';

describe('what failed', () => {
  test('of the unit tests is named with its file and the first thing it said', () => {
    const report = {
      testResults: [
        {
          name: path.join(root, 'lib/units/angle.test.ts'),
          status: 'failed',
          assertionResults: [
            { fullName: 'angles wrap', status: 'passed', failureMessages: [] },
            {
              fullName: 'angles add',
              status: 'failed',
              failureMessages: [
                '\n\u001b[31mAssertionError\u001b[39m: expected 1 to be 2\n    at x',
              ],
            },
          ],
        },
        {
          name: path.join(root, 'lib/units/broken.test.ts'),
          status: 'failed',
          message: 'Cannot find module',
          assertionResults: [],
        },
      ],
    };
    expect(failingUnitTests(report)).toEqual([
      {
        file: path.normalize('lib/units/angle.test.ts'),
        title: 'angles add',
        said: 'AssertionError: expected 1 to be 2',
      },
      {
        file: path.normalize('lib/units/broken.test.ts'),
        title: 'could not be run',
        said: 'Cannot find module',
      },
    ]);
  });

  test('of the browser tests is named however deep it stands, one that passed in the end too', () => {
    const spec = (title: string, ...statuses: string[]) => ({
      title,
      ok: false,
      file: 'a.spec.ts',
      tests: [{ results: statuses.map((status) => ({ status, error: { message: 'too late' } })) }],
    });
    const report = {
      suites: [
        { specs: [spec('passes', 'passed')], suites: [{ specs: [spec('hangs', 'timedOut')] }] },
        { specs: [spec('wavers', 'failed', 'passed')] },
      ],
    };
    expect(failingBrowserTests(report).map(({ title }) => title)).toEqual(['hangs', 'wavers']);
    expect(failingBrowserTests(report)[0]).toMatchObject({ file: 'a.spec.ts', said: 'too late' });
  });
});
