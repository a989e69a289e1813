import { type DisplayUnit, formatLength, type Issue, wordsOf } from '../core/base/index.ts';
import type { Report, ReportTape } from '../core/form/index.ts';
import { formatTable } from './format-table.ts';

/** Every tape: typed, read off the body, and by how much they differ; what is estimated was not typed. */
export function describeTapes(tapes: readonly ReportTape[], unit: DisplayUnit): string {
  const rows = tapes.map((tape) => [
    tape.id,
    tape.kind,
    tape.status === 'estimated' ? '–' : formatLength(tape.target, unit),
    formatLength(tape.got, unit),
    tape.status === 'estimated' ? '–' : signed(tape.got - tape.target, 2),
    tape.spread === undefined
      ? tape.status
      : `${tape.status} ±${formatLength(tape.spread, unit, { bare: true })}`,
  ]);
  return formatTable(
    [
      { title: 'tape' },
      { title: 'kind' },
      { title: 'typed', align: 'right' },
      { title: 'body', align: 'right' },
      { title: 'off mm', align: 'right' },
      { title: 'result' },
    ],
    rows,
  );
}

/** One block per issue: severity, field, code, then the sentence. Errors come first. */
export function describeIssues(issues: readonly Issue[]): string {
  if (issues.length === 0) return 'No issues.';
  const ordered = [
    ...issues.filter((issue) => issue.severity === 'error'),
    ...issues.filter((issue) => issue.severity === 'warning'),
  ];
  return ordered
    .map((issue) => {
      const place = issue.path === '' ? '' : `${issue.path}  `;
      return `${issue.severity === 'error' ? 'ERROR  ' : 'warning'}  ${place}(${issue.code})\n         ${wordsOf(issue.message)}`;
    })
    .join('\n');
}

/** Panels with the strain their cloth feels, the worst seam, every level, and the time of each stage. */
export function describeReport(report: Report, unit: DisplayUnit): string {
  const panels = formatTable(
    [
      { title: 'panel' },
      { title: 'area cm²', align: 'right' },
      { title: 'strain rms %', align: 'right' },
      { title: 'p95', align: 'right' },
      { title: 'p99', align: 'right' },
      { title: 'shrink', align: 'right' },
      { title: 'stretch', align: 'right' },
      { title: 'grain °', align: 'right' },
      { title: 'best °', align: 'right' },
    ],
    report.panels.map(({ id, areaFlat, strain, cloth }) => [
      id,
      (areaFlat / 100).toFixed(0),
      ...[strain.rms, strain.p95, strain.p99].map((x) => (100 * x).toFixed(2)),
      signed(100 * strain.min, 2),
      signed(100 * strain.max, 2),
      turnInDegrees(cloth.grainAngle),
      turnInDegrees(cloth.bestGrain.angle),
    ]),
  );
  const levels = formatTable(
    [
      { title: 'level' },
      { title: 'on the body', align: 'right' },
      { title: 'on the panels', align: 'right' },
      { title: 'off mm', align: 'right' },
    ],
    report.levels.map(({ id, length3d, lengthFlat }) => [
      id,
      formatLength(length3d, unit),
      formatLength(lengthFlat, unit),
      signed(lengthFlat - length3d, 3),
    ]),
  );
  return [panels, '', levels, '', describeSeams(report), describeTimes(report)].join('\n');
}

/** From upright, counter-clockwise. */
function turnInDegrees(angle: number): string {
  return signed((180 * angle) / Math.PI - 90, 0);
}

function describeSeams(report: Report): string {
  const unequal = Math.max(0, ...report.seams.map(({ lengthsFlat: [a, b] }) => Math.abs(a - b)));
  const gap = Math.max(0, ...report.seams.map((seam) => seam.maxMarkGap));
  return (
    `${report.seams.length} seams; partners differ by at most ${unequal.toFixed(4)} mm, ` +
    `their notches by at most ${gap.toFixed(4)} mm.`
  );
}

function describeTimes(report: Report): string {
  const { triangles, volumeL } = report.body;
  const times = Object.entries(report.timingsMs).map(([stage, ms]) => `${stage} ${(ms / 1000).toFixed(2)} s`);
  return `${triangles} triangles, ${volumeL.toFixed(1)} litres inside. ${times.join(', ')}.`;
}

function signed(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return /^-?[0.]+$/.test(text) ? text.replace('-', '') : value > 0 ? `+${text}` : text;
}
