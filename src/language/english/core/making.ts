import type { MakingPhrases } from '../../../core/making/index.ts';
import type { Entries } from '../../catalogue.ts';

const plates = {
  base: 'base plate',
  neck: 'neck plate',
  armholeRight: 'armhole plate right',
  armholeLeft: 'armhole plate left',
} as const;
const spots = {
  back: 'at the back',
  front: 'at the front',
  up: 'on the up',
  down: 'on the down',
  left: 'on the left',
  right: 'on the right',
} as const;
const tubeSeams = {
  closing: 'test tube, closing seam',
  bottom: 'test tube to its bottom',
  top: 'test tube to its top',
} as const;

export const making: Entries<MakingPhrases> = {
  'phase.prepare': 'Before cutting cloth',
  'phase.cut': 'Cutting and marking',
  'phase.plates': 'Making the plates',
  'phase.sew': 'Sewing',
  'phase.pole': 'Setting in plates and pole',
  'phase.fill': 'Filling',
  'phase.finish': 'Finishing',

  'step.test-tube.title': 'Sew, stuff and measure the test tube',
  'step.test-tube.why':
    'Stuffed cloth grows, each cloth by its own share, and the panels are cut for that: so this comes before anything else is printed. Under Cutting, tick only “test tube” in “To cut”, take the pattern, and measure its bars.',
  'step.test-tube.nothing-typed': 'Nothing is typed in yet: nothing is taken off the panels for growth.',
  'step.test-tube.reckoned': ({ growth }, { fixed }) =>
    `The filled form is worked out for this cloth, and the panels are cut for it: ${fixed(100 * growth, 2)} % of growth on the test tube.`,
  'step.test-tube.usual-cloth': ({ below, above }, { fixed }) =>
    `Nothing is typed in yet: the panels are cut for a usual cloth. Of one twice as firm, or half, girths come out up to ${fixed(below, 0)} mm smaller or ${fixed(above, 0)} mm larger than foretold, until filled by the tape at the waist.`,
  'step.test-tube.taken-off': ({ growth }, { fixed }) =>
    `Taken off the panels: ${fixed(100 * growth, 2)} % of growth on the test tube.`,

  'step.use.title': 'Decide what the form is for, and have the pole in your hand',
  'step.use.settle':
    'Heaviest garment, pinning into it, arms or none, a cover over it: settle these first, since they change the pieces.',
  'step.use.pole':
    'Measure the pole with a caliper before anything is cut: tubes are seldom as thick as they are called.',

  'step.measure.title': 'Measure twice, and look at the body',
  'step.measure.how':
    'Measure over the underwear that will be worn, standing at ease, with neck, shoulder and bust points marked.',
  'step.measure.compare':
    'Type what you read, measure a second time, and correct what is marked. Compare widths, depths and the side view with the person.',

  'step.print.title': 'Print the first page and measure its bars',
  'step.print.cover': ({ paper }, { say }) =>
    `Print the cover alone on ${say(paper)}, at actual size, never “fit to page”, and measure both long bars. If they are off, type what they measure under Cutting and print the corrected file.`,
  'step.print.rest':
    'Only then print the rest, join the pages, and measure once more from cross to cross over the joints: a millimetre on the metre is fine. What has no page stands on the sheet of numbers.',

  'step.trial.title': 'Try a cheap shell on the person',
  'step.trial.sew':
    'Sew the panels once in old sheeting, without inner parts and with one side left open, and put it on the person over the same garment.',
  'step.trial.judge':
    'It must close without pulling, its level lines must run level, and nothing may gape. This is the cheapest place to find a wrong measure.',

  'step.cloth.title': 'Wash, press and fuse the cloth before cutting',
  'step.cloth.wash': 'Wash and press the cloth, and pull its threads square.',
  'step.cloth.fuse':
    'Fuse the interfacing to oblongs of cloth larger than the pieces, and let them cool flat. Fused cloth shrinks, so no piece is cut before.',
  'step.cloth.square':
    'Draw a square of 20 cm (7 7/8 in) on one oblong before fusing and measure it after: if either side is off by more than 1 mm, let it shrink again before you cut.',

  'step.cut.title': 'Cut the cloth',
  'step.cut.lay':
    'All panels the same way up along the grain, the cloth face up. Right and left are not the same: where one drawing serves both, lay it down as it is for the right one and turned over for the left one.',
  'step.cut.cut': 'Cut on the solid line. Notches no deeper than a third of the allowance.',

  'step.mark.title': 'Mark the pieces and hold the hollow edges',
  'step.mark.mark':
    'On the wrong side, with thread or a pen that washes out: level lines, seam letters, notch numbers, right or left, and the lines to which webs are sewn.',
  'step.mark.hold':
    'Run a row of stitches just inside the seam line along neck, armholes and other hollow edges before they are clipped, so that they do not stretch.',
  'step.mark.compare':
    'Lay right and left panels on each other face to face: they must agree wherever the body is the same on both sides.',

  'step.boards.title': 'Cut and glue the plates, and fit them dry',
  'step.boards.glue':
    'Cut every plate in its two layers of card, the flutes (the waves in the card) crossing, glue them and let them dry flat under a weight.',
  'step.boards.pole':
    'Push the pole through base and neck plate: it must turn without rattling. Cut the neck block by its three templates.',
  'step.boards.shell-narrows': ({ plate, where, angle, depth }, tongue) =>
    `Behind the ${plates[plate]} the shell narrows, by ${tongue.angle(angle, 0)} ${spots[where]} at most: its inner layer is cut up to ${tongue.fixed(depth, 1)} mm smaller. Sand the step between the layers to a slope.`,
  'step.boards.shell-widens': ({ plate, where, angle, depth }, tongue) =>
    `Behind the ${plates[plate]} the shell widens, by ${tongue.angle(angle, 0)} ${spots[where]} at most: up to ${tongue.fixed(depth, 1)} mm stay open behind its rim. Pack filling in there, so that the edge lies firm.`,
  'step.boards.cover':
    'Cover each plate now, with the cloth folded over its edge; the armhole and neck plates are set in later from outside.',

  'step.magnets.title': 'Try the magnets, then fix them',
  'step.magnets.mark':
    'Stack the magnets of a pair and mark the faces that look outwards. Right and left are turned round on purpose, so that a swapped arm is pushed away.',
  'step.magnets.try':
    'Hold both arms on dry before any glue. Fix the magnets in stitched pockets under the cover, and count them.',

  'step.sew.stitch':
    'Short stitches of 2 mm, a second row a millimetre into the allowance; clip, and press open.',

  'step.half.title': ({ half }) => `Sew the ${half}, lying flat`,
  'step.half.level-seams-first':
    'In the order of the letters below: level seams first, then the upright ones from the middle outwards, across them.',
  'step.half.outwards': 'In the order of the letters below, from the middle outwards.',
  'step.half.pin':
    'Pin letter to letter and notch to notch; level lines may miss each other by 1.5 mm, no more. Where one side curves out and the other in, pin with the hollow one on top.',

  'step.sleeve.title': 'Sew the pole sleeve with its ties and straps',
  'step.sleeve.hem':
    'Hem webs, ties and straps at top and bottom, and stitch round their openings before cutting these out.',
  'step.sleeve.stitch':
    'Stitch the front tie and the straps flat on the sleeve along their letters, level on level. Close the sleeve behind with the back tie caught in the seam, and sew the tabs to its lower end.',
  'step.sleeve.throat':
    'Stitch both throat webs on beside the front tie in the same way, right and left, their longer end down, mark on mark. They lie higher on the shell than on the sleeve: that slant is wanted.',
  'step.sleeve.try': 'Slide it over the pole: it must pass without force.',

  'step.inner.title': ({ half }) =>
    half === 'front' ? 'Sew webs and ties to the front' : 'Sew webs, ties and straps to the back',
  'step.inner.now':
    'Front and back still lie open like a book: do it now, for once the sides are closed no machine gets there.',
  'step.inner.to-front':
    'On the wrong side, sew the front tie to the allowances of its seam and each web to its line, mark on mark.',
  'step.inner.to-back':
    'Turn the back over beside it, pass the straps through the openings of the webs, and sew what is left, mark on mark. No web may cross another or twist.',

  'step.inner.throat':
    'Sew each throat web to its line last, end on end and mark on mark, the allowance outwards and the sleeve laid over to the other side. Where stitches on the outside do not matter, top-stitch them from there: they carry much.',
  'step.shoulder.title': 'Sew the shoulders',
  'step.shoulder.outwards':
    'From the neck outwards. From here the shell no longer lies flat: inner parts must be in.',
  'step.neck.title': 'Set on the neck band',
  'step.neck.pin':
    'Pin the band round the neck edge from the centre back, right sides together, clip the neck edge up to the row of stitches, and sew with the body side on top.',
  'step.neck.close': 'Close the band behind last.',
  'step.side.title': ({ side }) => `Sew the ${side} side`,
  'step.side.order': 'In the order of the letters below, webs and straps held out of the way.',
  'step.closing.title': 'Close the shell: the last side',
  'step.closing.sew':
    'Turn webs and sleeve to the middle and count the pins. Then sew in the order of the letters below, as before: this closes the shell.',
  'step.closing.turn':
    'Turn the shell right side out through the base and lay it flat, level line on level line. Now is the time to sew a seam again: not when it is full.',
  'step.sew-arms.title': 'Sew the arms',
  'step.sew-arms.sew':
    'Each arm has a front and a back: sew the outer seam, then the inner one, and turn it right side out. Leave armhole and wrist open.',

  'seam.on-side': ({ seam, side }, { say }) => `${say(seam)} ${side}`,
  'seam.joined': ({ pieces }, { say }) => pieces.map(say).join(' + '),
  'seam.test-tube': ({ at }) => tubeSeams[at],
  'seam.to-open-edge': 'to the allowance of one edge alone, since this seam is still open',

  'step.plates.title': 'Set in the neck and armhole plates',
  'step.plates.set':
    'From outside, push each covered plate into its opening, up to up and front to front, and sew the turned-in edge of the shell to the cover all round.',
  'step.plates.shoulders':
    'Put the shoulder supports under the shoulder seams and the neck block under the neck plate.',
  'step.plates.hold':
    'Glue the supports to the neck block and to both armhole plates, so that they move as one. Then tie the lower edges of the armhole plates to each other with waxed cord, past the sleeve, as long as given: under the filling they must neither turn nor come nearer.',
  'step.plates.try-arms':
    'Hold the arms to their plates once more: each must draw to its own side and push off the other.',

  'step.pole.title': 'Put the pole in',
  'step.pole.push':
    'Push the pole through sleeve and neck plate up to its mark, and hold the base plate below as a guide, not yet sewn in. It goes in before the filling: afterwards nothing finds the sleeve.',
  'step.pole.plumb':
    'Stand it up on its foot and look from the front and from the side against a plumb line; pull the ties straight.',
  'step.pole.turn': 'To fill, turn the form over so that its open base is up.',

  'step.fill.shoulders':
    'Fill the shoulders to their ends first, round the neck block, hard enough to carry a garment without sinking.',
  'step.fill.throat':
    'Between the throat webs push small tufts up from below, as firm as on both sides of them, so that no web is pressed aside.',
  'step.fill.upper-chest':
    'Fill the upper chest and the cups with small teased tufts from the surface inwards, then between the shoulder blades.',
  'step.fill.bust':
    'Finish the cups from below, so that they stay full, then the back of the chest, then round the sleeve.',
  'step.fill.midriff': 'Work down round the sleeve as the core, then outwards to the cloth.',
  'step.fill.waist':
    'Waist: fill both sides of every web alike, front and back in turn, and watch width and depth more than the girth.',
  'step.fill.belly': 'Belly and seat in turn, right and left in turn, so that the pole stays in the middle.',
  'step.fill.to-base':
    'Fill up to the base plate, firm at the rim, so that the plate sits on filling and does not sag.',
  'step.fill.in-turn':
    'Right and left in turn, front and back in turn; weigh what goes in. Pull the ties to their marked lengths.',
  'step.fill.stop':
    'Stop when a girth is over by more than its limit: take filling out. Never tighten a seam over filling.',

  'step.rest.title': 'Let it stand for a day and measure again',
  'step.rest.measure':
    'Cloth and seams give and filling settles overnight. Measure every level, enter it under Checking, and top up or take out.',
  'step.rest.seams':
    'Look along every seam: where needle holes open, the seam slips; sew a second row or back it with tape before going on.',

  'step.close.title': 'Set in the base plate and close the base',
  'step.close.lace':
    'Push the covered base plate in over the pole, sew the sleeve’s tabs down, fold the shell’s edge under and lace it to the cover with waxed cord, in small ladder stitches.',
  'step.close.top-up': 'Top up through the two holes of the base plate, then lace their lids on.',

  'step.tapes.title': 'Set the height and mark the lasting lines',
  'step.tapes.mark':
    'Lock the form at its height. With a pencil held on a wooden block that stands on the floor, not by the seams, mark the levels, centre front and back and the sides, and pin narrow tape along them.',
  'step.tapes.cover':
    'A cover or padding goes on before the tapes, if it was given under Inside, “Layers over the shell”.',

  'step.stand.title': 'Weigh down the foot and try it on a slope',
  'step.stand.tilt':
    'Fix the ballast, hang the heaviest garment on, and tilt the form by hand to 10° in every direction over a soft floor, with somebody ready to catch it.',
  'step.stand.write': 'Write on the foot: date, person, measures, underwear, heaviest garment.',

  'step.arms.title': 'Fill and hang the arms',
  'step.arms.fill':
    'Fill them softer above the elbow, so that a sleeve goes over. Sew the cap on with the magnets inside and the peg through it; hang them only when the torso is finished.',
  'step.arms.measured': ({ state }) =>
    state === 'relaxed'
      ? 'Their girths were taken relaxed: fill them until the tape reads those again, and give sleeves the room that a bent arm wants.'
      : 'Their girths were taken bent, with a fist: fill them until the tape reads those again; sleeves fitted over them let the arm work.',
  'step.arms.peg': 'The peg carries, the magnets only locate.',

  'step.care.title': 'Measure it again from time to time',
  'step.care.measure':
    'After a week, after a month, and before every new garment: measure the levels and enter them under Checking.',
  'step.care.place': 'Out of sun, away from lamps and heaters.',

  'check.test-tube': 'Test tube, girth over the cloth before it is stuffed; afterwards more',
  'check.tube': 'Outside of the pole, by caliper',
  'check.loaded-tilt': 'Tilt at which the loaded form tips; 10° at least',
  'check.conflicts': 'Tapes that do not fit together; 0 is wanted',
  'check.estimates': 'Measures estimated, not taken',
  'check.bar': ({ way }) => `Long bar ${way} the page`,
  'check.sides-of-square': 'Sides of the square',
  'check.fused-square': 'Drawn square, after fusing, both ways',
  'check.pieces': 'Pieces of cloth in all',
  'check.panels-marked': ({ side }) => `Shell panels marked ${side}`,
  'check.round-plate': ({ plate }) => `Round the ${plates[plate]}, along its edge`,
  'check.edge-of-opening': ({ plate }) => `Seam line round the ${plates[plate]}’s opening`,
  'check.all-round': ({ level }, { say }) => `${say(level)}, all round`,
  'check.across-half': ({ level, half }, { say }) => `${say(level)}, across the ${half}`,
  'check.laid-flat': ({ level }, { say }) => `${say(level)}: empty shell laid flat, its width`,
  'check.brace': ({ brace, level }, { say, inSentence }) => `${say(brace)}, ${inSentence(level)}`,
  'check.brace-end': ({ brace, end }, { say }) => `${say(brace)}, its ${end} end`,
  'check.sleeve': 'Sleeve, flat width when closed',
  'check.armhole-cord': 'from armhole plate to armhole plate, at their lower edges',
  'check.pole-inside': 'Pole inside the form, plate to plate',
  'check.bust-height': 'Bust level above the waist level',
  'check.fill': 'Filling for this zone',
  'check.size': ({ level, kind }, { say }) => `${say(level)}, ${kind}`,
  'check.above-floor': ({ level }, { say }) => `${say(level)} above the floor`,
  'check.tilt': 'Tilt at which it tips; 10° at least',
  'check.ballast': 'Ballast to add on the legs',
};
