import type { MakingPhrases } from '../../../core/making/index.ts';
import type { Entries } from '../../catalogue.ts';

export type SettingWords = {
  readonly [Id in keyof MakingPhrases as Id extends `step.${
    | 'boards'
    | 'magnets'
    | 'covers'
    | 'bind'
    | 'sew-arms'
    | 'fill-arms'
    | 'cushions'
    | 'arms'
    | 'supports'
    | 'pole'
    | 'fill'
    | 'close'
    | 'rest'
    | 'lids'
    | 'stand'
    | 'tapes'
    | 'care'}.${string}`
    ? Id
    : never]: MakingPhrases[Id];
};

const plates = {
  base: 'base plate',
  neck: 'neck plate',
  armholeRight: 'right armhole plate',
  armholeLeft: 'left armhole plate',
} as const;
const spots = {
  back: 'at the back',
  front: 'at the front',
  up: 'on the up',
  down: 'on the down',
  left: 'on the left',
  right: 'on the right',
} as const;

type Plates = readonly (keyof typeof plates)[];
const behind = (list: Plates): string =>
  list.length === 2 && list.every((plate) => plate.startsWith('armhole'))
    ? 'Behind both armhole plates'
    : `Behind the ${list.map((plate) => plates[plate]).join(' and the ')}`;

/** How a plate is made ready, and what the edge of the shell is sewn to. */
const dressed = (isCovered: boolean): string => (isCovered ? 'covered' : 'bound');
const toPlate = (isCovered: boolean): string => (isCovered ? 'to the cover' : 'through the holes of its rim');

/** From plates to care: all that is set in, filled and closed. */
export const settingSteps: Entries<SettingWords> = {
  'step.boards.title': 'Cut and glue the boards, to the edges as they were sewn',
  'step.boards.compare':
    'Compare the edges you wrote down with the figures below. One that is off by more than 0.2 cm (1/16 in) gets its board larger or smaller all round: a sixth of the difference, since a rim is about six times as long as it is wide from its middle.',
  'step.boards.glue':
    'Cut every plate in its two layers of card, the flutes (the waves in the card) crossing, glue them and let them dry flat under a weight.',
  'step.boards.pole':
    'Push the pole through base and neck plate: it must turn without rattling. If it rattles, wrap the pole there with tape until it does not.',
  'step.boards.block':
    'Cut the neck block from foam by its three templates, from above, from the side and from the front, and bore a hole for the pole down its middle.',
  'step.boards.shell-narrows': ({ plates: list, where, angle, depth }, tongue) =>
    `${behind(list)} the shell narrows, by ${tongue.angle(angle, 0)} ${spots[where]} at most: the inner layer is cut up to ${tongue.small(depth)} smaller. Sand the step between the layers to a slope.`,
  'step.boards.shell-widens': ({ plates: list, where, angle, depth }, tongue) =>
    `${behind(list)} the shell widens, by ${tongue.angle(angle, 0)} ${spots[where]} at most: up to ${tongue.small(depth)} stay open behind the rim. Pack filling in there, so that the edge lies firm.`,

  'step.magnets.title': 'Try the magnets on the bare boards, then seat them',
  'step.magnets.mark':
    'Stack the magnets of a pair and mark the faces that look outwards, as the boards say. Right and left are turned round on purpose, so that a swapped arm is pushed away.',
  'step.magnets.try': ({ hasCushions }) =>
    `Lay them dry into the boards and hold each armhole plate to the arm’s plate${hasCushions ? ' and to the pin cushion’s' : ''} of its side: they must draw. Held to the other side they must push off.`,
  'step.magnets.seat':
    'Only then seat them with wood glue, flush with the board, the marked face out, a piece of strong cloth glued over each on both sides. Count them.',

  'step.covers.title': 'Cover the plates',
  'step.covers.stretch':
    'Lay the board on the wrong side of its cover, fold the cloth over the edge, and lace it across the back: a long waxed thread to and fro from edge to edge, drawn tight. The side that will be seen is smooth.',
  'step.covers.holes':
    'Over every hole of the board (pole, filling holes, peg) cut the cover in a star, never out: turn its points in through the hole and glue them down.',
  'step.covers.slots':
    'In the base plate cut a slot beside the pole’s hole for each tab of the sleeve, through cover and board, at the marked places.',

  'step.bind.title': 'Bind the rims of the plates',
  'step.bind.tape': ({ width }, { length }) =>
    `Spread wood glue on the rim and lay strong cotton tape, ${length(width)} wide, round it, folded over both faces and snipped where the rim bends: no bare edge is left that could chafe a thread or scratch a hand. The face that will be seen may have a scrap of the shell’s cloth glued on first.`,
  'step.bind.holes': ({ inside, apart }, { length }) =>
    `When it is dry, prick holes through the tape with an awl (in wood, drill them), ${length(apart)} apart: from ${length(inside)} inside the rim, on the face that will be outside, slanting to the middle of the rim. A curved needle finds its way through them, and the shell’s edges are sewn there.`,
  'step.bind.slots':
    'In the base plate cut a slot beside the pole’s hole for each tab of the sleeve, at the marked places.',

  'step.sew-arms.title': 'Sew the arms and close their wrists',
  'step.sew-arms.sew':
    'Each arm has a front and a back: right sides together, first the outer seam, then the inner one, in the order below.',
  'step.sew-arms.turn': 'Turn each right side out. The armhole end stays open: it is filled from there.',
  'step.sew-arms.wrist':
    'Turn the wrist’s edge in, set the covered wrist plate into it, front to front, and sew the edge to the cover all round in small stitches by hand.',

  'step.fill-arms.title': 'Fill the arms and cap them',
  'step.fill-arms.roll':
    'Roll the arm down on itself like a stocking, so that only its lower half is left to reach into. Fill that with small teased tufts and a blunt stick, wrist first, and roll it up again by a hand’s breadth as it fills.',
  'step.fill-arms.feel':
    'As firm as the torso below the elbow, softer above, so that a sleeve goes over. Weigh both arms: they want the same.',
  'step.fill-arms.cap':
    'Glue the peg into the arm’s plate. Set the plate into the armhole end, up to up and front to front, peg outwards, turn the edge in and sew it to the cover all round.',
  'step.arms.measured': ({ state }) =>
    state === 'relaxed'
      ? 'Their girths were taken relaxed: fill them until the tape reads those again, and give sleeves the room that a bent arm wants.'
      : 'Their girths were taken bent, with a fist: fill them until the tape reads those again; sleeves fitted over them let the arm work.',

  'step.cushions.title': 'Make the pin cushions',
  'step.cushions.fill':
    'They close the armhole when an arm is off. Run a gathering thread (long stitches that are drawn together) round the cover, lay a dome of fibre on it and the plate on that, magnets up; draw the thread in behind the plate, lace it, and knot.',
  'step.cushions.try': 'Hold each to its armhole plate: it draws to its own side and pushes off the other.',

  'step.arms.title': 'Hang the arms',
  'step.arms.hang':
    'Now that the torso stands. Push the peg of each arm into its hole until the magnets draw; the other arm is pushed off.',
  'step.arms.peg': 'The peg carries, the magnets only locate. Carry the form by the pole, never by an arm.',

  'step.supports.title': ({ has }) =>
    has ? 'Set in shoulder supports and armhole plates' : 'Set in the armhole plates',
  'step.supports.tack':
    'Push each support in through its armhole, edge up under the shoulder seam, and tack it (a few strong stitches by hand) to the allowances of that seam at both ends and in the middle.',
  'step.supports.plates': ({ gap, isCovered }, { length }) =>
    `Turn the armhole’s edge in, push the ${dressed(isCovered)} plate in from outside, up to up and front to front, and sew the edge ${toPlate(isCovered)} with waxed thread; but leave the lowest ${length(gap)} open for filling.`,
  'step.supports.glue':
    'Reaching in through the base, glue the outer end of each support to the armhole plate, so that they move as one.',
  'step.supports.cord':
    'Through the gaps, tie the lower edges of both armhole plates to each other with waxed cord, through two pricked holes in each, past the sleeve, as long as given below: under the filling they must neither turn nor come nearer.',
  'step.supports.ways': 'Hold arm or cushion to each plate once more: own side draws, other side pushes.',

  'step.pole.title': 'Put pole, neck block and neck plate in',
  'step.pole.push': ({ inside }, { fineLength }) =>
    `Draw a mark round the pole, ${fineLength(inside)} below its upper end. Push it, without its foot, or a spare tube as thick, up through the sleeve until the mark lies at the edge of the base: then it ends at the neck’s edge. It goes in before the filling: afterwards nothing finds the sleeve.`,
  'step.pole.block': ({ hasSupports }) =>
    `${hasSupports ? 'Put wood glue on the inner ends of the supports, through the neck. ' : ''}Press the neck block together and push it down over the pole through the neck, until its foot sits where the neck begins${hasSupports ? ', against the supports' : ''}.`,
  'step.pole.collar':
    'Screw the upper collar tight on the pole, so that the neck plate will lie on it with its top at the neck’s edge.',
  'step.pole.plate': ({ isCovered }) =>
    `Slide the ${dressed(isCovered)} neck plate over the pole onto the collar, front to front, turn the neck’s edge in and sew it ${toPlate(isCovered)} all round.`,
  'step.pole.plumb':
    'Look from the front and from the side against a plumb line (a weight on a thread): the pole stands in the middle, and the level lines run square to it.',

  'step.fill.turn':
    'Fix the pole upside down, or lay the form’s neck on a cushion: the open base is up, and stays so until it is full.',
  'step.fill.scale': ({ low, high }) =>
    `The masses below are for ${low} to ${high} g a litre, an assumption: type in what you weighed into the test tube, and they are yours.`,
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
    'Fill a finger’s breadth above the base’s edge, firm at the rim, so that the plate presses on it and does not sag.',
  'step.fill.by-gaps': ({ depth }, { length }) =>
    `From the base it is ${length(depth)} to the top, more than an arm reaches: work in through the gaps under the armhole plates, with the fingers and a blunt stick.`,
  'step.fill.in-turn':
    'Here and in every zone: right and left in turn, front and back in turn, both sides of each web alike; weigh what goes in.',
  'step.fill.ties':
    'Ties, webs and straps are sewn at both ends and are not pulled: they come taut by the filling. One that hangs loose has too little beside it.',
  'step.fill.stop':
    'Stop when a girth is over by more than its limit: take filling out. Never tighten a seam over filling.',
  'step.fill.measure': ({ level, isFirst }, { say, inSentence }) =>
    isFirst
      ? `The level “${say(level)}” has filling on both sides now: measure it, hold its half rings to it if you cut gauges, and enter it under Checking. A level beside an empty zone says nothing.`
      : `Now measure the ${inSentence(level)} in the same way, and enter it.`,

  'step.close.title': 'Set in base plate and lower collar',
  'step.close.plate': ({ hasTabs, isCovered }) =>
    hasTabs
      ? `With the foot still off, slide the ${dressed(isCovered)} base plate over the pole, draw each tab of the sleeve through its slot, press the plate down onto the filling, and ${isCovered ? 'stitch the tabs flat below it' : 'glue the tabs flat below it and sew them down through holes pricked beside the slots'}.`
      : `With the foot still off, slide the ${dressed(isCovered)} base plate over the pole and press it down onto the filling.`,
  'step.close.collar':
    'Slide the plywood disc on after it, press, and screw the lower collar tight against the disc: from now on it carries the form.',
  'step.close.lace': ({ isCovered }) =>
    `Turn the base’s edge in and lace it ${toPlate(isCovered)} for now in stitches of 2 cm (3/4 in): they hold for the day of rest and come out again if filling has to move.`,

  'step.rest.title': 'Stand it on its foot for a day, then measure',
  'step.rest.stand':
    'Turn it over with two people, holding pole and base, and put the pole into its foot. Cloth and seams give and filling settles overnight.',
  'step.rest.measure': ({ above }, { small }) =>
    `Then measure every level and enter it under Checking: a girth may be over by ${small(above)}, never under.`,
  'step.rest.seams':
    'Look along every seam: where needle holes open, the seam slips; sew a second row by hand or back it with tape before going on.',

  'step.lids.title': 'Top up, and close the last openings',
  'step.lids.top-up':
    'Top up or take out with the stick, the hip and belly through the two holes of the base plate, chest and shoulders through the gaps under the armhole plates, and measure again.',
  'step.lids.gaps': ({ isCovered }) =>
    `Then close the gaps under the armhole plates: turn the edge in and sew it ${toPlate(isCovered)} as the rest.`,
  'step.lids.lids': 'Cover each lid with a scrap of cloth and lace it over its hole.',
  'step.lids.lace': ({ isCovered }) =>
    `Go round the base once more in ladder stitches of ${isCovered ? '7 mm' : '10 mm, from hole to hole'} (they run in the fold of the edge and cross straight over to the ${isCovered ? 'cover' : 'plate'}, like the rungs of a ladder), waxed cord, a knot every 10 cm (4 in), and pull the long ones out.`,

  'step.stand.title': ({ hasBallast }) =>
    hasBallast
      ? 'Pin the pole, weigh down the foot, and try it on a slope'
      : 'Pin the pole, and try it on a slope',
  'step.stand.pin':
    'Bore through lower collar and pole and put a cross pin in: the collar carries, the pin keeps the form from turning.',
  'step.stand.tilt': ({ hasBallast }) =>
    `${hasBallast ? 'Fix the ballast (weight on the legs), hang' : 'The foot is heavy enough, no ballast goes on it. Hang'} the heaviest garment on, and tilt the form by hand to 10° in every direction over a soft floor, with somebody ready to catch it.`,
  'step.stand.castors':
    'Castors get guards or caps, so that no hem is caught and run over; lock them for the test.',
  'step.stand.write': 'Write on the foot: date, person, measures, underwear, heaviest garment.',

  'step.tapes.title': 'Set the height and mark the lasting lines',
  'step.tapes.height':
    'Lock the form at the heights below, over the floor, in the shoes that are worn with it or none.',
  'step.tapes.assumed':
    'Nobody measured how high the waist is to stand: it is assumed from the body’s height. Measure it on the person before long hems are marked.',
  'step.tapes.mark':
    'With a pencil held on a wooden block that stands on the floor, not by the seams, mark the levels, centre front and back and the sides, and pin narrow tape along them.',
  'step.tapes.cover':
    'A cover or padding goes on before the tapes, if it was given under Inside, “Layers over the shell”.',

  'step.care.title': 'Measure it again from time to time, mend it, and take it apart in the end',
  'step.care.measure':
    'After a week, after a month, and before every new garment: measure the levels and enter them under Checking.',
  'step.care.place':
    'Out of sun, away from lamps and heaters; brush it, never wash it, and look at collar, pin and seams once a year.',
  'step.care.repair':
    'A soft place: open the lid or gap nearest to it, top up by the stick, close again. A torn seam: ladder it from outside, and back it with tape.',
  'step.care.apart': ({ hasMagnets }) =>
    hasMagnets
      ? 'In the end, magnets first: cut the covers of armhole, arm and cushion plates, take every magnet out, count them and keep them apart. Then unlace the base, take the filling out for use again, and part card, foam and metal.'
      : 'In the end: unlace the base, take the filling out for use again, and part card, foam and metal.',
};
