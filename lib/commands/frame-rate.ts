/**
 * `npm run frame-rate`: frames a second at 1280×720 with software rendering: of the sky of "Pick the
 * pair" while it is dragged about, and of the alignment run while the mount slews, seen by eye and in
 * the eyepiece. Exit code 1 when the median of five runs is below the bar.
 */
import type { Browser, Page } from '@playwright/test';
import { routes } from '../routes';
import { framesSoFar, watchDrawing, type Drawing } from './drawn-frames';
import { fixedRound, loadMatters, withProduct } from './measured-product';
import { arrival, isDriving, lookWith, openRun, slewTargets, slewTo } from './steered-run';

const barFramesPerSecond = 30;
const runs = 5;
const runMs = 4000;

/** Frames a second, one figure a run. */
type Measured = { name: string; rates: number[] };

const openPage = async (browser: Browser): Promise<Page> => {
  const page = await browser.newPage({ viewport: { width: 1280, height: 720 } });
  await watchDrawing(page);
  return page;
};

/**
 * Drags the sky slowly to and fro until the time is up. The moves are made inside the page, one a
 * frame as a browser hands them on: sent from outside, they cost as much of two cores as the drawing.
 */
async function dragAbout(page: Page, centre: { x: number; y: number }): Promise<number> {
  await page.mouse.move(centre.x, centre.y);
  await page.mouse.down();
  const before = await framesSoFar(page, 'sky');
  const elapsedMs = await page.evaluate(moveForAWhile, { ...centre, runMs });
  const frames = (await framesSoFar(page, 'sky')) - before;
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
          bubbles: true,
          pointerId: 1,
          pointerType: 'mouse',
          isPrimary: true,
          buttons: 1,
          clientX: x + 200 * Math.sin(angle),
          clientY: y + 60 * Math.sin(2 * angle),
        }),
      );
      if (elapsed < runMs) requestAnimationFrame(move);
      else resolve(elapsed);
    };
    requestAnimationFrame(move);
  });
}

async function pairLabDragged(browser: Browser, address: string): Promise<Measured> {
  const page = await openPage(browser);
  await page.goto(`${address}${routes.labs.pickThePair(fixedRound)}`, {
    waitUntil: 'networkidle',
  });
  const box = await page.locator('canvas').first().boundingBox();
  if (box === null) throw new Error('The lab shows no sky.');
  const centre = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const view = page.getByText(/^Looking /);
  const viewBefore = await view.innerText();
  const rates: number[] = [];
  for (let run = 0; run < runs; run += 1) rates.push(await dragAbout(page, centre));
  if ((await view.innerText()) === viewBefore) throw new Error('The sky did not follow the drag.');
  await page.close();
  return {
    name: `pair lab dragged about, sky of ${box.width.toFixed(0)}×${box.height.toFixed(0)}`,
    rates,
  };
}

/** One slew half round the sky is long enough for all five. */
async function ratesWhileSlewing(page: Page, kind: Drawing): Promise<number[]> {
  const rates: number[] = [];
  for (let run = 0; run < runs; run += 1) {
    const before = await framesSoFar(page, kind);
    const elapsedMs = await page.evaluate(waitInPage, runMs);
    rates.push((((await framesSoFar(page, kind)) - before) * 1000) / elapsedMs);
    if (!(await isDriving(page))) throw new Error('The slew was over before it was measured.');
  }
  return rates;
}

/** Runs in the page, whose own clock the frames are counted by. */
function waitInPage(ms: number): Promise<number> {
  const startedAt = performance.now();
  return new Promise((resolve) => {
    setTimeout(() => {
      resolve(performance.now() - startedAt);
    }, ms);
  });
}

async function runSlewing(browser: Browser, address: string): Promise<Measured[]> {
  const page = await openPage(browser);
  await openRun(page, address);
  await lookWith(page, 'eye');
  await page.locator('canvas').first().waitFor();
  await slewTo(page, slewTargets.west);
  const eye = await ratesWhileSlewing(page, 'sky');
  await arrival(page);
  await lookWith(page, 'eyepiece');
  await slewTo(page, slewTargets.east);
  const eyepiece = await ratesWhileSlewing(page, 'field');
  await page.close();
  return [
    { name: 'alignment run slewing, by eye', rates: eye },
    { name: 'alignment run slewing, in the eyepiece', rates: eyepiece },
  ];
}

function report({ name, rates }: Measured): void {
  const median = rates.toSorted((a, b) => a - b)[Math.floor(runs / 2)] ?? 0;
  const missed = median < barFramesPerSecond;
  if (missed) process.exitCode = 1;
  const each = rates.map((rate) => rate.toFixed(0)).join(', ');
  console.log(
    `${median.toFixed(1).padStart(6)}  ${name} (runs ${each}; bar ${barFramesPerSecond}${missed ? ', MISSED' : ''})`,
  );
}

await withProduct(async ({ address, browser }) => {
  const measured = [
    await pairLabDragged(browser, address),
    ...(await runSlewing(browser, address)),
  ];
  console.log('\nFrames a second in a window of 1280×720, software rendering, median of five runs');
  for (const one of measured) report(one);
  console.log(loadMatters());
});
