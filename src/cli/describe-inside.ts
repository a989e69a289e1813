import { type DisplayUnit, formatLength, wordsOf } from '../core/base/index.ts';
import type { ReportInside } from '../core/form/index.ts';
import { nameOfPlace } from '../core/supports/index.ts';
import { formatTable } from './format-table.ts';

/** What the filled form will measure, its pole and stand, and the list to buy by. */
export function describeInside(inside: ReportInside, unit: DisplayUnit): string {
  const length = (mm: number): string => formatLength(mm, unit, { bare: true });
  const levels = formatTable(
    [
      { title: 'filled' },
      { title: `body w × d ${unit}`, align: 'right' },
      { title: 'nothing inside', align: 'right' },
      { title: 'with webs', align: 'right' },
      { title: 'most off mm', align: 'right' },
      { title: 'where' },
      { title: 'tape over cloth', align: 'right' },
    ],
    inside.levels.map(({ id, body, free, held, finished }) => [
      id,
      `${length(body.width)} × ${length(body.depth)}`,
      `${length(free.width)} × ${length(free.depth)}`,
      `${length(held.width)} × ${length(held.depth)}`,
      (held.deviation > 0 ? '+' : '') + held.deviation.toFixed(1),
      wordsOf(nameOfPlace(held.where)),
      length(finished.girth),
    ]),
  );
  const materials = formatTable(
    [{ title: 'to buy' }, { title: '', align: 'right' }, { title: '' }, { title: 'note' }],
    inside.materials.map(({ name, quantity, unit: of, note }) => [
      wordsOf(name),
      of === 'mm' ? formatLength(quantity, unit) : quantity.toFixed(of === 'pieces' ? 0 : 1),
      of === 'mm' ? '' : of,
      wordsOf(note),
    ]),
  );
  const { pole, stand, webPlaces } = inside;
  const taken = inside.levels.filter(({ takenOff }) => takenOff > 0);
  const takenOff = taken.map(({ id, takenOff: mm }) => `${id} ${mm.toFixed(1)} mm`).join(', ');
  const places = webPlaces === 'seams' ? 'sewn into the seams' : 'sewn to lines drawn on the panels';
  const words = [
    `Webs ${places}. Pole sleeve ${formatLength(pole.sleeveFlatWidth, unit)} wide laid flat; ${formatLength(pole.insideForm, unit)} of pole between the plates.`,
    `Stand: tips at ${stand.tipAngleDeg.toFixed(1)}° or a push of ${stand.pushForce.toFixed(0)} N at bust height; the pole leans ${stand.lean.toFixed(1)} mm. Ballast needed: ${stand.ballast.toFixed(1)} kg.`,
    ...(taken.length > 0 ? [`Taken off the panels for growth and layers: ${takenOff}.`] : []),
  ];
  const cautions = inside.cautions.map(({ title, text }) => `${wordsOf(title)}: ${wordsOf(text)}`);
  return [levels, '', ...words, '', materials, '', 'Take care', ...cautions].join('\n');
}
