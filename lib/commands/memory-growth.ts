/**
 * `npm run memory-growth`: what the alignment run keeps in memory while it is steered and slewed for
 * five minutes, after the garbage has been collected. Exit code 1 when it grows.
 */
import { parseArgs } from 'node:util';
import type { CDPSession, Page } from '@playwright/test';
import { countGraphicsObjects, liveGraphicsObjects } from './graphics-objects';
import { loadMatters, withProduct } from './measured-product';
import { holdStrips, lookWith, openRun, slewTargets, slewTo } from './steered-run';

const help = `Measures what the alignment run keeps in memory while it is steered and slewed.

  npm run memory-growth                  for five minutes
  npm run memory-growth -- --minutes 2   shorter, for a first look

Once a minute, garbage collected, the view the same: script heap with its buffers, nodes of the page,
objects on the graphics side. Two minutes before the first figure are for warming up. Exit code 1 when
the heap's straight line rises by more than its bar, or when there are more nodes or graphics objects
at the end than at the first figure.`;

/**
 * One small object kept in every frame would cost more: 40 bytes, 60 times a second, are 144 kB a
 * minute. What a run rightly keeps, its log and the moves it can be replayed by, is some kilobytes.
 */
const barKbPerMinute = 100;

/** Until code is compiled and every view has been seen and left: more is kept, and rightly. */
const warmUpMinutes = 2;

type Sample = { minute: number; heapKb: number; nodes: number; graphics: number };

/** Through everything once, ending in the view it began with: about twenty seconds. */
async function steerAbout(page: Page, round: number): Promise<void> {
  const { east, west } = slewTargets;
  await lookWith(page, 'eye');
  await slewTo(page, round % 2 === 0 ? west : east);
  await page.waitForTimeout(5000);
  await lookWith(page, 'eyepiece');
  await page.waitForTimeout(2000);
  await page.getByRole('button', { name: 'Stop', exact: true }).click();
  const side = round % 2 === 0 ? 1 : -1;
  await holdStrips(page, { right: 0.5 * side, up: 0 }, 2500);
  await lookWith(page, 'finder');
  await holdStrips(page, { right: 0, up: 0.7 }, 2000);
  await holdStrips(page, { right: -0.4 * side, up: -0.7 }, 2000);
  await lookWith(page, 'eye');
  await holdStrips(page, { right: 0.8 * side, up: 0 }, 2500);
}

async function sampleOf(page: Page, session: CDPSession, minute: number): Promise<Sample> {
  // What was let go in a callback is found by the next collection.
  for (let i = 0; i < 3; i += 1) await session.send('HeapProfiler.collectGarbage');
  const heap = await session.send('Runtime.getHeapUsage');
  const { metrics } = await session.send('Performance.getMetrics');
  return {
    minute,
    heapKb: (heap.usedSize + heap.backingStorageSize) / 1000,
    nodes: metrics.find(({ name }) => name === 'Nodes')?.value ?? Number.NaN,
    graphics: await liveGraphicsObjects(page),
  };
}

/** Least squares. */
function slopeKbPerMinute(samples: readonly Sample[]): number {
  const mean = (value: (sample: Sample) => number) =>
    samples.reduce((sum, sample) => sum + value(sample), 0) / samples.length;
  const [minute, heapKb] = [mean((one) => one.minute), mean((one) => one.heapKb)];
  return (
    mean((one) => (one.minute - minute) * (one.heapKb - heapKb)) /
    mean((one) => (one.minute - minute) ** 2)
  );
}

async function measure(page: Page, address: string, minutes: number): Promise<Sample[]> {
  await countGraphicsObjects(page);
  await openRun(page, address);
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable');
  const samples: Sample[] = [];
  let round = 0;
  const startedAt = performance.now();
  const minutesSoFar = () => (performance.now() - startedAt) / 60_000;
  console.log('\n minute  heap kB  nodes  graphics');
  for (let mark = warmUpMinutes; mark <= warmUpMinutes + minutes; mark += 1) {
    do {
      await steerAbout(page, round);
      round += 1;
    } while (minutesSoFar() < mark);
    const sample = await sampleOf(page, session, minutesSoFar());
    samples.push(sample);
    const cells = [
      sample.minute.toFixed(1),
      sample.heapKb.toFixed(0),
      sample.nodes,
      sample.graphics,
    ];
    console.log(cells.map((cell, i) => String(cell).padStart([7, 9, 7, 10][i] ?? 0)).join(''));
  }
  return samples;
}

function report(samples: readonly Sample[]): void {
  const [first, last] = [samples[0], samples.at(-1)];
  if (first === undefined || last === undefined) throw new Error('Nothing was measured.');
  const slope = slopeKbPerMinute(samples);
  const missed = {
    heap: slope > barKbPerMinute,
    nodes: last.nodes > first.nodes,
    graphics: last.graphics > first.graphics,
  };
  if (Object.values(missed).some(Boolean)) process.exitCode = 1;
  const word = (is: boolean) => (is ? ', MISSED' : '');
  console.log(`
${slope.toFixed(1).padStart(7)} kB a minute, heap (bar ${barKbPerMinute}${word(missed.heap)})
${String(last.nodes - first.nodes).padStart(7)} nodes more at the end (bar 0${word(missed.nodes)})
${String(last.graphics - first.graphics).padStart(7)} graphics objects more at the end (bar 0${word(missed.graphics)})
${loadMatters()}`);
}

function askedMinutes(): number | null {
  const { values } = parseArgs({
    options: {
      minutes: { type: 'string', default: '5' },
      help: { type: 'boolean', short: 'h', default: false },
    },
  });
  const minutes = Number(values.minutes);
  if (!values.help && Number.isInteger(minutes) && minutes >= 1 && minutes <= 60) return minutes;
  console.log(help);
  process.exitCode = values.help ? 0 : 2;
  return null;
}

const minutes = askedMinutes();
if (minutes !== null) {
  await withProduct(async ({ address, browser }) => {
    const page = await browser.newPage({ viewport: { width: 1280, height: 720 } });
    report(await measure(page, address, minutes));
  });
}
