import type { DisplayUnit } from '../core/base/index.ts';
import type { ReportInside } from '../core/form/index.ts';
import { insidePhrase, type MaterialLine, nameOfPlace } from '../core/inside/index.ts';
import type { Reader } from './create-reader.ts';
import { formatTable } from './format-table.ts';

/** What the filled form will measure, its pole and stand, and the list to buy by. */
export function describeInside(inside: ReportInside, unit: DisplayUnit, reader: Reader): string {
  const { say, words } = reader;
  return [
    describeLevels(inside, unit, reader),
    '',
    ...describeHolding(inside, unit, reader),
    '',
    describeMaterials(inside, unit, reader),
    '',
    words.inside.takeCare,
    ...inside.cautions.map(({ title, text }) => `${say(title)}: ${say(text)}`),
  ].join('\n');
}

function describeLevels(
  { levels }: ReportInside,
  unit: DisplayUnit,
  { say, words, numbers }: Reader,
): string {
  const length = (mm: number): string => numbers.length(mm, unit, { bare: true });
  const size = ({ width, depth }: { readonly width: number; readonly depth: number }) =>
    `${length(width)} × ${length(depth)}`;
  return formatTable(
    [
      { title: words.inside.filled },
      { title: words.inside.body(unit), align: 'right' },
      { title: words.inside.free, align: 'right' },
      { title: words.inside.held, align: 'right' },
      { title: words.inside.mostOff, align: 'right' },
      { title: words.inside.where },
      { title: words.inside.girth, align: 'right' },
    ],
    levels.map(({ id, body, free, held, finished }) => [
      id,
      size(body),
      size(free),
      size(held),
      (held.deviation > 0 ? '+' : '') + numbers.fixed(held.deviation, 1),
      say(nameOfPlace(held.where)),
      length(finished.girth),
    ]),
  );
}

/** How webs, pole and stand hold it, and what was taken off the panels. */
function describeHolding(
  { pole, stand, webPlaces, levels, strapGains, parts }: ReportInside,
  unit: DisplayUnit,
  { say, words: { inside: words }, numbers }: Reader,
): string[] {
  const websAndPole = webPlaces === 'seams' ? words.websInSeams : words.websOnPanels;
  const taken = levels
    .filter(({ takenOff }) => takenOff > 0)
    .map(({ id, takenOff }) => `${id} ${numbers.fixed(takenOff, 1)} mm`);
  const describePart = ({ name, isIn, isNeeded, hours, gain }: ReportInside['parts'][number]): string =>
    [
      (isIn ? words.partIn : words.partOut)(say(name), numbers.fixed(hours, 1)),
      ...(isNeeded ? [say(insidePhrase('part.needed'))] : []),
      ...(gain ? [say(insidePhrase('part.gain', gain))] : []),
    ].join(' ');
  return [
    websAndPole(numbers.length(pole.sleeveFlatWidth, unit), numbers.length(pole.insideForm, unit)),
    ...strapGains.map(({ text }) => say(text)),
    ...parts.map(describePart),
    words.stand(
      numbers.fixed(stand.tipAngleDeg, 1),
      numbers.fixed(stand.pushForce, 0),
      numbers.fixed(stand.lean, 1),
      numbers.fixed(stand.ballast, 1),
    ),
    ...(taken.length > 0 ? [words.takenOff(taken.join(', '))] : []),
  ];
}

/** Cloth is told to the steps it is sold by, thread and filling are not. */
function decimalsOf(unit: MaterialLine['unit'], quantity: number): number {
  if (unit === 'pieces') return 0;
  return quantity < 10 ? 2 : 1;
}

function describeMaterials(
  { materials }: ReportInside,
  unit: DisplayUnit,
  { say, words: { inside: words }, numbers }: Reader,
): string {
  return formatTable(
    [{ title: words.toBuy }, { title: '', align: 'right' }, { title: '' }, { title: words.note }],
    materials.map(({ name, quantity, unit: of, note }) => [
      say(name),
      of === 'mm' ? numbers.length(quantity, unit) : numbers.fixed(quantity, decimalsOf(of, quantity)),
      of === 'mm' ? '' : words.units[of],
      say(note),
    ]),
  );
}
