/**
 * `npm run page-weight`: the compressed script that a first visit loads, page by page, measured in a
 * browser with an empty cache against the production build. Exit code 1 when a page is over its bar.
 */
import type { Browser } from '@playwright/test';
import { course } from '../course/lessons';
import { routes } from '../routes';
import { benchTemplates } from '../variants/bench/bench-labs';
import { fixedRound, withProduct } from './measured-product';

type MeasuredPage = {
  name: string;
  path: string;
  barKb: number | null;
  /** A button that fetches more: pressed once the rest is there, and what it fetches counts too. */
  press?: string;
};

/** Kilobytes (1,000 bytes) as they travel, headers included. */
const pages: readonly MeasuredPage[] = [
  { name: 'front page', path: routes.home(), barKb: null },
  { name: 'lessons', path: routes.lessons.all(), barKb: null },
  ...course.map(({ slug }) => ({
    name: `lesson, ${slug}`,
    path: routes.lessons.one(slug),
    barKb: 140,
  })),
  { name: 'questions', path: routes.lessons.practise('level-enough', { round: 'a' }), barKb: null },
  { name: 'lab, pick the pair', path: routes.labs.pickThePair(fixedRound), barKb: 400 },
  { name: 'lab, alignment run', path: routes.labs.one('alignment-run', fixedRound), barKb: 400 },
  {
    name: 'the same with the sky open',
    path: routes.labs.one('alignment-run', fixedRound),
    barKb: 400,
    press: 'Look up at the sky',
  },
  {
    name: 'lab, what went wrong',
    path: routes.labs.one('what-went-wrong', fixedRound),
    barKb: 400,
  },
  ...Object.keys(benchTemplates).map((lab) => ({
    name: `lab, ${lab}`,
    path: routes.labs.one(lab, fixedRound),
    barKb: 400,
  })),
  { name: 'sign-in', path: routes.signIn.student(), barKb: null },
];

/**
 * Loads the page once and adds up its scripts, those that it fetches by itself afterwards included
 * (the 3D scene); not what it would fetch when scrolled. What Next fetches ahead for other pages is
 * held back: it belongs to them. `gzip` is what a browser takes that is not offered Brotli, as over
 * plain http from another computer, where no browser asks for it.
 */
async function scriptBytes(
  browser: Browser,
  address: string,
  press: string | undefined,
): Promise<{ brotli: number; gzip: number }> {
  const context = await browser.newContext({ viewport: { width: 1280, height: 720 } });
  const page = await context.newPage();
  await page.route('**/*', (route) =>
    route.request().headers()['next-router-prefetch'] === undefined
      ? route.continue()
      : route.abort(),
  );
  const session = await context.newCDPSession(page);
  const scripts = new Map<string, string>();
  let brotli = 0;
  session.on('Network.responseReceived', ({ requestId, type, response }) => {
    if (type === 'Script') scripts.set(requestId, response.url);
  });
  session.on('Network.loadingFinished', ({ requestId, encodedDataLength }) => {
    if (scripts.has(requestId)) brotli += encodedDataLength;
  });
  await session.send('Network.enable');
  const response = await page.goto(address, { waitUntil: 'networkidle' });
  if (response?.ok() !== true) throw new Error(`${address} answered ${String(response?.status())}`);
  if (press !== undefined) {
    await page.getByRole('button', { name: press, exact: true }).click();
    await page.locator('canvas').first().waitFor();
    await page.waitForLoadState('networkidle');
  }
  let gzip = 0;
  for (const script of scripts.values()) {
    const head = await context.request.head(script, { headers: { 'accept-encoding': 'gzip' } });
    gzip += Number(head.headers()['content-length']);
  }
  await context.close();
  return { brotli, gzip };
}

await withProduct(async ({ address, browser }) => {
  console.log('\nFirst-load script in kB: Brotli, gzip, page (bar, for Brotli)');
  for (const { name, path, barKb, press } of pages) {
    const { brotli, gzip } = await scriptBytes(browser, `${address}${path}`, press);
    const over = barKb !== null && brotli / 1000 > barKb;
    if (over) process.exitCode = 1;
    const figures = [brotli, gzip].map((bytes) => (bytes / 1000).toFixed(1).padStart(8)).join('');
    console.log(
      `${figures}  ${name}${barKb === null ? '' : `  (${barKb}${over ? ', OVER' : ''})`}`,
    );
  }
});
