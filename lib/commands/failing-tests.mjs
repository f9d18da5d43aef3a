import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { stripVTControlCharacters } from 'node:util';
import { parseJson, root } from './steps.mjs';

/**
 * One test that failed, in a line or two: where it stands, what it is called, what it said.
 *
 * @typedef {{ file: string, title: string, said: string }} Failing
 */

/** @typedef {{ fullName: string, status: string, failureMessages?: string[] }} UnitTest */
/** @typedef {{ name: string, status: string, message?: string, assertionResults: UnitTest[] }} UnitFile */
/** @typedef {{ status: string, error?: { message?: string } }} BrowserTry */
/** @typedef {{ title: string, ok: boolean, file: string, tests: { results: BrowserTry[] }[] }} BrowserSpec */
/** @typedef {{ suites?: BrowserSuite[], specs?: BrowserSpec[] }} BrowserSuite */

/** The first line that says something. @param {string | undefined} message */
const firstLine = (message = '') =>
  stripVTControlCharacters(message)
    .split('\n')
    .find((line) => line.trim() !== '')
    ?.trim() ?? '';

/**
 * Out of the report of the unit tests; a file that could not be loaded counts as one.
 *
 * @param {{ testResults: UnitFile[] }} report
 * @returns {Failing[]}
 */
export const failingUnitTests = ({ testResults }) =>
  testResults.flatMap(({ name, status, message, assertionResults }) => {
    const file = path.relative(root, name);
    const failed = assertionResults.filter((test) => test.status === 'failed');
    if (failed.length === 0 && status === 'failed')
      return [{ file, title: 'could not be run', said: firstLine(message) }];
    return failed.map(({ fullName, failureMessages }) => ({
      file,
      title: fullName,
      said: firstLine(failureMessages?.[0]),
    }));
  });

/**
 * Out of the report of the browser tests; one that passed at a second try is among them.
 *
 * @param {BrowserSuite} suite
 * @returns {Failing[]}
 */
export const failingBrowserTests = ({ suites = [], specs = [] }) => [
  ...specs.flatMap(({ file, title, tests }) => {
    const failed = tests
      .flatMap(({ results }) => results)
      .find(({ status }) => status !== 'passed' && status !== 'skipped');
    return failed === undefined ? [] : [{ file, title, said: firstLine(failed.error?.message) }];
  }),
  ...suites.flatMap(failingBrowserTests),
];

/**
 * What the reports of a run name; nothing where there is no report.
 *
 * @param {{ unit: string, browser: string }} reports files
 * @returns {Failing[]}
 */
export function failingTests({ unit, browser }) {
  /** @param {string} file */
  const read = (file) => (existsSync(file) ? parseJson(readFileSync(file, 'utf8')) : null);
  const units = /** @type {{ testResults: UnitFile[] } | null} */ (read(unit));
  const browsers = /** @type {BrowserSuite | null} */ (read(browser));
  return [
    ...(units === null ? [] : failingUnitTests(units)),
    ...(browsers === null ? [] : failingBrowserTests(browsers)),
  ];
}
