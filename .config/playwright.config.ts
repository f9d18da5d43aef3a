import path from 'node:path';
import { defineConfig } from '@playwright/test';
import { chromiumArguments, findChromium } from '../lib/commands/browser.mjs';

const executablePath = findChromium();
if (executablePath === null) {
  throw new Error('No Chromium found: install it, or set CHROMIUM to the path of the program.');
}

const output = path.resolve(import.meta.dirname, '../tests/e2e/.output');

export default defineConfig({
  testDir: '../tests/e2e',
  outputDir: path.join(output, 'traces'),
  globalSetup: '../tests/support/prepare-product.ts',
  forbidOnly: true,
  // A test that passes only at the second try has found something.
  retries: 0,
  workers: 2,
  timeout: 120_000,
  // Software rendering on two cores that the other worker shares.
  expect: { timeout: 20_000 },
  reporter: [['list'], ['json', { outputFile: path.join(output, 'browser.json') }]],
  use: {
    browserName: 'chromium',
    launchOptions: { executablePath, args: chromiumArguments },
    viewport: { width: 1280, height: 720 },
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    reducedMotion: 'reduce',
    screenshot: 'only-on-failure',
    // A trace halves the frame rate of the sky.
    trace: 'off',
  },
});
