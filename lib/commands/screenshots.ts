/**
 * `npm run screenshots`: the README's pictures, from the running product with its demo class.
 * `npm run screenshots -- --all FOLDER`: every page that links lead to, once each, for a visitor,
 * the demo teacher and the demo student, at two widths in three themes.
 */
import { mkdirSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import type { BrowserContext, Page } from '@playwright/test';
import { routes } from '../routes';
import { withProduct, type MeasuredProduct } from './measured-product';
import { signIn } from './sign-in';
import { root, StepFailure } from './steps.mjs';

const themes = ['light', 'dark', 'after-dark'];
const sizes = [
  { width: 1280, height: 800 },
  { width: 390, height: 844 },
];

/** Waits until nothing is on its way any more and the fonts are there. */
async function open(page: Page, address: string): Promise<void> {
  const response = await page.goto(address, { waitUntil: 'networkidle' });
  if (response?.ok() !== true) {
    throw new StepFailure(`${address} answered ${String(response?.status())}.`);
  }
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
}

/** A page's kind: its address with what differs from one class or student to the next left out. */
const kindOf = (pathname: string): string =>
  pathname.replaceAll(/[0-9a-f]{8}-[0-9a-f-]{27}/g, 'id');

/** Follows links from a start and returns one address of every kind of page met. */
async function findPages(page: Page, address: string, start: string): Promise<Map<string, string>> {
  const found = new Map<string, string>();
  const waiting = [start];
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    if (found.has(kindOf(next))) continue;
    found.set(kindOf(next), next);
    await open(page, `${address}${next}`);
    const links = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLAnchorElement>('a[href^="/"]:not([download])')].map(
        (link) => new URL(link.href).pathname,
      ),
    );
    waiting.push(...links.filter((link) => !/\.[a-z]+$/.test(link)));
  }
  return found;
}

async function takeAll(product: MeasuredProduct, folder: string): Promise<void> {
  const { address, browser, signIns } = product;
  const people = [
    { name: 'visitor', start: routes.home(), card: null },
    ...signIns.map((card) => {
      const teacher = card.where === routes.signIn.teacher();
      return {
        name: teacher ? 'teacher' : 'student',
        start: teacher ? routes.teacher.desk() : routes.student.myWork(),
        card,
      };
    }),
  ];
  const taken = new Set<string>();
  for (const { name, start, card } of people) {
    const context = await browser.newContext({ reducedMotion: 'reduce' });
    const page = await context.newPage();
    if (card !== null) await signIn(page, address, card);
    const pages = await findPages(page, address, start);
    for (const [kind, pathname] of pages) {
      if (taken.has(kind)) continue;
      taken.add(kind);
      const file = `${name}${kind === '/' ? '-front' : kind.replaceAll('/', '-')}`;
      await takeEveryLook(context, page, `${address}${pathname}`, path.join(folder, file));
      console.log(`  ${kind}`);
    }
    await context.close();
  }
}

async function takeEveryLook(
  context: BrowserContext,
  page: Page,
  address: string,
  file: string,
): Promise<void> {
  // The product's own cookie holds for every page; one made from a page's address would stand beside it.
  const everyPage = new URL('/', address).href;
  for (const theme of themes) {
    await context.addCookies([{ name: 'theme', value: theme, url: everyPage }]);
    for (const size of sizes) {
      await page.setViewportSize(size);
      await open(page, address);
      await page.screenshot({ path: `${file}-${theme}-${size.width}.png`, fullPage: true });
    }
  }
}

async function takeForReadme({ address, browser, signIns }: MeasuredProduct): Promise<void> {
  const folder = path.join(root, 'content/screenshots');
  mkdirSync(folder, { recursive: true });
  const teacher = signIns.find(({ where }) => where === routes.signIn.teacher());
  if (teacher === undefined) throw new StepFailure('The demo class has no teacher.');
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  const take = async (name: string) => {
    await page.screenshot({ path: path.join(folder, `${name}.png`) });
    console.log(`  content/screenshots/${name}.png`);
  };

  await open(
    page,
    `${address}${routes.labs.pickThePair({ seed: 'readme', time: '2026-12-05T18:40' })}`,
  );
  await take('lab');
  await open(page, `${address}${routes.labs.one('level', { seed: 'readme' })}`);
  await take('bench');
  await open(page, `${address}${routes.lessons.one('level-enough')}`);
  await page.locator('main figure').first().scrollIntoViewIfNeeded();
  await page.locator('main figure [data-live="true"]').first().waitFor();
  await take('lesson');
  await signIn(page, address, teacher);
  await open(page, `${address}${routes.teacher.desk()}`);
  const classLink = page.locator('main a[href^="/desk/classes/"]:not([href$="/new"])').first();
  const gradebook = await classLink.getAttribute('href');
  if (gradebook === null) throw new StepFailure('The desk lists no class.');
  await open(page, `${address}${gradebook}`);
  await take('gradebook');
  const classId = gradebook.split('/').at(-1) ?? '';
  await open(page, `${address}${routes.teacher.classSkills(classId)}`);
  await take('skills');
  await open(page, `${address}${routes.teacher.classStatistics(classId)}`);
  await take('statistics');
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, `${address}${routes.teacher.classSignOff(classId)}`);
  await take('sign-off');
  await page.setViewportSize({ width: 1280, height: 800 });
  await open(page, `${address}${routes.teacher.classNight(classId, { date: '2026-12-05' })}`);
  await take('night');
  const pages = await findPages(page, address, gradebook);
  const attempt = pages.get(kindOf(routes.teacher.attempt('00000000-0000-0000-0000-000000000000')));
  if (attempt === undefined) throw new StepFailure('No link leads to a finished attempt.');
  await open(page, `${address}${attempt}`);
  await page
    .getByRole('heading', { level: 2 })
    .first()
    .evaluate((heading) => {
      heading.scrollIntoView({ block: 'start' });
    });
  await take('attempt');
}

const { values, positionals } = parseArgs({
  options: { all: { type: 'boolean' } },
  allowPositionals: true,
});
await withProduct(async (product) => {
  if (values.all !== true) {
    await takeForReadme(product);
    return;
  }
  const folder = positionals[0];
  if (folder === undefined) throw new StepFailure('Name the folder for the pictures after --all.');
  mkdirSync(folder, { recursive: true });
  await takeAll(product, path.resolve(folder));
});
