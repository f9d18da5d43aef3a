/**
 * `npm run frame-rate`: frames a second that the lab's sky draws at 1280×720 with software
 * rendering while it is dragged about. Exit code 1 when the median of five runs is below the bar.
 */
import type { Page } from '@playwright/test';
import { routes } from '../routes';
import { fixedRound, withProduct } from './measured-product';

const barFramesPerSecond = 30;
const runs = 5;
const runMs = 4000;

/** Counts the animation frames in which WebGL drew something. Runs in the page. */
function countDrawnFrames(): void {
  const counter = { frames: 0, drawn: false };
  Object.assign(window, { drawnFrames: counter });
  const prototype = WebGL2RenderingContext.prototype;
  for (const name of [
    'drawArrays',
    'drawElements',
    'drawArraysInstanced',
    'drawElementsInstanced',
  ] as const) {
    const original: unknown = Reflect.get(prototype, name);
    if (typeof original !== 'function') continue;
    Object.defineProperty(prototype, name, {
      value(this: WebGL2RenderingContext, ...values: never[]) {
        counter.drawn = true;
        Reflect.apply(original, this, values);
      },
    });
  }
  const tick = () => {
    if (counter.drawn) counter.frames += 1;
    counter.drawn = false;
    requestAnimationFrame(tick);
  };
  requestAnimationFrame(tick);
}

const framesSoFar = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const counter: unknown = Reflect.get(window, 'drawnFrames');
    if (typeof counter !== 'object' || counter === null) return Number.NaN;
    return Number(Reflect.get(counter, 'frames'));
  });

/**
 * Drags the sky slowly to and fro until the time is up. The moves are made inside the page, one a
 * frame as a browser hands them on: sent from outside, they cost as much of two cores as the drawing.
 */
async function dragAbout(page: Page, centre: { x: number; y: number }): Promise<number> {
  await page.mouse.move(centre.x, centre.y);
  await page.mouse.down();
  const before = await framesSoFar(page);
  const elapsedMs = await page.evaluate(moveForAWhile, { ...centre, runMs });
  const frames = (await framesSoFar(page)) - before;
  await page.mouse.up();
  return (frames * 1000) / elapsedMs;
}

/** Runs in the page. Ends a quarter of a turn short of where it began, so that the view has moved. */
function moveForAWhile({ x, y, runMs }: { x: number; y: number; runMs: number }): Promise<number> {
  const target = document.elementFromPoint(x, y);
  if (target === null) throw new Error('There is nothing to drag.');
  const startedAt = performance.now();
  return new Promise((resolve) => {
    const move = () => {
      const elapsed = performance.now() - startedAt;
      const angle = (elapsed / runMs) * 1.5 * Math.PI;
      target.dispatchEvent(
        new PointerEvent('pointermove', {
          ...{ bubbles: true, pointerId: 1, pointerType: 'mouse', isPrimary: true, buttons: 1 },
          ...{ clientX: x + 200 * Math.sin(angle), clientY: y + 60 * Math.sin(2 * angle) },
        }),
      );
      if (elapsed < runMs) requestAnimationFrame(move);
      else resolve(elapsed);
    };
    requestAnimationFrame(move);
  });
}

await withProduct(async ({ address, browser }) => {
  const page = await browser.newPage({ viewport: { width: 1280, height: 720 } });
  // The loader of TypeScript wraps inner functions in a call of this name.
  await page.addInitScript('globalThis.__name = (value) => value');
  await page.addInitScript(countDrawnFrames);
  await page.goto(`${address}${routes.labs.pickThePair(fixedRound)}`, {
    waitUntil: 'networkidle',
  });
  const canvas = page.locator('canvas').first();
  const box = await canvas.boundingBox();
  if (box === null) throw new Error('The lab shows no sky.');
  const centre = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const view = page.getByText(/^Looking /);
  const viewBefore = await view.innerText();
  const rates: number[] = [];
  for (let run = 0; run < runs; run += 1) rates.push(await dragAbout(page, centre));
  if ((await view.innerText()) === viewBefore) throw new Error('The sky did not follow the drag.');
  const median = rates.toSorted((a, b) => a - b)[Math.floor(runs / 2)] ?? 0;
  const each = rates.map((rate) => rate.toFixed(0)).join(', ');
  console.log(
    `\n${median.toFixed(1)} frames a second (median; runs ${each}), bar ${barFramesPerSecond}`,
  );
  console.log(`sky of ${box.width.toFixed(0)}×${box.height.toFixed(0)} in a window of 1280×720`);
  if (median < barFramesPerSecond) process.exitCode = 1;
});
