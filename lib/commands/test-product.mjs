import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { requireChromium } from './browser.mjs';
import { ensureBuilt, ensureGenerated } from './build.mjs';
import { failingTests } from './failing-tests.mjs';
import { ensureInstalled } from './install.mjs';
import { parseJson, root, runPackage, showFailure, step, StepFailure, stopAll } from './steps.mjs';

/** @typedef {{ passed: number, failed: number }} Count */

const outputFolder = path.join(root, 'tests/e2e/.output');
const unitReport = path.join(outputFolder, 'unit.json');
const browserReport = path.join(outputFolder, 'browser.json');

/** The folder that tests build into, so that a product that is being served is left alone. */
export const testBuildFolder = '.next-test';

/** @typedef {Count & { skipped: number }} Report */

/**
 * What the JSON says, null when the tests never got as far as writing it.
 *
 * @param {string} file
 */
const readJson = (file) => (existsSync(file) ? parseJson(readFileSync(file, 'utf8')) : null);

/** @returns {Report} */
function unitResults() {
  const report =
    /** @type {{ numPassedTests: number, numFailedTests: number, numPendingTests: number, numTodoTests: number } | null} */ (
      readJson(unitReport)
    );
  if (report === null) return { passed: 0, failed: 0, skipped: 0 };
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}

/** @returns {Report} */
function browserResults() {
  const report =
    /** @type {{ stats: { expected: number, unexpected: number, flaky: number, skipped: number } } | null} */ (
      readJson(browserReport)
    );
  if (report === null) return { passed: 0, failed: 0, skipped: 0 };
  const { expected, unexpected, flaky, skipped } = report.stats;
  return { passed: expected, failed: unexpected + flaky, skipped };
}

/**
 * Nothing may be left out, and no run may be empty.
 *
 * @param {Report} results
 */
function refuseGaps({ passed, skipped }) {
  if (skipped > 0) throw new StepFailure(`${skipped} tests were skipped.`);
  if (passed === 0) throw new StepFailure('No test was run.');
}

/** @type {{ title: string, quiet?: boolean, work: () => Promise<unknown> }[]} */
const steps = [
  { title: 'Packages', quiet: true, work: ensureInstalled },
  { title: 'Database client', quiet: true, work: ensureGenerated },
  {
    title: 'Format',
    work: () =>
      runPackage('prettier/bin/prettier.cjs', ['--check', '--log-level=warn', ...formatted]),
  },
  {
    title: 'Types',
    work: async () => {
      await runPackage('next/dist/bin/next', ['typegen']);
      await runPackage('typescript/bin/tsc', ['--noEmit']);
    },
  },
  {
    title: 'Lint',
    work: () =>
      runPackage('eslint/bin/eslint.js', [
        ...['--config', '.config/eslint.config.mjs', '--max-warnings=0'],
        ...['--cache', '--cache-location', 'node_modules/.cache/eslint/', '.'],
      ]),
  },
  {
    title: 'Direction of dependency',
    work: () =>
      runPackage('dependency-cruiser/bin/dependency-cruise.mjs', [
        ...['--config', '.config/dependency-cruiser.mjs'],
        ...['app', 'components', 'lib', 'prisma', 'proxy.ts', 'tests'],
      ]),
  },
  {
    title: 'Unused code',
    work: () => runPackage('knip/bin/knip.js', ['--config', '.config/knip.json', '--no-progress']),
  },
  {
    title: 'Unit, reference and server tests',
    quiet: true,
    work: async () => {
      await runPackage(
        'vitest/vitest.mjs',
        [
          ...['run', '--config', '.config/vitest.config.ts', '--reporter=default'],
          ...['--reporter=json', `--outputFile.json=${unitReport}`],
        ],
        { show: true },
      );
      refuseGaps(unitResults());
    },
  },
  { title: 'Browser', quiet: true, work: requireChromium },
  { title: 'Production build', quiet: true, work: () => ensureBuilt(testBuildFolder) },
  {
    title: 'Browser tests',
    quiet: true,
    work: async () => {
      await runPackage(
        '@playwright/test/cli.js',
        ['test', '--config', '.config/playwright.config.ts'],
        { show: true },
      );
      refuseGaps(browserResults());
    },
  },
];

/** What Prettier looks after: all that is written here by hand. */
const formatted = [
  '{app,components,lib,prisma,tests,.config}/**/*.{ts,tsx,mjs,css,json}',
  '*.{ts,json}',
  '!lib/data/generated/**',
  '!package-lock.json',
  '!tests/**/data/**',
];

/**
 * `npm test`: every check there is, in order, until one fails.
 *
 * @returns {Promise<number>} the exit code
 */
export async function testProduct() {
  process.on('SIGINT', stopAll);
  process.on('SIGTERM', stopAll);
  rmSync(outputFolder, { recursive: true, force: true });
  mkdirSync(outputFolder, { recursive: true });
  /** @type {{ title: string, seconds: number, ok: boolean }[]} */
  const done = [];
  let ok = true;
  for (const { title, quiet = false, work } of steps) {
    const startedAt = performance.now();
    try {
      await step(title, work, { quiet });
    } catch (error) {
      showFailure(error);
      ok = false;
    }
    done.push({ title, seconds: (performance.now() - startedAt) / 1000, ok });
    if (!ok) break;
  }
  console.log('');
  for (const { title, seconds, ok: passed } of done) {
    console.log(`${passed ? 'ok    ' : 'FAILED'}  ${seconds.toFixed(1).padStart(6)} s  ${title}`);
  }
  for (const { title } of steps.slice(done.length)) console.log(`not run           ${title}`);
  // Last, where a log that is cut short still has it.
  const failing = failingTests({ unit: unitReport, browser: browserReport });
  if (failing.length > 0) console.log('');
  for (const { file, title, said } of failing)
    console.log(`FAILED  ${file}: ${title}\n        ${said}`);
  const counts = [unitResults(), browserResults()];
  const passed = counts.reduce((sum, count) => sum + count.passed, 0);
  const failed = counts.reduce((sum, count) => sum + count.failed, 0);
  // A step that is no test counts as one failure, so that the line never reads well when it is not.
  console.log(`\n${passed} passed, ${ok ? failed : Math.max(failed, 1)} failed`);
  return ok ? 0 : 1;
}
