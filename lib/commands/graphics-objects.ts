import type { Page } from '@playwright/test';

/**
 * Counts what the page's WebGL contexts hold, so that what is made and never given back shows. Runs in
 * the page, before anything else. What a lost context held is gone with it.
 */
function countObjects(): void {
  const held = new WeakMap<object, { live: number }>();
  const contexts: WeakRef<WebGL2RenderingContext>[] = [];
  const countOf = (context: WebGL2RenderingContext): { live: number } => {
    const known = held.get(context);
    if (known !== undefined) return known;
    const count = { live: 0 };
    held.set(context, count);
    contexts.push(new WeakRef(context));
    return count;
  };
  const prototype = WebGL2RenderingContext.prototype;
  const kinds = ['Buffer', 'Framebuffer', 'Program', 'Renderbuffer', 'Shader', 'Texture'];
  const watch = (name: string, by: number) => {
    const original: unknown = Reflect.get(prototype, name);
    if (typeof original !== 'function') return;
    Object.defineProperty(prototype, name, {
      value(this: WebGL2RenderingContext, ...values: unknown[]): unknown {
        // To delete nothing is allowed and does nothing.
        if (by > 0 || (values[0] ?? null) !== null) countOf(this).live += by;
        return Reflect.apply(original, this, values);
      },
    });
  };
  for (const kind of [...kinds, 'VertexArray']) {
    watch(`create${kind}`, 1);
    watch(`delete${kind}`, -1);
  }
  Object.assign(window, {
    graphicsObjects: {
      get live(): number {
        return contexts.reduce((sum, reference) => {
          const context = reference.deref();
          const gone = context === undefined || context.isContextLost();
          return gone ? sum : sum + countOf(context).live;
        }, 0);
      },
    },
  });
}

/** To be called before the page is opened. */
export async function countGraphicsObjects(page: Page): Promise<void> {
  // The loader of TypeScript wraps inner functions in a call of this name.
  await page.addInitScript('globalThis.__name = (value) => value');
  await page.addInitScript(countObjects);
}

export const liveGraphicsObjects = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const count: unknown = Reflect.get(window, 'graphicsObjects');
    return typeof count === 'object' && count !== null
      ? Number(Reflect.get(count, 'live'))
      : Number.NaN;
  });
