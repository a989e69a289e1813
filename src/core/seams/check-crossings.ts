import type { Issue, Phrase } from '../base/index.ts';
import { doSegmentsTouch } from '../math/index.ts';
import { nameOfLine } from './name-lines.ts';
import { phrase } from './phrases.ts';
import { CENTRE_BACK, CENTRE_FRONT } from './resolve-lines.ts';
import type { SampledNetwork, SampledStretch } from './sample-network.ts';
import type { SeamLayout } from './types.ts';

/**
 * Lines that touch each other, the armhole or a centre line anywhere but in a common node, one issue per pair.
 * O(S²) boxes, then segment by segment where boxes meet. Without issues the network is planar.
 */
export function checkCrossings(network: SampledNetwork, layout: SeamLayout): Issue[] {
  const { stretches, chart } = network;
  const told = new Set<string>();
  const issues: Issue[] = [];
  const nameOf = ({ curveId }: SampledStretch): Phrase =>
    nameOfLine(layout.lines.find((line) => line.id === curveId)?.name ?? curveId);
  const report = (code: string, a: SampledStretch, message: Phrase): void => {
    const key = code + a.curveId + JSON.stringify(message);
    if (told.has(key)) return;
    told.add(key);
    issues.push({ code, path: `lines.${a.curveId}`, message, severity: 'error' });
  };
  const drawn = stretches.filter(
    (stretch) =>
      stretch.kind === 'line' ||
      stretch.kind === 'armhole' ||
      (stretch.kind === 'row' && stretch.lineId === stretch.curveId),
  );
  const boxes = drawn.map((stretch) => boundStretch(stretch, chart));
  for (let i = 0; i < drawn.length; i++) {
    const a = drawn[i];
    if (a.kind === 'armhole') continue;
    if (boxes[i][0] < CENTRE_BACK - 1e-9 || boxes[i][1] > CENTRE_FRONT + 1e-9) {
      report('line-leaves-half', a, phrase('seams.line-leaves-half', { line: nameOf(a) }));
    }
    for (let j = 0; j < drawn.length; j++) {
      const b = drawn[j];
      if (j === i || (b.kind !== 'armhole' && j < i)) continue;
      const apart =
        boxes[i][0] > boxes[j][1] ||
        boxes[j][0] > boxes[i][1] ||
        boxes[i][2] > boxes[j][3] ||
        boxes[j][2] > boxes[i][3];
      if (apart || !doStretchesTouch(a, b, chart)) continue;
      report(
        'lines-cross',
        a,
        b.kind === 'armhole'
          ? phrase('seams.line-over-armhole', { line: nameOf(a) })
          : phrase('seams.lines-cross', { line: nameOf(a), other: nameOf(b) }),
      );
    }
  }
  return issues;
}

function boundStretch(stretch: SampledStretch, chart: Float64Array): [number, number, number, number] {
  const box: [number, number, number, number] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const v of stretch.vertices) {
    box[0] = Math.min(box[0], chart[2 * v]);
    box[1] = Math.max(box[1], chart[2 * v]);
    box[2] = Math.min(box[2], chart[2 * v + 1]);
    box[3] = Math.max(box[3], chart[2 * v + 1]);
  }
  return box;
}

function doStretchesTouch(a: SampledStretch, b: SampledStretch, chart: Float64Array): boolean {
  for (let i = 1; i < a.vertices.length; i++) {
    const [p, q] = [a.vertices[i - 1], a.vertices[i]];
    for (let j = 1; j < b.vertices.length; j++) {
      const [r, s] = [b.vertices[j - 1], b.vertices[j]];
      // Segments that meet in a common node may do so; both ends in common means one lies on the other.
      const common = (p === r || p === s ? 1 : 0) + (q === r || q === s ? 1 : 0);
      if (common === 1) continue;
      if (
        common === 2 ||
        doSegmentsTouch(
          chart[2 * p],
          chart[2 * p + 1],
          chart[2 * q],
          chart[2 * q + 1],
          chart[2 * r],
          chart[2 * r + 1],
          chart[2 * s],
          chart[2 * s + 1],
        )
      ) {
        return true;
      }
    }
  }
  return false;
}
