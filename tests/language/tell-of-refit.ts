import type { ChartSurface } from '../../src/core/mesh/index.ts';
import { findCore, layPads, refitPhrase, tellStep } from '../../src/core/refit/index.ts';

/** An upright tube with a bump in front. */
function tube(radius: number, bump: number): ChartSurface {
  return {
    vRange: [-150, 150],
    isMirrorSymmetric: true,
    evaluate(chart, out = new Float64Array((chart.length / 2) * 3)) {
      for (let i = 0; i < chart.length / 2; i++) {
        const [u, v] = [chart[2 * i], chart[2 * i + 1]];
        const r = radius + bump * Math.exp(-(((u - Math.PI / 2) / 0.6) ** 2) - (v / 70) ** 2);
        out.set([r * Math.cos(u), r * Math.sin(u), v], 3 * i);
      }
      return out;
    },
  };
}

const FAR = Float64Array.of(0.2, 1000, -0.2, 1000, 0, 1050);

/** What is said of pads, of a form for another body, and of a core that cannot be. */
export function tellOfRefit(): unknown {
  const form = { armholes: { right: FAR, left: FAR }, levels: [], landmarks: {} } as unknown as Parameters<
    typeof layPads
  >[0]['form'];
  const levels = [{ id: 'waist', name: { id: 'level.waist', values: {} }, v: 0 }];
  const padded = { surface: tube(120, 0), form, levels };
  const laid = layPads(padded, tube(120, 21.5), { wadding: 7.5 });
  return [
    laid.ok ? laid.value.pads.map(({ input }) => input) : laid.issues,
    layPads(padded, tube(125, 0), { wadding: 1.5 }),
    tellStep({ kind: 'pads', layers: 2, thickness: 15.5 }),
    tellStep({ kind: 'pads', layers: 1, thickness: 7.5 }),
    tellStep({ kind: 'take-in', letters: ['D', 'K'], each: 4.5, girth: 904.5 }),
    tellStep({ kind: 'stays-full', by: 5.5 }),
    ...(['too-thick', 'too-much-to-take-in', 'too-full'] as const).map((why) =>
      tellStep({ kind: 'anew', why, measured: 12.5, limit: 8.5 }),
    ),
    refitPhrase('refit.nothing'),
    refitPhrase('refit.above'),
    refitPhrase('refit.verdict', { isAnew: true }),
    refitPhrase('refit.verdict', { isAnew: false }),
    refitPhrase('refit.cover', { project: 'Katze' }),
    refitPhrase('core.name', { names: ['Katze', 'Maus'] }),
    findCore([]),
  ];
}
