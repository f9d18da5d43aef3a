import { mkdtempSync, rmSync } from 'node:fs';
import { availableParallelism, loadavg, tmpdir } from 'node:os';
import path from 'node:path';
import { chromium, type Browser } from '@playwright/test';
import { chromiumArguments, requireChromium } from './browser.mjs';
import { ensureBuilt, ensureGenerated } from './build.mjs';
import { prepareData, type SeedReport } from './data-folder.mjs';
import { serve, tryPort } from './server.mjs';
import { showFailure, StepFailure } from './steps.mjs';
import { testBuildFolder } from './test-product.mjs';

/** One round of the lab, the same whenever it is measured: any two stars, a clear December evening. */
export const fixedRound = {
  seed: 'by-keyboard',
  kit: 'wren',
  site: 'school-yard',
  place: 0,
  time: '2026-12-05T19:30',
};

export type MeasuredProduct = {
  /** Such as http://127.0.0.1:41234, without a slash at the end. */
  address: string;
  browser: Browser;
  /** Holds the database that it serves. */
  dataFolder: string;
  signIns: SeedReport['signIns'];
};

/** What to think of figures that hang on the machine: they count when nothing else runs on it. */
export function loadMatters(): string {
  const [lastMinute = 0] = loadavg();
  return `Load of the machine over the last minute ${lastMinute.toFixed(1)} on ${String(availableParallelism())} cores: with other work on it the figures are worse than the product is.`;
}

/**
 * Builds the product if need be, serves it with a fresh demo class on a free port, opens a browser
 * and hands both over; cleans up afterwards. What goes wrong is told and becomes exit code 1.
 */
export async function withProduct(
  work: (product: MeasuredProduct) => Promise<void>,
): Promise<void> {
  const dataFolder = mkdtempSync(path.join(tmpdir(), 'duskbench-measure-'));
  const closing: (() => Promise<void>)[] = [];
  try {
    const executablePath = await requireChromium();
    await ensureGenerated();
    const { signIns } = await prepareData('demo', dataFolder);
    await ensureBuilt(testBuildFolder);
    const found = await tryPort('127.0.0.1', 0);
    if (!found.free) throw new StepFailure(`No free port (${found.code}).`);
    const server = await serve({
      buildFolder: testBuildFolder,
      dataFolder,
      mode: 'demo',
      host: '127.0.0.1',
      port: found.port,
    });
    closing.push(server.stop);
    const browser = await chromium.launch({ executablePath, args: chromiumArguments });
    closing.push(() => browser.close());
    await work({ address: server.address, browser, dataFolder, signIns });
  } catch (error) {
    showFailure(error);
    process.exitCode = 1;
  } finally {
    for (const close of closing.reverse()) await close();
    rmSync(dataFolder, { recursive: true, force: true });
  }
}
