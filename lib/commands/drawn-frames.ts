import type { Page } from '@playwright/test';

/** What draws: the 3D sky, or a flat picture such as that of an eyepiece. */
export type Drawing = 'sky' | 'field';

/**
 * Counts the animation frames in which something was drawn, for each kind of drawing. Runs in the page,
 * before anything else.
 */
function countDrawnFrames(): void {
  const frames = { sky: 0, field: 0 };
  const drawn = { sky: false, field: false };
  Object.assign(window, { drawnFrames: frames });
  const watch = (prototype: object, kind: Drawing, names: readonly string[]) => {
    for (const name of names) {
      const original: unknown = Reflect.get(prototype, name);
      if (typeof original !== 'function') continue;
      Object.defineProperty(prototype, name, {
        value(this: object, ...values: never[]) {
          drawn[kind] = true;
          Reflect.apply(original, this, values);
        },
      });
    }
  };
  watch(WebGL2RenderingContext.prototype, 'sky', [
    'drawArrays',
    'drawElements',
    'drawArraysInstanced',
    'drawElementsInstanced',
  ]);
  watch(CanvasRenderingContext2D.prototype, 'field', ['clearRect']);
  const tick = () => {
    for (const kind of ['sky', 'field'] as const) {
      if (drawn[kind]) frames[kind] += 1;
      drawn[kind] = false;
    }
    requestAnimationFrame(tick);
  };
  requestAnimationFrame(tick);
}

/** To be called before the page is opened. */
export async function watchDrawing(page: Page): Promise<void> {
  // The loader of TypeScript wraps inner functions in a call of this name.
  await page.addInitScript('globalThis.__name = (value) => value');
  await page.addInitScript(countDrawnFrames);
}

/** Frames drawn since the page was opened. */
export const framesSoFar = (page: Page, kind: Drawing): Promise<number> =>
  page.evaluate((which) => {
    const frames: unknown = Reflect.get(window, 'drawnFrames');
    if (typeof frames !== 'object' || frames === null) return Number.NaN;
    return Number(Reflect.get(frames, which));
  }, kind);
