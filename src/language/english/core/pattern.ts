import { mmPerInch } from '../../../core/base/index.ts';
import type { PatternPhrases } from '../../../core/pattern/index.ts';
import { allowanceInWords } from '../../allowance-in-words.ts';
import type { Entries } from '../../catalogue.ts';
import { joinNames } from '../../join-names.ts';

const sides = { right: "wearer's right", left: "wearer's left", centre: 'centre' } as const;

const cutTwins = {
  mirrored: 'cut a right and a left, face up:\nright as it lies, left turned over',
  alike: 'cut 2 alike, face up:\na right and a left',
} as const;

/** What stands on pieces and is wrong with them. */
export const pattern: Entries<PatternPhrases> = {
  'material.shell': 'outer cloth',
  'material.webs': 'cloth for webs',
  'material.arms': 'outer cloth (arms)',
  'material.covers': 'cloth for covers',
  'material.card': 'card',
  'material.foam': 'foam',
  'material.test-tube': 'outer cloth, before the rest',
  'material.trial': 'cheap cloth, to try on',
  'material.gauge': 'stiff card',
  'material.wadding': 'wadding',
  'material.shell.short': 'shell',
  'material.webs.short': 'webs',
  'material.arms.short': 'arms',
  'material.covers.short': 'covers',
  'material.card.short': 'card',
  'material.foam.short': 'foam',
  'material.test-tube.short': 'test-tube',
  'material.trial.short': 'trial',
  'material.gauge.short': 'gauges',
  'material.wadding.short': 'pads',
  'side.right': sides.right,
  'side.left': sides.left,
  'side.centre': sides.centre,
  'side.right.short': 'right',
  'side.left.short': 'left',
  'side.centre.short': 'centre',
  'edge.base': 'base',
  'edge.neck': 'neck',
  'edge.armhole': 'armhole',
  'edge.wrist': 'wrist',
  'edge.top': 'top',
  'edge.bottom': 'bottom',
  'edge.side': 'side',
  'edge.sleeve': 'sleeve',
  'edge.foot': 'foot',
  'edge.lid': 'lid',
  'edge.front': 'front',
  'edge.back': 'back',
  'edge.left': 'left',
  'edge.right': 'right',
  'edge.up': 'up',
  'edge.down': 'down',
  'edge.outer': 'outer',
  'edge.inner': 'inner',
  'edge.base plate': 'base plate',
  'edge.neck plate': 'neck plate',
  'edge.shoulder seam': 'shoulder seam',
  'allowance.shoulder': 'Shoulder seams',
  'allowance.side': 'Side seams',
  'allowance.closing': 'Closing seam, usually the centre back',
  'allowance.armhole': 'Armhole edges',
  'allowance.neck': 'Top edge of the neck',
  'allowance.base': 'Base edge',
  'allowance.wrist': 'Wrist edges',
  'allowance.web': 'Edges of webs',
  'allowance.tie': 'Ends of ties and straps',
  'allowance.cover': 'Covers of plates',

  'piece.grain': 'grain',
  'piece.side-and-cut': ({ side }) => `${sides[side]} · cut 1, face up`,
  'piece.side-and-cut-short': ({ side }) => `${sides[side]} · cut 1`,
  'piece.cut': 'cut 1, face up',
  'piece.cut-twins': ({ kind }) => cutTwins[kind],
  'piece.cut-twins-short': '1 right, 1 left',
  'piece.letters-of-twins': 'letters: right/left',
  'piece.both': ({ names }, { say }) => names.map(say).reduce(joinNames),
  'piece.revision': ({ revision }) => `rev ${revision}`,
  'piece.allowance': ({ allowance }, tongue) => `Allowance ${allowanceInWords(allowance, tongue)}`,
  'piece.no-allowance': 'No allowance: cut on the line',
  'piece.allowance-of': ({ edges, allowance }, tongue) =>
    `at ${edges.map(tongue.say).join(', ')}: ${allowanceInWords(allowance, tongue)}`,
  'piece.edge-middle': ({ edge }, { inSentence }) => `mid ${inSentence(edge)}`,
  'piece.edge-mark': ({ edge, number }, { say }) => `${say(edge)} ${number}`,
  'piece.sheet': ({ project, material }, { say }) => `${project} – ${say(material)}`,
  'piece.sheet-of-all': 'Pieces',
  'test-bars.how': ({ width, height }, { fixed }) =>
    [
      'Measure these before cutting:',
      '100 mm square',
      `Whole drawing ${fixed(width, 1)} × ${fixed(height, 1)} mm`,
      `= ${fixed(width / mmPerInch, 2)} × ${fixed(height / mmPerInch, 2)} in`,
      'If a bar is off by more than 0.5 mm,',
      'print or import again at 100 %.',
    ].join('\n'),

  'piece.allowance-out-of-range': ({ allowance, smallest, largest }, { exactLength }) =>
    `A seam allowance of ${exactLength(allowance)} cannot be used: give ${exactLength(smallest)} to ${exactLength(largest)} (an opening may also have 0).`,
  'piece.crosses-itself': ({ piece, times }, { say }) =>
    `Piece “${say(piece)}” overlaps itself: its outline crosses ${times} times.`,
  'piece.without-area': ({ piece, area, least }, { say, fixed }) =>
    `Piece “${say(piece)}” has almost no area: ${fixed(area, 1)} mm², at least ${least} mm² is needed.`,
  'piece.inside-out': ({ piece }, { say }) =>
    `Piece “${say(piece)}” came out mirror-wise: its outline runs clockwise.`,
  'piece.covered-by-allowance': ({ piece, overlap }, { say, small }) =>
    `Piece “${say(piece)}” is too narrow: its allowances folded in would cover it and overlap by ${small(overlap)} at its widest place. Use a smaller allowance or fewer panels.`,
  'piece.hollow-closed': ({ piece, area }, { say, fixed }) =>
    `The allowance of piece “${say(piece)}” runs into itself across a hollow of its outline, leaving a hole of ${fixed(area, 0)} mm². Use a smaller allowance there.`,
  'piece.allowances-overlap': ({ piece, length }, { say, small }) =>
    `On piece “${say(piece)}” the allowances on both sides of a hollow overlap for ${small(length)}: snip between the sew lines there, or use a smaller allowance.`,
  'piece.no-room-for-notes': ({ piece }, { say }) => `No room for what to do with piece “${say(piece)}”.`,
  'piece.no-room-for-notch': ({ piece, notch }, { say }) =>
    `No room for the name of notch ${say(notch)} on piece “${say(piece)}”.`,
  'piece.no-room-for-letter': ({ piece, edge }, { say }) =>
    `No room for “${say(edge)}” along its edge on piece “${say(piece)}”.`,
  'piece.no-room-for-level': ({ piece, level }, { say }) =>
    `No room for the name of level “${say(level)}” on piece “${say(piece)}”.`,
  'piece.no-room-for-label': ({ piece }, { say }) =>
    `No room for the label; write the name by hand on piece “${say(piece)}”.`,
  'piece.label-shortened': ({ piece }, { say }) => `Only a short label fits on piece “${say(piece)}”.`,
  'piece.grain-line-short': ({ piece, wanted, found }, { say, small }) =>
    `A grain line of ${small(wanted)} is wanted, only ${small(found)} fits on piece “${say(piece)}”.`,
  'piece.sheet-width': ({ width, least, most }, { exactLength }) =>
    `A sheet ${exactLength(width)} wide cannot be used: give ${exactLength(least)} to ${exactLength(most)}.`,
  'piece.gap': ({ gap, least, most }, { exactLength }) =>
    `A gap of ${exactLength(gap)} between pieces cannot be used: give ${exactLength(least)} to ${exactLength(most)}.`,
  'piece.wider-than-sheet': ({ piece, width, sheet, usable }, { say, small, exactLength }) =>
    `Piece “${say(piece)}” is ${small(width)} wide with its allowances; on a sheet of ${exactLength(sheet)} only ${exactLength(usable)} can be used.`,
  'test-bars.wider-than-sheet': ({ width, sheet, usable }, { small, exactLength }) =>
    `The block of test bars is ${small(width)} wide with its allowances; on a sheet of ${exactLength(sheet)} only ${exactLength(usable)} can be used.`,
};
