import type { BodyInput } from '../../src/core/body/index.ts';

/**
 * The Lantern Yard Players, a community theatre of our own invention, as its wardrobe book has them: bodies at the ends of
 * what stages see. Names and numbers are invented; how such bodies measure is from memory and common practice, no source.
 */
export interface Person extends BodyInput {
  readonly name: string;
  readonly about: string;
}

const five = (
  bustGirth: number,
  waistGirth: number,
  hipGirth: number,
  backWaistLength: number,
  neckBaseGirth: number,
) => ({ bustGirth, waistGirth, hipGirth, backWaistLength, neckBaseGirth });

export const WARDROBE: readonly Person[] = [
  {
    name: 'Agda',
    about: 'twelve years old, 1.40 m',
    figure: 'bust',
    measures: { ...five(700, 590, 740, 318, 300), shoulderLength: 100 },
  },
  {
    name: 'Bero',
    about: 'thirteen years old, 1.45 m',
    figure: 'chest',
    measures: { ...five(720, 630, 740, 345, 325), shoulderLength: 108 },
  },
  {
    name: 'Cilla',
    about: 'grown up, 1.30 m tall',
    figure: 'bust',
    measures: { ...five(820, 740, 880, 300, 335), waistToHip: 150 },
  },
  { name: 'Dagny', about: '2.02 m tall', figure: 'bust', measures: five(960, 790, 1060, 478, 375) },
  {
    name: 'Egil',
    about: 'very heavy, the belly foremost',
    figure: 'chest',
    measures: { ...five(1450, 1520, 1430, 500, 505), highHipGirth: 1500 },
    shape: { belly: 'full' },
  },
  {
    name: 'Frauke',
    about: 'very heavy, with a hanging belly and rolls of the back',
    figure: 'bust',
    measures: { ...five(1440, 1360, 1540, 430, 435), highHipGirth: 1500, underbustGirth: 1260 },
    shape: { apron: 'full', backRolls: 'full' },
  },
  { name: 'Gerrit', about: 'very thin', figure: 'chest', measures: five(800, 650, 810, 440, 350) },
  {
    name: 'Hedda',
    about: 'in her ninth month',
    figure: 'bust',
    measures: { ...five(1020, 1010, 1060, 400, 365), highHipGirth: 1070, underbustGirth: 850 },
    shape: { pregnancy: 'late' },
  },
  {
    name: 'Ivo',
    about: 'a high, firm belly',
    figure: 'chest',
    measures: { ...five(1120, 1110, 1070, 450, 430), highHipGirth: 1080 },
    shape: { bellyHeight: 'high', belly: 'full' },
  },
  {
    name: 'Jorid',
    about: 'a low belly',
    figure: 'bust',
    measures: { ...five(1000, 900, 1080, 400, 375), highHipGirth: 1060 },
    shape: { bellyHeight: 'low', belly: 'rounded' },
  },
  {
    name: 'Kaspar',
    about: 'a belly that hangs over the belt',
    figure: 'chest',
    measures: { ...five(1240, 1260, 1220, 465, 465), highHipGirth: 1270 },
    shape: { apron: 30 },
  },
  {
    name: 'Lone',
    about: 'rolls of the back',
    figure: 'bust',
    measures: { ...five(1150, 1020, 1180, 410, 400), underbustGirth: 1000 },
    shape: { backRolls: 'full' },
  },
  {
    name: 'Malte',
    about: 'plays from a wheelchair, measured seated',
    figure: 'chest',
    measures: five(1030, 960, 1040, 455, 415),
    shape: { posture: 'seated' },
  },
  {
    name: 'Nanna',
    about: 'the right hip 60 mm higher',
    figure: 'bust',
    measures: { ...five(920, 760, 990, 395, 360), waistToHip: { right: 185, left: 245 } },
  },
  {
    name: 'Orla',
    about: 'the chest to the right, the right armpit lower',
    figure: 'bust',
    measures: {
      ...five(890, 730, 950, 380, 355),
      shoulderLength: 122,
      sideLength: { right: 160, left: 195 },
    },
    shape: { trunkShift: 30, trunkTurn: 8 },
  },
  {
    name: 'Piet',
    about: 'the chest to the left and turned, hips of unlike heights',
    figure: 'chest',
    measures: { ...five(960, 850, 980, 430, 400), waistToHip: { right: 240, left: 215 } },
    shape: { trunkShift: -35, trunkTurn: -12 },
  },
  {
    name: 'Quirin',
    about: 'old, a hump just below the nape',
    figure: 'chest',
    measures: five(1000, 940, 1010, 455, 415),
    shape: { hump: 'clear', humpBelow: 'high', lean: 'forward' },
  },
  {
    name: 'Runa',
    about: 'old, a low hump and the neck far forward',
    figure: 'bust',
    measures: five(930, 840, 980, 395, 365),
    shape: { hump: 40, humpBelow: 'low', neckForward: 'far' },
  },
  {
    name: 'Signe',
    about: 'the left breast removed',
    figure: 'bust',
    measures: { ...five(940, 790, 1000, 400, 365), underbustGirth: 830, neckToBustPoint: 275 },
    shape: { breastLeft: 'none' },
  },
  {
    name: 'Tilda',
    about: 'the right breast removed, the left one large',
    figure: 'bust',
    measures: { ...five(1090, 930, 1110, 405, 390), underbustGirth: 940 },
    shape: { breastRight: 'none' },
  },
  {
    name: 'Ulla',
    about: 'both breasts removed',
    figure: 'bust',
    measures: { ...five(900, 800, 990, 395, 365), underbustGirth: 850 },
    shape: { breastRight: 'none', breastLeft: 'none' },
  },
  {
    name: 'Vida',
    about: 'breasts of unlike size and height',
    figure: 'bust',
    measures: { ...five(960, 770, 1000, 400, 362), underbustGirth: 800 },
    shape: { breastLeft: 0.65, breastLevels: 30 },
  },
  {
    name: 'Wenke',
    about: 'a heavy bust that hangs',
    figure: 'bust',
    measures: { ...five(1120, 900, 1090, 405, 375), underbustGirth: 920 },
    shape: { bustDrop: 30 },
  },
  {
    name: 'Xenia',
    about: 'breasts far apart',
    figure: 'bust',
    measures: { ...five(930, 750, 980, 400, 358), underbustGirth: 790 },
    shape: { bustGap: 'apart', bustSpread: 'apart' },
  },
  {
    name: 'Yorick',
    about: 'one shoulder 60 mm lower',
    figure: 'chest',
    measures: { ...five(1000, 880, 1000, 445, 408), shoulderDrop: { right: 95, left: 35 } },
  },
  {
    name: 'Zita',
    about: 'a long, thin neck, shown high',
    figure: 'bust',
    measures: { ...five(860, 680, 920, 400, 340), neckGirth: 300 },
    shape: { neckHeight: 'high', neckTilt: 'level' },
  },
  {
    name: 'Anselm',
    about: 'a strong man: broad, with a thick neck and a small waist',
    figure: 'chest',
    measures: {
      ...five(1240, 860, 1030, 465, 470),
      neckGirth: 440,
      acrossBack: 465,
      shoulderLength: 165,
    },
    shape: { shoulderForm: 'muscular', blade: 'sharp' },
  },
  {
    name: 'Berit',
    about: 'padded at hips and seat for a farthingale part',
    figure: 'bust',
    measures: five(900, 720, 1160, 395, 355),
    shape: { hipPadding: 'thick', seatPadding: 'thick' },
  },
  {
    name: 'Curd',
    about: 'padded to a landlord’s belly',
    figure: 'chest',
    measures: { ...five(1020, 1010, 1030, 445, 405), highHipGirth: 1080 },
    shape: { bellyPadding: 'thick' },
  },
  {
    name: 'Dörte',
    about: 'a very hollow back and a full seat',
    figure: 'bust',
    measures: five(900, 720, 1050, 385, 355),
    shape: { sway: 30, seat: 35 },
  },
  {
    name: 'Elin',
    about: 'a very large bust on a narrow back',
    figure: 'bust',
    measures: { ...five(1180, 800, 1040, 400, 368), underbustGirth: 840 },
  },
  {
    name: 'Finn',
    about: 'a short, thick neck that slopes',
    figure: 'chest',
    measures: { ...five(1150, 1060, 1100, 450, 470), neckGirth: 455 },
    shape: { neckHeight: 'low', neckTilt: 'steep' },
  },
];
