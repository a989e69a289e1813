import { mmPerInch, type Phrase, type Say } from '../../../core/base/index.ts';
import type { SheetPhrases } from '../../../core/sheet/index.ts';
import { allowanceInWords } from '../../allowance-in-words.ts';
import type { Entries } from '../../catalogue.ts';
import { ruled } from '../../ruled.ts';

const sides = { right: "wearer's right", left: "wearer's left", centre: 'centre' } as const;
const ways = { across: 'across the page', up: 'up the page' } as const;
const machineLengths = { bladeOffset: 'A blade offset', overcut: 'An overcut', kerf: 'A kerf' } as const;

const join = {
  overlap:
    '3. Only pages with diamonds on a line are joined. Cut the upper or left page edge off along that line and lay it on the strip of its neighbour, so that both halves of each diamond close; equal numbers meet. Tape flat.',
  butt: '3. Only pages with diamonds on a line are joined. Cut both pages along that line, put them edge to edge, so that both halves of each diamond close; equal numbers meet. Tape flat.',
} as const;

const cutTwins = { mirrored: 'cut a right and a left', alike: 'cut 2 alike' } as const;

function pagesInWords(names: readonly string[]): string {
  if (names.length === 0) return 'no page';
  return names.length === 1 ? `page ${names[0]}` : `pages ${names.join(', ')}`;
}

const edges = { left: 'left edge', right: 'right edge', bottom: 'lower edge', top: 'upper edge' } as const;

const projectedLines = {
  cut: 'cut along here',
  notch: 'notches',
  sew: 'seams',
  level: 'levels and lines',
  grain: 'grain',
} as const;
const projected = {
  top: 'upper side',
  right: 'right side',
  bottom: 'lower side',
  left: 'left side',
  diagonal: 'diagonal',
} as const;

interface Head {
  readonly piece: Phrase;
  readonly material: Phrase;
  readonly count: number;
  readonly areSides: boolean;
}

function headOf({ piece, material, count, areSides }: Head, say: Say): string {
  return `${say(piece)} · cut ${areSides ? 'a right and a left' : count} · ${say(material)}`;
}

/** What stands on printed pages, and what is wrong with paper, printer and cutting machine. */
export const sheet: Entries<SheetPhrases> = {
  'paper.a4': 'A4',
  'paper.letter': 'Letter',
  'paper.both': 'A4 or Letter',
  'paper.a3': 'A3',
  'paper.ledger': 'Tabloid (11 × 17 in)',
  'paper.a0': 'A0',
  'paper.roll24': '24 in roll',
  'paper.roll36': '36 in roll',
  'paper.mat12x12': '12 × 12 in mat',
  'paper.mat12x24': '12 × 24 in mat',
  'paper.mat18x24': '18 × 24 in mat',
  'paper.mat24x36': '24 × 36 in mat',

  'cover.title': ({ project }) => `Cover – ${project}`,
  'cover.true-size': ({ paper }, { say }) =>
    `For ${say(paper)}: print at 100 % (actual size), never “fit” or “shrink”.`,
  'cover.corrected': ({ across, up }, { fixed }) =>
    `Corrected for one printer: ${fixed(100 * across, 2)} % across, ${fixed(100 * up, 2)} % up the page.`,
  'cover.bar': ({ length, way }, { plain, fixed }) =>
    `${plain(length / 10, 1)} cm = ${fixed(length / mmPerInch, 3)} in ${ways[way]}`,
  'cover.square': [
    'The square is 10 cm on every side,',
    'the bars beside it are 4 in long.',
    '',
    'Measure it and both long bars',
    'before you print the rest.',
    'They may be off by 0.5 mm,',
    'no more.',
  ].join('\n'),
  'cover.if-off': ({ across, up }) =>
    `1. If a long bar is not ${across} mm across and ${up} mm up the page, have the pages made again from the two lengths you measured (print correction); that cures an inexact printer in both directions.`,
  'cover.print-the-rest': ({ pages }) =>
    `2. Print the other pages the same way (${pages === 1 ? '1 page' : `${pages} pages`} of pattern and a key that shows where each belongs). Right and left pieces that are alike are drawn once: cut a right and a left. What ruler and compass draw stands on the sheet of numbers.`,
  'cover.join': ({ joint }) => join[joint],
  'cover.measure-joints':
    '4. Before cutting, measure from cross to cross over the joints: the distance is printed beside the crosses. It may be off by 1 mm.',
  'cover.lines':
    'Cut along the solid outline; the dashed line is the seam. Short cuts (or points) at the edge are notches. Notches of equal letter and number meet; of F3/G3 the first is for the right piece, the second for the left one. They are single in front seams, double at the back, triple at the centre back.',
  'cover.clips':
    'Short lines that end before the seam show where to clip the allowance after sewing: no closer to the stitches than they reach.',
  'cover.blades': 'Blades: cut away from your hands and close a rotary cutter whenever you put it down.',
  'key.title': ({ project }) => `Key – ${project}`,
  'key.title-continued': ({ project }) => `Key, continued – ${project}`,
  'key.heading': 'Key to the pages',
  'key.heading-continued': 'Key to the pages, continued',
  'key.count': ({ pages, project }) => `${pages} pages: ${project}`,
  'key.told': ({ pieces }) =>
    `${pieces === 1 ? '1 more piece needs' : `${pieces} more pieces need`} no page: see the sheet of numbers`,
  'key.row': ({ piece, side, material, pages, twins }, { say }) =>
    `${say(piece)} · ${twins ? cutTwins[twins] : `${sides[side]} · cut 1`} · ${say(material)} · ${pagesInWords(pages)}`,
  'take-care.title': ({ project }) => `Take care – ${project}`,
  'take-care.heading': 'Take care',
  'take-care.heading-continued': 'Take care, continued',
  'numbers.title': ({ project }) => `Sheet of numbers – ${project}`,
  'numbers.heading': 'Sheet of numbers: pieces without a page',
  'numbers.heading-continued': 'Sheet of numbers, continued',
  'numbers.how':
    'These pieces are cut along another piece, or drawn straight onto cloth or card with ruler and compass: the sketches are not to size. Grain, or flutes of card, run up the sheet; cut the cloth face up.',
  'numbers.piece': (head, { say }) => headOf(head, say),
  'numbers.layer': ({ of, hasLine, ...head }, { say }) =>
    `${headOf(head, say)} · along ${hasLine ? 'the line for layer 2 on' : 'the outline of'} “${say(of)}”, its flutes across those of layer 1`,
  'numbers.cover': ({ of, allowance, hasHoles, ...head }, tongue) =>
    `${headOf(head, tongue.say)} · trace layer 1 of “${tongue.say(of)}” with ${allowanceInWords(allowance, tongue)} allowance all round${hasHoles ? `; trace its holes for pole, filling, tabs or peg too, cut each as a star from its middle to ${tongue.small(1)} from the line, a slot along its middle, and turn the points in` : ''}`,
  'numbers.length': ({ length, unit }, tongue) => ruled(length, unit, tongue),
  'numbers.rectangle': ({ width, height, unit }, tongue) =>
    `rectangle, cut ${ruled(width, unit, tongue)} wide, ${ruled(height, unit, tongue)} high`,
  'numbers.circle': ({ diameter, unit }, tongue) =>
    `circle, cut ${ruled(diameter, unit, tongue)} across; compass at ${ruled(diameter / 2, unit, tongue)}`,
  'numbers.no-allowance': 'no allowance',
  'numbers.allowance': ({ allowance }, tongue) =>
    `with ${allowanceInWords(allowance, tongue)} allowance all round`,
  'numbers.allowances': ({ left, right, bottom, top, unit }, tongue) =>
    `with allowance: left ${ruled(left, unit, tongue)}, right ${ruled(right, unit, tongue)}, lower ${ruled(bottom, unit, tongue)}, upper ${ruled(top, unit, tongue)}`,
  'numbers.side': ({ side, edge, notches, unit }, tongue) => {
    const places = notches.map(({ name, at }) => `${name} at ${ruled(at, unit, tongue)}`).join(', ');
    const from = side === 'left' || side === 'right' ? 'from below' : 'from the left';
    return `${edges[side]}: ${tongue.say(edge)}${notches.length > 0 ? `; notches, ${from}: ${places}` : ''}`;
  },
  'numbers.notch-round': ({ name, hour }) => `notch ${name} at ${hour} o’clock`,
  'numbers.line': ({ line, isUpright, at, spans: parts, unit }, tongue) => {
    const name = tongue.say(line) || 'line';
    const a = ruled(at, unit, tongue);
    const spans = parts
      .map(({ from, to }) => `${ruled(from, unit, tongue)} – ${ruled(to, unit, tongue)}`)
      .join(', ');
    return isUpright
      ? `${name}: upright, ${a} from the left, ${spans} up`
      : `${name}: level, ${a} up, ${spans} from the left`;
  },
  'projector.how': ({ side, square, unit }, tongue) =>
    `Square of ${ruled(side, unit, tongue)}, in squares of ${ruled(square, unit, tongue)}\nMeasure its four sides and the dashed diagonal on the table.\nWhere they are off: move the projector, or type them in and make this file again.\nGrain runs up. Look away from the lens.`,
  'projector.frames': ({ side, unit, pages }, tongue) =>
    `Drawn for the square you measured: it now comes out ${ruled(side, unit, tongue)} on every side.\nMeasure it once more. Then show the ${pages === 1 ? 'next page' : `next ${pages} pages`} at the same zoom, their four crosses where its corners are: do not scroll or move the projector.`,
  'projector.line': ({ kind }) => projectedLines[kind],
  'projector.far-off': ({ line, length, wanted, largest }, { plain, exactLength }) =>
    `The ${projected[line]} of the projected square measures ${exactLength(length)} instead of ${exactLength(wanted)}: more than ${plain(100 * largest, 0)} % cannot be corrected. Set the projector to the size of the square first.`,
  'projector.no-square': ({ diagonal }, { exactLength }) =>
    `No square gives these lengths: with a diagonal of ${exactLength(diagonal)} the four sides do not meet. Measure again, the diagonal from the upper left to the lower right.`,
  'numbers.layer-line': 'layer 2: cut along here',
  'labels.title': ({ project }) => `Labels – ${project}`,
  'labels.how': 'Labels to sew in: cut along the solid lines, turn under to the dashed ones.',
  'labels.count': ({ pieces }) => `${pieces} pieces`,

  'joint.glue': ({ page }) => `glue here · ${page} lies on this strip, up to the line`,
  'joint.glue-short': ({ page }) => `${page} lies on this strip`,
  'joint.lay-on': ({ page }) => `cut off along the line · lay this edge on ${page}`,
  'joint.edge-to-edge': ({ page }) => `cut off along the line · ${page} comes edge to edge`,
  'joint.to-cross': ({ page }) => `joined, to the cross on ${page}:`,
  'joint.to-cross-of-page': ({ page }) => `to the cross on ${page}:`,
  'joint.cross-distance': ({ length }, { fixed }) => `${length} mm = ${fixed(length / mmPerInch, 2)} in`,
  'page.name': ({ number }) => `page ${number}`,
  'page.number': ({ number, pages }) => `page ${number} of ${pages}`,

  'paper.unknown': ({ paper, known }) =>
    `There is no paper called “${paper}”. There are: ${known.join(', ')}.`,
  'paper.margin': ({ margin, least }, { exactLength }) =>
    `A margin of ${exactLength(margin)} cannot be used: give ${exactLength(least)} or more.`,
  'paper.overlap': ({ overlap, least, most }, { exactLength }) =>
    `An overlap of ${exactLength(overlap)} cannot be used: give ${exactLength(least)} to ${exactLength(most)}, or butt joints.`,
  'paper.too-small': ({ paper, margin, left, least }, { say, small, exactLength }) =>
    `${say(paper)} with margins of ${exactLength(margin)} leaves ${small(left)} for the pattern; at least ${exactLength(least)} is needed. Use smaller margins or larger paper.`,
  'print.far-off': ({ bar, measured, off, largest }, { fixed }) =>
    `A bar of ${bar} mm that measures ${measured} mm is off by ${fixed(100 * off, 1)} %; at most ${100 * largest} % (${fixed(bar * (1 - largest), 1)} to ${fixed(bar * (1 + largest), 1)} mm) can be corrected. That is no inexact printer but scaling to fit the paper: print again at 100 % (actual size) and measure again.`,
  'cutter.letters-lacking': ({ letters }) =>
    `The letters of single strokes lack ${letters.map((letter) => `“${letter}”`).join(', ')}: boxes stand in their place. Use names in Latin letters, or filled letters.`,
  'cutter.length': ({ what, length, most }, { exactLength }) =>
    `${machineLengths[what]} of ${exactLength(length)} cannot be used: give 0 to ${exactLength(most)}.`,
  'cutter.would-divide': ({ pieces, width, height }, { say, small }) =>
    `The mat is too small for ${pieces.map((piece) => `“${say(piece)}”`).join(', ')}. A mat of ${small(width)} × ${small(height)} holds each whole. Cloth cut in parts would have no allowance where they meet: have pieces divided only for templates.`,
  'cutter.divided-boards': ({ pieces, lap }, { say, exactLength }) =>
    `Larger than the mat, so cut in parts: ${pieces.map((piece) => `“${say(piece)}”`).join(', ')}. Put the parts edge to edge and glue a strip of the same card over the joint that reaches ${exactLength(lap)} to both sides; part the second layer elsewhere.`,
  'cutter.mat-too-small': ({ width, least }, { exactLength }) =>
    `A mat ${exactLength(width)} wide is too small for pieces of a form: at least ${exactLength(least)}.`,
};
