/**
 * `npm run gradebook-time`: how long the gradebook of a class of 200 with 40 assignments takes to read,
 * to open in a browser and to scroll in. Exit code 1 when over the bar.
 */
import type { Page } from '@playwright/test';
import { z } from 'zod';
import { routes } from '../routes';
import { fillLargeClass, largeClass } from './large-class';
import { loadMatters, withProduct } from './measured-product';
import { signIn } from './sign-in';

const barMs = 1000;
const rounds = 5;
const scrollMs = 4000;
/** A frame that comes later than this was dropped before it: two at 60 a second, and a little. */
const droppedAfterMs = 36;

const timesSchema = z.object({ stands: z.number(), whole: z.number() });

const middle = (figures: readonly number[]): number =>
  [...figures].sort((a, b) => a - b)[Math.floor(figures.length / 2)] ?? NaN;

async function readTimes(teacherId: string): Promise<number[]> {
  const { getGradebook } = await import('../data/gradebook');
  const viewer = { kind: 'teacher', teacherId, displayName: 'Measured' } as const;
  const times: number[] = [];
  for (let round = 0; round < rounds; round += 1) {
    const startedAt = performance.now();
    const gradebook = await getGradebook(viewer, largeClass.id);
    times.push(performance.now() - startedAt);
    if (gradebook?.cells.length !== largeClass.students * largeClass.assignments)
      throw new Error('the gradebook does not have a cell for each');
  }
  return times;
}

/** Runs in the page before anything else: notes the frames in which the table stands and is whole. */
function noteTable(rowsInAll: number): void {
  const seen: { stands?: number; whole?: number } = {};
  Object.assign(window, { tableSeen: seen });
  const look = () => {
    const rows = document.querySelectorAll('[role="grid"] tbody:first-of-type tr');
    if ((rows[0]?.getClientRects().length ?? 0) > 0) seen.stands ??= performance.now();
    if (rows.length < rowsInAll) requestAnimationFrame(look);
    else seen.whole = performance.now();
  };
  requestAnimationFrame(look);
}

/** From asking for the page to the frame that shows the table, and to the one with all rows in it. */
async function openTimes(
  page: Page,
  address: string,
): Promise<{ stands: number; whole: number }[]> {
  await page.addInitScript(noteTable, largeClass.students);
  const times: { stands: number; whole: number }[] = [];
  for (let round = 0; round < rounds; round += 1) {
    await page.goto(`${address}${routes.teacher.classGradebook(largeClass.id)}`);
    await page.waitForFunction(() => 'whole' in Object(Reflect.get(window, 'tableSeen')));
    times.push(
      timesSchema.parse(await page.evaluate((): unknown => Reflect.get(window, 'tableSeen'))),
    );
  }
  return times;
}

/** Scrolls the table down and to the side for a while; how long each frame took. */
function scrollForAWhile(forMs: number): Promise<number[]> {
  const frame = document.querySelector('[role="grid"]')?.parentElement;
  if (frame === null || frame === undefined) throw new Error('there is no gradebook');
  const startedAt = performance.now();
  const gaps: number[] = [];
  let before = startedAt;
  return new Promise((resolve) => {
    const step = (now: number) => {
      gaps.push(now - before);
      before = now;
      frame.scrollBy({ top: 40, left: 12, behavior: 'instant' });
      if (now - startedAt < forMs) requestAnimationFrame(step);
      else resolve(gaps.slice(1));
    };
    requestAnimationFrame(step);
  });
}

await withProduct(async ({ address, browser, signIns, dataFolder }) => {
  process.env['DUSKBENCH_DATA'] = dataFolder;
  const { db } = await import('../data/db');
  const { id } = await db().teacher.findFirstOrThrow({
    where: { memberships: { some: { role: 'owner' } } },
    select: { id: true },
  });
  await fillLargeClass(db(), id);
  const read = await readTimes(id);
  const [teacher] = signIns;
  if (teacher === undefined) throw new Error('the demonstration has no teacher');
  const page = await browser.newPage({ viewport: { width: 1280, height: 720 } });
  // The loader of TypeScript wraps inner functions in a call of this name.
  await page.addInitScript('globalThis.__name = (value) => value');
  await signIn(page, address, teacher);
  const opened = await openTimes(page, address);
  const gaps = await page.evaluate(scrollForAWhile, scrollMs);
  const dropped = gaps.filter((gap) => gap > droppedAfterMs).length;
  const median = middle(opened.map(({ stands }) => stands));
  console.log(
    `Gradebook of ${String(largeClass.students)} students and ${String(largeClass.assignments)} assignments, medians of ${String(rounds)}`,
  );
  console.log(`  read in ${middle(read).toFixed(0)} ms`);
  console.log(
    `  opened in ${median.toFixed(0)} ms: ${(median / barMs).toFixed(2)} of the bar of ${String(barMs)} ms, ${median <= barMs ? 'met' : 'MISSED'}; all rows after ${middle(opened.map(({ whole }) => whole)).toFixed(0)} ms`,
  );
  console.log(
    `  scrolled for ${String(scrollMs / 1000)} s: ${String(gaps.length)} frames, the middle one ${middle(gaps).toFixed(1)} ms, the longest ${Math.max(...gaps).toFixed(0)} ms, ${String(dropped)} late`,
  );
  console.log(loadMatters());
  if (median > barMs) process.exitCode = 1;
});
