import type { DisplayUnit, Issue, Severity } from '../core/base/index.ts';
import { type BodyInput, type BodyUncertainty, findMeasure, USUAL_WAIST } from '../core/body/index.ts';
import type { Report, ReportTape, Verdict } from '../core/form/index.ts';
import type { Numbers } from '../language/index.ts';
import type { Reader } from './create-reader.ts';
import { formatTable } from './format-table.ts';

/** Every tape: typed, read off the body, and by how much they differ; what is estimated was not typed. */
export function describeTapes(
  tapes: readonly ReportTape[],
  unit: DisplayUnit,
  { words: { tapes: words }, numbers }: Reader,
): string {
  const result = ({ status, spread }: ReportTape): string =>
    status === 'estimated' && spread !== undefined
      ? words.estimatedWithin(numbers.length(spread, unit, { bare: true }))
      : words[status];
  const rows = tapes.map((tape) => [
    tape.id,
    words.kinds[tape.kind],
    tape.status === 'estimated' ? '–' : numbers.length(tape.target, unit),
    numbers.length(tape.got, unit),
    tape.status === 'estimated' ? '–' : signed(tape.got - tape.target, 2, numbers),
    result(tape),
  ]);
  return formatTable(
    [
      { title: words.tape },
      { title: words.kind },
      { title: words.typed, align: 'right' },
      { title: words.body, align: 'right' },
      { title: words.off, align: 'right' },
      { title: words.result },
    ],
    rows,
  );
}

/** Where the waist was tied, how well the shape is known, and the measure that would tell most about it. */
export function describeUncertainty(
  { waist = USUAL_WAIST }: BodyInput,
  { spread, suggestions: [next] }: BodyUncertainty,
  { words: { knowledge: words }, numbers, say }: Reader,
): string {
  const known = words.known(words.waists[waist], numbers.fixed(spread, 1));
  const measure = next && findMeasure(next.id);
  if (!measure) return known;
  const advice = words.next(say(measure.name), next.id, numbers.fixed(next.after, 1));
  return `${known}\n${advice}`;
}

/** One block per issue: severity, field, code, then the sentence. Errors come first. */
export function describeIssues(issues: readonly Issue[], { say, words }: Reader): string {
  if (issues.length === 0) return words.issues.none;
  const names: Readonly<Record<Severity, string>> = words.issues;
  const width = 2 + Math.max(names.error.length, names.warning.length);
  const ordered = [
    ...issues.filter((issue) => issue.severity === 'error'),
    ...issues.filter((issue) => issue.severity === 'warning'),
  ];
  return ordered
    .map(({ severity, path, code, message }) => {
      const place = path === '' ? '' : `${path}  `;
      return `${names[severity].padEnd(width)}${place}(${code})\n${' '.repeat(width)}${say(message)}`;
    })
    .join('\n');
}

/** The verdict on a form as in the app, with its worst place. */
export function describeVerdict({ message, worst }: Verdict, { say, words }: Reader): string {
  const place = worst ? ` ${words.report.worst(say(worst.name))}` : '';
  return `${say(message)}${place}`;
}

/** Panels with the strain their cloth feels, the worst seam, every level, and the time of each stage. */
export function describeReport(report: Report, unit: DisplayUnit, reader: Reader): string {
  const { numbers } = reader;
  const words = reader.words.report;
  const panels = formatTable(
    [
      { title: words.panel },
      { title: words.area, align: 'right' },
      { title: words.strain, align: 'right' },
      { title: words.shrink, align: 'right' },
      { title: words.stretch, align: 'right' },
      { title: words.grain, align: 'right' },
      { title: words.bestGrain, align: 'right' },
    ],
    report.panels.map(({ id, areaFlat, strain, cloth }) => [
      id,
      numbers.fixed(areaFlat / 100, 0),
      numbers.fixed(100 * strain.p95, 2),
      signed(100 * strain.min, 2, numbers),
      signed(100 * strain.max, 2, numbers),
      turnInDegrees(cloth.grainAngle, numbers),
      turnInDegrees(cloth.bestGrain.angle, numbers),
    ]),
  );
  const levels = formatTable(
    [
      { title: words.level },
      { title: words.onBody, align: 'right' },
      { title: words.onPanels, align: 'right' },
      { title: words.off, align: 'right' },
    ],
    report.levels.map(({ id, length3d, lengthFlat }) => [
      id,
      numbers.length(length3d, unit),
      numbers.length(lengthFlat, unit),
      signed(lengthFlat - length3d, 3, numbers),
    ]),
  );
  return [panels, '', levels, '', describeSeams(report, reader), describeTimes(report, reader)].join('\n');
}

/** From upright, counter-clockwise. */
function turnInDegrees(angle: number, numbers: Numbers): string {
  return signed((180 * angle) / Math.PI - 90, 0, numbers);
}

function describeSeams({ seams }: Report, { words, numbers }: Reader): string {
  const unequal = Math.max(0, ...seams.map(({ lengthsFlat: [a, b] }) => Math.abs(a - b)));
  const gap = Math.max(0, ...seams.map((seam) => seam.maxMarkGap));
  return words.report.seams(seams.length, numbers.fixed(unequal, 4), numbers.fixed(gap, 4));
}

function describeTimes(report: Report, { words, numbers }: Reader): string {
  const { volumeL } = report.body;
  const names: Readonly<Record<string, string>> = words.stages;
  const times = Object.entries(report.timingsMs).map(
    ([stage, ms]) => `${names[stage] ?? stage} ${numbers.fixed(ms / 1000, 2)} s`,
  );
  return words.report.made(numbers.fixed(volumeL, 1), times.join(', '));
}

function signed(value: number, decimals: number, { mark }: Numbers): string {
  const text = value.toFixed(decimals);
  return mark(/^-?[0.]+$/.test(text) ? text.replace('-', '') : value > 0 ? `+${text}` : text);
}
