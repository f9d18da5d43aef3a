import {
  test as base,
  expect,
  type BrowserContext,
  type ConsoleMessage,
  type Page,
} from '@playwright/test';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { z } from 'zod';
import { serve, tryPort } from '../../lib/commands/server.mjs';
import { testBuildFolder } from '../../lib/commands/test-product.mjs';

export const seededFolderVariable = 'DUSKBENCH_TEST_SEED';
export const signInsVariable = 'DUSKBENCH_TEST_SIGN_INS';

const signInsSchema = z.array(
  z.object({ label: z.string(), where: z.string(), fields: z.record(z.string(), z.string()) }),
);

type SignIn = z.infer<typeof signInsSchema>[number];
export type Product = {
  /** Such as http://127.0.0.1:41234, without a slash at the end. */
  address: string;
  demoSignIns: readonly SignIn[];
  /** Holds the database of this server alone. */
  dataFolder: string;
};

/** Starts the production server on a copy of the seeded data and a free port, one a worker. */
async function startProduct(): Promise<Product & { stop: () => Promise<void> }> {
  const seeded = process.env[seededFolderVariable];
  if (seeded === undefined) throw new Error('The seeded data folder was not prepared.');
  const dataFolder = mkdtempSync(path.join(tmpdir(), 'duskbench-test-'));
  cpSync(seeded, dataFolder, { recursive: true });
  const found = await tryPort('127.0.0.1', 0);
  if (!found.free) throw new Error(`No free port: ${found.code}`);
  const server = await serve({
    buildFolder: testBuildFolder,
    dataFolder,
    mode: 'demo',
    host: '127.0.0.1',
    port: found.port,
  });
  return {
    address: server.address,
    demoSignIns: signInsSchema.parse(JSON.parse(process.env[signInsVariable] ?? '[]')),
    dataFolder,
    stop: async () => {
      await server.stop();
      rmSync(dataFolder, { recursive: true, force: true });
    },
  };
}

/** Chromium's own remarks about drawing in software, and one of fiber 9 about three; nothing of ours. */
const expectedRemarks = [
  /GL Driver Message/,
  /Automatic fallback to software WebGL/,
  /THREE\.Clock: This module has been deprecated/,
];

/** What a page should not have said: errors and warnings on its console, and uncaught exceptions. */
export class Complaints {
  readonly #said: string[] = [];
  #expected: RegExp[] = [];

  listenTo(page: Page): void {
    page.on('pageerror', (error) => this.#said.push(`uncaught: ${error.message}`));
    page.on('console', (message: ConsoleMessage) => {
      if (message.type() !== 'error' && message.type() !== 'warning') return;
      const text = `${message.type()} at ${page.url()}: ${message.text()}`;
      if (!expectedRemarks.some((remark) => remark.test(text))) this.#said.push(text);
    });
  }

  /** For a test that provokes an error on purpose. */
  expect(pattern: RegExp): void {
    this.#expected.push(pattern);
  }

  get unexpected(): readonly string[] {
    return this.#said.filter((text) => !this.#expected.some((pattern) => pattern.test(text)));
  }
}

type TestFixtures = {
  complaints: Complaints;
  /** A page in a browser of its own, such as another person's, whose console is listened to as well. */
  openBrowser: () => Promise<Page>;
};
type WorkerFixtures = { product: Product };

/** Playwright's test, with the running product, and failing on anything a console complains of. */
export const test = base.extend<TestFixtures, WorkerFixtures>({
  product: [
    async ({}, use) => {
      const { stop, ...product } = await startProduct();
      await use(product);
      await stop();
    },
    { scope: 'worker', timeout: 60_000 },
  ],
  baseURL: async ({ product }, use) => {
    await use(product.address);
  },
  // Says where a test hangs, long before its whole time is up.
  actionTimeout: 20_000,
  complaints: [
    async ({ context }, use) => {
      const complaints = new Complaints();
      context.on('page', (page) => {
        complaints.listenTo(page);
      });
      await use(complaints);
      expect(complaints.unexpected, 'errors and warnings on the console').toEqual([]);
    },
    { auto: true },
  ],
  openBrowser: async ({ browser, complaints, baseURL }, use) => {
    const opened: BrowserContext[] = [];
    await use(async () => {
      const context = await browser.newContext(baseURL === undefined ? {} : { baseURL });
      opened.push(context);
      context.on('page', (page) => {
        complaints.listenTo(page);
      });
      return context.newPage();
    });
    for (const context of opened) await context.close();
  },
});

export { expect };
