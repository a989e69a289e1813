import type { OverlapOf } from './layout.ts';
import type { Shape } from './make-shapes.ts';
import { overlapModule } from './overlap-module.ts';
import { overlapProxy } from './overlap-proxy.ts';
import { packShapes } from './pack-shapes.ts';

/** What is used of WebAssembly; the core's types know only the language itself. */
declare const WebAssembly:
  | {
      readonly Memory: new (limits: { initial: number }) => { readonly buffer: ArrayBuffer };
      readonly Module: new (bytes: Uint8Array<ArrayBuffer>) => object;
      readonly Instance: new (
        module: object,
        imports: { a: { memory: object } },
      ) => { readonly exports: Record<string, unknown> };
    }
  | undefined;

/**
 * How much two of these shapes overlap: four lanes at a time where WebAssembly may run, in plain loops where it is missing or a
 * page's rules forbid it. The same bits either way.
 */
export function measureOverlap(shapes: readonly Shape[]): OverlapOf {
  return overlapByVectors(shapes) ?? overlapByLoops(shapes);
}

export function overlapByLoops(shapes: readonly Shape[]): OverlapOf {
  const memory = packShapes(shapes, (bytes) => new ArrayBuffer(bytes));
  return (a, b, dx, dy, epsilon, enough) => overlapProxy(memory, a, b, dx, dy, epsilon, enough);
}

/** Nothing where vectors may not be used. */
export function overlapByVectors(shapes: readonly Shape[]): OverlapOf | undefined {
  if (typeof WebAssembly === 'undefined') return undefined;
  try {
    const module = new WebAssembly.Module(overlapModule());
    const allocate = (bytes: number) => new WebAssembly!.Memory({ initial: Math.ceil(bytes / 65536) });
    let memory: ReturnType<typeof allocate> | undefined;
    packShapes(shapes, (bytes) => {
      memory = allocate(bytes);
      return memory.buffer;
    });
    const instance = new WebAssembly.Instance(module, { a: { memory: memory! } });
    const overlap = instance.exports.overlap as OverlapOf;
    return (a, b, dx, dy, epsilon, enough) => overlap(4 * a, 4 * b, dx, dy, epsilon, enough);
  } catch {
    return undefined;
  }
}
