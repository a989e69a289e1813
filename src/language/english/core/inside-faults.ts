import type { InsidePhrases, Sides } from '../../../core/inside/index.ts';
import type { Entries, Tongue } from '../../catalogue.ts';

type Faults = {
  readonly [Id in keyof InsidePhrases as Id extends
    | `inside.${string}`
    | `opening.${string}`
    | `part.${string}`
    ? Id
    : never]: InsidePhrases[Id];
};

const MEND_WEB =
  'Back this web with a second layer of cloth, or leave the straps out (in the project file, inside.straps: false).';

const MEND_LEVEL = {
  cup: 'put a firm packed cup there',
  wadding: 'put a layer of wadding under the cloth there',
  'less-filling': 'fill it less there, or sew on one more strap to the pole sleeve',
} as const;

const GAINED = { width: 'width', depth: 'depth', place: 'farthest place' } as const;

/** What cannot be built inside. */
export const faultsInside: Entries<Faults> = {
  'inside.webs-near-pole': ({ side, nearest, room, remedy }, { say, small }) =>
    `The ${sides(side)} web would come ${small(nearest)} from the middle, where the pole in its sleeve needs ${small(room)}: webs and pole would cross. ${say(remedy)}`,
  'inside.webs-on-other-side': ({ side, over, remedy }, { say, small }) =>
    `The ${sides(side)} web would cross to the other side by ${small(over)} and meet its partner: webs and pole would cross. ${say(remedy)}`,
  'inside.take-thinner-pole': ({ most }, { lengthAlone }) => `Take a pole of ${lengthAlone(most)} at most.`,
  'inside.take-webs-on-panels':
    'Take webs on panels (in the project file, inside.webPlaces: "panels"), or another seam layout.',
  'inside.cloth-gives-way': (values, tongue) => {
    const { pressure, stiffness, mostPressure } = values;
    const { fixed, exact } = tongue;
    return `${growing(values, tongue)} under ${exact(pressure)} kPa on cloth of ${exact(stiffness)} N/mm; ${firmest(values, tongue)}. Give a pressure of ${fixed(mostPressure, 1)} kPa at most, or a firmer cloth.`;
  },
  'inside.cloth-gives-way-as-measured': (values, tongue) =>
    `${growing(values, tongue)} by what was measured on the test tube; ${firmest(values, tongue)}. Measure the test tube again, or fuse a firmer interfacing to the cloth.`,
  'inside.level-deviates': ({ level, by, way, at, wanted, remedy }, { say, small }) =>
    `${say(level)}: the stuffed form will be ${small(by)} ${way} than the body at the ${say(at)} (${small(wanted)} wanted); ${MEND_LEVEL[remedy]}.`,
  'inside.line-leaves-panels': ({ line, side }, { say }) =>
    `The ${say(line)} on the ${side} leaves the panels, so what is sewn to it is left out. Choose another seam layout, or webs on seams.`,
  'inside.throat-web-without-room': ({ room, least }, { exactLength }) =>
    `The throat webs are left out, so the throat will stand out: beside the middle of the front no line ${exactLength(least)} high keeps ${exactLength(room)} from the seams between chest and neck. Move the seams there, or choose another layout.`,
  'inside.tube-too-thick': ({ diameter, where, most, layers }, { lengthAlone, small }) =>
    `A pole of ${lengthAlone(diameter)} does not fit ${where === 'neck' ? 'through the neck plate' : 'upright between neck and waist'}: at most ${lengthAlone(most)} leaves enough round it. Take one no thicker than that, measured with calipers${layers === undefined ? '' : `, or thinner layers over the shell, ${small(layers)} now (coverThickness)`}.`,
  'inside.little-cloth-at-edge': ({ brace, opening, left, least }, tongue) =>
    `${clothLeft(left, tongue)} between ${tongue.say(opening)} and its edge on the ${tongue.say(brace)}; ${tongue.exactLength(least)} are needed. ${MEND_WEB}`,
  'inside.little-cloth-between': ({ brace, opening, other, left, least }, tongue) =>
    `${clothLeft(left, tongue)} between ${tongue.say(opening)} and ${tongue.say(other)} on the ${tongue.say(brace)}; ${tongue.exactLength(least)} are needed. ${MEND_WEB}`,
  'opening.for-fill': ({ number }) => `opening ${number}`,
  'opening.for-strap': ({ number }) => `the slot for a strap, opening ${number},`,
  'opening.for-straps': ({ number }) => `the slot several straps share, opening ${number},`,
  'inside.strap-gain': ({ level, of, before, after }, { say, small }) =>
    `${say(level)}: the straps added there bring its ${GAINED[of]} to ${small(after)} off the body, ${small(before)} without them.`,
  'part.throat': 'throat webs',
  'part.straps': ({ level }, { inSentence }) => `straps at the ${inSentence(level)}`,
  'part.gain': ({ without, with: held, at, atWithout, atWith }, { small }) =>
    `On two filled demo bodies the form lies ${small(without)} off the body in the mean without them, ${small(held)} with them; ${at === 'throat' ? 'the throat stands out by' : 'the width or depth farthest off misses by'} ${small(atWithout)} without, ${small(atWith)} with.`,
  'part.needed': 'Added because this form would not come out as asked without them.',
  'inside.web-too-open': ({ brace, open, most }, { say, percent }) =>
    `The ${say(brace)} is open over ${percent(open, 0)} of its height; ${percent(most, 0)} is the most over which it still holds front to back. ${MEND_WEB}`,
  'inside.hole-near-edge': ({ hole, side, plate, least }, { exactLength }) =>
    `The ${hole}${side ? ` ${sides(side)}` : ''} hole comes nearer than ${exactLength(least)} to the edge of the ${plate} plate: take a thinner pole, or thin ply instead of card.`,
  'inside.plate-vanishes': ({ plate, side, layers, cloth, most }, { small }) =>
    `Nothing would be left of the ${plateName(plate, side)}: ${layers} layers of cloth of ${small(cloth)} are taken off all round, and ${small(most)} is the most there. Give the thickness of shell and interfacing alone, measured by caliper; what lies over the shell goes to “Layers over the shell”.`,
  'inside.plate-vanishes-under-cover': ({ plate, side, cover, most }, { small, exactLength }) =>
    `Nothing would be left of the ${plateName(plate, side)}: the layers over the shell, ${small(cover)}, go off all round, and ${exactLength(most)} is the most there. Give the thickness of wadding and cover as they lie when worn.`,
  'inside.magnets-near-edge': ({ side, magnet, toEdge, toPeg, least, most }, tongue) => {
    const { small, exactLength } = tongue;
    const remedy =
      most === undefined
        ? 'There is no room for magnets beside this peg: take a thinner peg, or hang the arm by a strap.'
        : `Take magnets of ${exactLength(most)} at most, or a thinner peg.`;
    return `The magnets of the ${sides(side)} arm, ${small(magnet)}, leave ${board(toEdge, tongue)} of card to the edge of the armhole plate and ${board(toPeg, tongue)} to the peg's hole; ${exactLength(least)} are needed at both. ${remedy}`;
  },
  'inside.peg-near-edge': ({ side, peg, toEdge, least, most }, tongue) =>
    `The peg of the ${sides(side)} arm, ${tongue.small(peg)}, leaves ${board(toEdge, tongue)} of card to the edge of the armhole plate; ${tongue.exactLength(least)} are needed. Take a peg of ${tongue.exactLength(most)} at most.`,
};

function sides(side: Sides): string {
  return side === 'both' ? 'right and left' : side;
}

function plateName(plate: 'base' | 'neck' | 'armhole' | 'wrist', side: Sides | undefined): string {
  if (!side) return `${plate} plate`;
  return plate === 'wrist' ? `${sides(side)} wrist plate` : `${plate} plate ${sides(side)}`;
}

type Growing = Faults['inside.cloth-gives-way-as-measured'];

function growing({ level, girth, growth }: Growing, { say, lengthAlone, percent }: Tongue): string {
  const how = growth === undefined ? 'has no end: the cloth would burst' : `would be ${percent(growth, 0)}`;
  return `${say(level)}, ${lengthAlone(girth)} round: its growth ${how}`;
}

function firmest({ mostGrowth }: Growing, { percent }: Tongue): string {
  return `${percent(mostGrowth, 0)} is more than any firm cloth gives`;
}

function clothLeft(left: number, { small }: Tongue): string {
  return left > 0 ? `Only ${small(left)} of cloth are left` : 'No cloth is left';
}

/** None left is said so: the hole cuts into what is beside it. */
function board(mm: number, { small }: Tongue): string {
  return mm > 0 ? `${small(mm)}` : 'nothing';
}
