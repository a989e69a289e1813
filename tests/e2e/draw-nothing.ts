import type { BrowserContext } from '@playwright/test';

/**
 * Pages of the context find no WebGL, and show the body as an outline. Where nothing is looked at in space this saves more
 * than a third of a page's processor time: without a graphics card, programs are compiled and pictures drawn by the processor.
 */
export async function drawNothing({ context }: { readonly context: BrowserContext }): Promise<void> {
  await context.addInitScript(() => {
    const original = HTMLCanvasElement.prototype.getContext;
    HTMLCanvasElement.prototype.getContext = function (
      this: HTMLCanvasElement,
      kind: string,
      ...rest: unknown[]
    ) {
      return /^webgl/.test(kind) ? null : Reflect.apply(original, this, [kind, ...rest]);
    } as typeof original;
  });
}
