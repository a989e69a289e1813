import type { MakingPhrases } from '../../../core/making/index.ts';
import type { Entries } from '../../catalogue.ts';
import { settingSteps } from './making-setting.ts';
import { sewingSteps } from './making-sewing.ts';

const plates = {
  base: 'base plate',
  neck: 'neck plate',
  armholeRight: 'right armhole plate',
  armholeLeft: 'left armhole plate',
} as const;
const edges = {
  sleeve: 'on the sleeve',
  line: 'on its line',
  front: 'front edge',
  back: 'back edge',
} as const;
const lacedEdges = {
  base: 'edge of the base',
  neck: 'edge of the neck',
  armhole: 'edge of the armhole',
  wrist: 'edge of the wrist',
  cap: 'upper edge of the arm',
} as const;
const tubeSeams = {
  closing: 'test tube, closing seam',
  bottom: 'test tube to its bottom',
  top: 'test tube to its top',
} as const;

export const making: Entries<MakingPhrases> = {
  'work.optional': '(may be left out)',
  'work.after': ({ steps }) => `(after ${steps.join(', ')})`,
  // Names of pieces have commas of their own.
  'work.pieces': ({ pieces }, { say }) => `Pieces: ${pieces.map(say).join('; ')}.`,
  'work.seam': ({ seam, lengths, marks, closesRing, note }, { say, length }) => {
    const words = [sayLengths(lengths.map(length)), countMarks(marks)];
    if (closesRing) words.push('no longer lies flat after it');
    if (note) words.push(say(note));
    return `${say(seam)}: ${words.join(', ')}`;
  },
  'work.check': ({ check, value }, { say }) => `${say(check)}: ${say(value)}`,
  ...sewingSteps,
  ...settingSteps,
  'phase.prepare': 'Before cutting the form',
  'phase.cut': 'Cutting and marking',
  'phase.plates': 'Making the plates',
  'phase.sew': 'Sewing',
  'phase.arms': 'Arms and pin cushions',
  'phase.pole': 'Setting in supports, pole and upper plates',
  'phase.fill': 'Filling',
  'phase.finish': 'Closing and finishing',

  'step.use.title': 'Settle what the form is for, with pole, collars and foot in your hand',
  'step.use.settle':
    'Settle these first and type them under Inside, since they change the pieces: how heavy the heaviest garment is, whether pins go into the form, whether it gets arms, and whether a cover goes over it.',
  'step.use.pole':
    'Measure the pole with a caliper before anything is cut: tubes are seldom as thick as they are called. A telescopic pole is measured where it is to stand inside the form.',
  'step.use.load':
    'What carries: the garment lies on the shoulders, they stand on the filling, the filling on the base plate, that on a disc of plywood (8 cm, 3 1/8 in, across or more) and a collar, a ring screwed tight round the pole; the pole stands in its foot. A second collar goes under the neck plate. Screw both collars on now and push with your whole weight: neither may slip.',
  'step.use.height':
    'The foot must come off the pole again: the base plate is slid on from there at the end.',
  'step.use.arrows': ({ push }, { mass }) =>
    `The arrows in the picture: the heaviest garment; the push at which the form tips (as strong as ${mass(push)} press); the tilt at which it is tried in the end.`,

  'step.measure.title': 'Measure twice, and look at the body',
  'step.measure.how':
    'Measure over the underwear that will be worn, standing at ease, with neck, shoulder and bust points marked.',
  'step.measure.compare':
    'Type what you read, measure a second time, and correct what is marked until nothing contradicts. Compare widths, depths and the side view with the person.',

  'step.cloth.title': 'Wash, press and fuse the cloth',
  'step.cloth.wash': 'Wash and press the cloth, and pull its threads square.',
  'step.cloth.which': ({ hasArms, hasCovers }) =>
    `Interfacing, a thin cloth with glue on one side that an iron melts (to fuse it), goes onto the wrong side, the inside, of the cloth for shell${hasArms ? ', arms' : ''} and test tube. Webs, ties, straps${hasCovers ? ', sleeve and covers' : ' and sleeve'} go without.`,
  'step.cloth.fuse':
    'Fuse the interfacing to oblongs of cloth larger than the pieces, and let them cool flat. Fused cloth shrinks, so no piece is cut before.',
  'step.cloth.square': ({ side }, { length, small }) =>
    `Draw a square of ${length(side)} on one oblong before fusing and measure it after: if either side is off by more than ${small(1)} the cloth still shrinks: steam and press all of it once more, and draw a new square.`,

  'step.test-tube.title': 'Sew, stuff, weigh and measure the test tube',
  'step.test-tube.why':
    'Stuffed cloth grows, each cloth by its own share, and the panels are cut for that: so this comes before the pattern of the form is printed. Under Cutting, tick only “test tube” in “To cut”, take the pattern, and measure its bars.',
  'step.test-tube.weigh': ({ isAssumed, low, high }) =>
    isAssumed
      ? `Weigh your bag of fibre before and after, and type what went in under Inside, “Test tube”: all masses below are then reckoned by your own hand. Until then they assume ${low} to ${high} g a litre (an assumption, no source; practice reports 2.5 to 5 kg for a torso).`
      : 'Weigh your bag of fibre before and after. What is typed in for it under Inside, “Test tube”, is what all masses below are reckoned by.',
  'step.test-tube.nothing-typed': 'Nothing is typed in yet: nothing is taken off the panels for growth.',
  'step.test-tube.reckoned': ({ growth }, { fixed }) =>
    `The filled form is worked out for this cloth, and the panels are cut for it: ${fixed(100 * growth, 2)} % of growth on the test tube.`,
  'step.test-tube.usual-cloth': ({ below, above }, { small }) =>
    `Nothing is typed in yet: the panels are cut for a usual cloth. Of one twice as firm, or half, girths come out up to ${small(below)} smaller or ${small(above)} larger than foretold, until filled by the tape at the waist.`,
  'step.test-tube.taken-off': ({ growth }, { fixed }) =>
    `Taken off the panels: ${fixed(100 * growth, 2)} % of growth on the test tube.`,

  'step.print.title': 'Print the first page and measure its bars',
  'step.print.cover': ({ paper }, { say }) =>
    `Print the cover alone on ${say(paper)}, at actual size, never “fit to page”, and measure both long bars. If they are off, type what they measure under Cutting: every file is corrected for it. The rest waits until the cloth is cut.`,

  'step.trial.title': 'Try a cheap shell on the person',
  'step.trial.cut':
    'Take the trial shell’s own pattern (Cutting, “Trial shell”) and cut it once in old sheeting: nothing is taken off it for growth or filling, since a person does not stretch it as filling does, and its centre back and sides have cloth to spare.',
  'step.trial.sew': ({ neck }, { length }) =>
    `Sew everything but the centre back: that stays open from the base up through the neck band. No head passes a neck of ${length(neck)}, and none has to.`,
  'step.trial.put-on':
    'Put it on from the front like a gown, arms through the armholes, over the underwear that was measured over. A helper pins the back seam line to seam line, from the waist up and down.',
  'step.trial.judge': ({ pinned, waist, changed }, { small, fineLength }) =>
    `Level lines (round the body where its girths are measured) run level, nothing gapes or pulls, and each level is within ${small(5)} of the figure below. What has to be pinned in or let out goes back as a changed measure, never as a changed piece: ${small(pinned)} deep at one side seam is twice that round, so a waist of ${fineLength(waist)} is typed as ${fineLength(changed)}. Then try it once more if much has changed.`,

  'step.cut.title': 'Print the pattern and cut the cloth',
  'step.cut.print':
    'Now print the whole pattern, made anew from all that was measured and typed in so far. Join the pages, and measure once more from cross to cross over the joints: a millimetre on the metre is fine. What has no page stands on the sheet of numbers.',
  'step.cut.lay':
    'Lay the pieces as the plans at the front of the booklet or under Laying show: arrows along the grain, the right side of the cloth up. Right and left are not the same: where one drawing serves both, lay it down as it is for the right one and turned over for the left one.',
  'step.cut.cut':
    'Cut on the solid line; allowances differ from edge to edge and stand on the pieces. Cut notches (the short marks that meet on two pieces) no deeper than a third of the allowance. Tick every piece off against the list.',

  'step.mark.title': 'Mark the pieces and hold the hollow edges',
  'step.mark.mark':
    'On the wrong side, with thread or a pen that washes out: level lines, seam letters, notch numbers, right or left, and the lines to which webs and straps are sewn.',
  'step.mark.through':
    'Baste (sew by hand in stitches of 5 mm that are pulled out later) along the level lines, the lines of webs and straps, centre front, centre back and its seam line, and “up” and “front”, so that all of it shows on the right side, the outside, too.',
  'step.mark.hold':
    'Stay-stitch neck, armholes and other hollow edges before they are clipped: a row of stitches just inside the allowance, so that they do not stretch.',
  'step.mark.compare':
    'Lay right and left panels on each other face to face: they must agree wherever the body is the same on both sides.',

  'seam.on-side': ({ seam, side }, { say }) => `${say(seam)} ${side}`,
  'seam.between': ({ seam, one, other }, { say }) => `${say(seam)}: ${say(one)} to ${say(other)}`,
  'seam.with-letter': ({ seam, letter }, { say }) => `${say(seam)} (${say(letter)})`,
  'seam.within': ({ seam, panel }, { say }) => `${say(seam)} of the ${say(panel)}`,
  'seam.of-piece': ({ piece, at }, { say }) => `${say(piece)}, ${edges[at]}`,
  'seam.on-allowances': ({ piece, onto }, { say }) => `${say(piece)}, on the allowances of seam ${onto}`,
  'seam.sleeve': ({ hasTie }) =>
    hasTie ? 'pole sleeve, closing seam, with the centre back tie in it' : 'pole sleeve, closing seam',
  'seam.test-tube': ({ at }) => tubeSeams[at],
  'seam.arm': ({ at, side }) => `arm ${side}, ${at} seam`,
  'seam.to-open-edge': 'to one allowance of the seam that is still open',

  'check.test-tube': 'Test tube, girth over the cloth before it is stuffed; afterwards more',
  'check.tube': 'Outside of the pole, by caliper',
  'check.loaded-tilt': ({ mass }, tongue) =>
    `Tilt at which the form tips under a garment of ${tongue.mass(mass)}; 10° at least`,
  'check.conflicts': 'Tapes that do not fit together; 0 is wanted',
  'check.estimates': 'Measures estimated, not taken',
  'check.bar': ({ way }) => `Long bar ${way} the page`,
  'check.sides-of-square': 'Sides of the square',
  'check.fused-square': 'Drawn square, after fusing, both ways',
  'check.pieces': 'Pieces of cloth in all',
  'check.panels-marked': ({ side }) => `Shell panels marked ${side}`,
  'check.round-plate': ({ plate }) => `Round the ${plates[plate]}, along its edge`,
  'check.edge-of-opening': ({ plate }) => `Seam line round the opening of the ${plates[plate]}`,
  'check.magnets': 'Magnets, two in every plate that meets another',
  'check.all-round': ({ level }, { say }) => `${say(level)}, all round`,
  'check.across-half': ({ level, half, isApart }, { say }) =>
    `${say(level)}, ${isApart ? 'across both parts of the back added up' : `across the ${half}`}, from seam line to seam line`,
  'check.laid-out': ({ level }, { say }) =>
    `${say(level)}: shell laid out open, from centre back to centre back`,
  'check.laid-flat': ({ level }, { say }) => `${say(level)}: empty shell laid flat, its width`,
  'check.brace': ({ brace, level }, { say, inSentence }) => `${say(brace)}, ${inSentence(level)}`,
  'check.brace-end': ({ brace, end }, { say }) => `${say(brace)}, its ${end} end`,
  'check.sleeve': 'Sleeve, flat width when closed',
  'check.armhole-cord': 'From armhole plate to armhole plate, at their lower edges',
  'check.pole-inside': 'Pole inside the form, plate to plate',
  'check.fill': 'Filling for this zone',
  'check.arm-fill': ({ count }) => `Filling for ${count === 1 ? 'the arm' : 'both arms together'}`,
  'check.dome': 'Height of the cushion in its middle',
  'check.size': ({ level, kind }, { say }) => `${say(level)}, ${kind}`,
  'check.above-floor': ({ level }, { say }) => `${say(level)} above the floor`,
  'check.tilt': 'Tilt at which it tips; 10° at least',
  'check.ballast': 'Ballast to add on the legs',

  'work.part.arm': 'arm',
  'work.part.armhole': 'armhole',
  'work.part.armhole-plate': 'armhole plate',
  'work.part.base': 'base',
  'work.part.base-plate': 'base plate',
  'work.part.cloth': 'washed and fused cloth',
  'work.part.collars': 'collars',
  'work.part.cover': 'cover',
  'work.part.cushion': 'pin cushion',
  'work.part.foot': 'foot',
  'work.part.gap': 'gap below the armhole plate',
  'work.part.lid': 'lid',
  'work.part.magnets': 'magnets',
  'work.part.marks': 'marks on the pieces',
  'work.part.neck': 'neck opening',
  'work.part.neck-block': 'neck block',
  'work.part.neck-plate': 'neck plate',
  'work.part.pole': 'pole',
  'work.part.shoulder-support': 'shoulder support',
  'work.part.sleeve': 'pole sleeve',
  'work.part.stuffing': 'filling hole',
  'work.part.tabs': 'tabs of the sleeve',
  'work.part.trial-shell': 'trial shell',
  'work.part.wrist-plate': 'wrist plate',
  'work.fact.bars': 'the bars on the printed page',
  'work.fact.density': 'the mass of a litre of filling',
  'work.fact.flat-widths': 'the widths of the empty shell',
  'work.fact.growth': 'the growth of the test tube',
  'work.fact.heights': 'the heights of the levels',
  'work.fact.measures': 'the measures',
  'work.fact.opening-edges': 'the edges of the openings',
  'work.fact.pole-diameter': 'the thickness of the pole',
  'work.fact.polarity': 'which way the magnets draw',
  'work.fact.shrinkage': 'what the cloth shrinks by',
  'work.fact.sleeve-width': 'the width of the sleeve',
  'work.fact.trial': 'what the trial shell tells',
  'work.hours': ({ hours }, { fixed }) =>
    `About ${fixed(hours, 0)} hours of work, breaks and drying left out: our estimate, no source.`,
  'work.edge': ({ of }) => lacedEdges[of],
};

/** Both edges nearly always read the same. */
function sayLengths(lengths: readonly string[]): string {
  const areAlike = lengths.length === 2 && lengths[0] === lengths[1];
  return areAlike ? `${lengths[0]} each` : lengths.join(' to ');
}

function countMarks(marks: number): string {
  return marks === 0 ? 'no marks between' : marks === 1 ? '1 mark' : `${marks} marks`;
}
