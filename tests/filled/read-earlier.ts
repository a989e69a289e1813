import { readFileSync } from 'node:fs';
import path from 'node:path';
import { gunzipSync } from 'node:zlib';
import { verbatim } from '../../src/core/base/index.ts';
import type { FilledGiven, StrandedBrace } from '../../src/core/filled/index.ts';

/** What is kept of a form: 6000 triangles; lists as those of the form, rounded to 0.001 mm. */
interface Kept {
  readonly mesh: { readonly positions: number[]; readonly triangles: number[] };
  readonly chart: number[];
  readonly panels: readonly {
    readonly triangles: number[];
    readonly sourceVertex: number[];
    readonly flat: number[];
  }[];
  readonly levels: readonly { readonly id: string; readonly vertices: number[] }[];
  readonly openings: readonly {
    readonly id: 'base' | 'neck' | 'armholeRight' | 'armholeLeft';
    readonly vertices: number[];
  }[];
  /** Rungs: from, to, length. */
  readonly braces: readonly {
    readonly id: string;
    readonly isAcross: boolean;
    readonly rungs: readonly number[][];
  }[];
}

/**
 * A demo as it was made before its body came nearer to people: the form that an independent simulation in space was run on, with
 * the usual tube's growth taken off.
 */
export function readEarlier(id: 'average' | 'large-bust'): {
  given: FilledGiven;
  braces: readonly StrandedBrace[];
} {
  const file = path.join(import.meta.dirname, `earlier/${id}.json.gz`);
  const kept = JSON.parse(gunzipSync(readFileSync(file)).toString()) as Kept;
  const positions = Float64Array.from(kept.mesh.positions);
  const given = {
    shell: {
      mesh: { positions, triangles: Uint32Array.from(kept.mesh.triangles) },
      chart: Float64Array.from(kept.chart),
      panels: kept.panels.map(({ triangles, sourceVertex }) => ({
        mesh: { positions: new Float64Array(), triangles: Uint32Array.from(triangles) },
        sourceVertex: Uint32Array.from(sourceVertex),
      })),
      levels: kept.levels.map((level) => ({
        id: level.id,
        name: verbatim(level.id),
        vertices: Uint32Array.from(level.vertices),
      })),
      openings: kept.openings.map((opening) => ({
        id: opening.id,
        vertices: Uint32Array.from(opening.vertices),
      })),
      seams: [],
    },
    flat: kept.panels.map(({ flat }) => ({ positions: Float64Array.from(flat) })),
    inside: { braces: [] },
    options: { measuredGrowth: 0.3 / 39.7 },
  } as unknown as FilledGiven;
  const braces = kept.braces.map(({ id: name, isAcross, rungs }) => ({
    id: name,
    isAcross,
    rungs: rungs.map(([a, b, c, d, e, f, length]) => ({
      v: c,
      z: c,
      from: [a, b, c] as const,
      to: [d, e, f] as const,
      length,
    })),
  }));
  return { given, braces };
}
