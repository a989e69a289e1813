/** A bump that a choice of shape asks for; it stands at a fixed place, whatever the search tries. Lengths mm, angles radians. */
export interface ChoiceBump {
  /** Angle round the body of its middle, and of its mirrored partner at π − u where there is one. */
  readonly u: number;
  readonly isPair: boolean;
  readonly z: number;
  /** Reach round the body to either side, and down and up. */
  readonly across: number;
  readonly down: number;
  readonly up: number;
  readonly height: number;
  /** Which way it stands out, angle in plan (0 = to the wearer's right). */
  readonly towards: number;
  /** As in `BUMP_STRIDE`. */
  readonly fullness: number;
  readonly roundness: number;
}

type Choices = Readonly<Record<string, number>>;
/** Expected heights over the waist, and `best`: the typed or estimated value of a measure. */
interface Heights {
  readonly best: (id: string) => number;
  readonly zUnderbust: number;
  readonly zBust: number;
}

const FRONT = Math.PI / 2;

/** The bumps of all choices but those that hang on an unknown of the fit; none where nothing is asked for. */
export function listChoiceBumps(shape: Choices, heights: Heights): readonly ChoiceBump[] {
  return [
    ...listBellies(shape, heights),
    ...listRolls(shape, heights),
    ...listPaddings(shape, heights),
  ].filter(({ height }) => height !== 0);
}

/** How far a belly leaves its usual height, 0 … 1: that much of it stands as a bump of its own. */
export function ownBelly(shape: Choices): number {
  return Math.min(1, Math.abs(shape.bellyHeight) / 50);
}

/** High, low, carrying a child, hanging, padded: each on the centre front. */
function listBellies(shape: Choices, { best, zUnderbust, zBust }: Heights): ChoiceBump[] {
  const zHip = -best('waistToHip');
  const zHighHip = -best('waistToHighHip');
  const own = { u: FRONT, isPair: false, towards: FRONT };
  const high = Math.min(zHighHip + shape.bellyHeight, zUnderbust - 30);
  const carried = -40;
  // The fold stays above the lowest row: no form ends in it.
  const fold = zHip + 6;
  return [
    {
      ...own,
      ...{
        z: high,
        across: 1.45,
        down: 130,
        up: Math.min(130, zBust + 5 - high),
        fullness: 0.7,
        roundness: 0.1,
      },
      height: ownBelly(shape) * (30 + 1.2 * Math.max(0, shape.belly)),
    },
    {
      ...own,
      ...{ z: carried, across: 1.4, down: 185, up: Math.max(60, zBust - carried), height: shape.pregnancy },
      ...{ fullness: 1.4, roundness: 0.4 },
    },
    {
      ...own,
      ...{ z: fold + 58, across: 1.4, down: 64, up: 170, height: shape.apron, fullness: 1, roundness: 0.8 },
    },
    {
      ...own,
      ...{
        z: -55,
        across: 1.25,
        down: 150,
        up: 140,
        height: shape.bellyPadding,
        fullness: 0.8,
        roundness: 0.2,
      },
    },
  ];
}

/** One roll under the band of a brassiere and one above the waist, each side of the spine and round to the side. */
function listRolls({ backRolls }: Choices, { zUnderbust, zBust }: Heights): ChoiceBump[] {
  // The two of a pair pass over the spine a little: there they leave a furrow, not a gap.
  const roll = { u: -0.6, isPair: true, towards: -0.8, across: 1.3, fullness: 0.6, roundness: 0 };
  const step = Math.max(20, 0.5 * (zBust - 6 - 0.4 * zUnderbust));
  return [zBust - 6, 0.4 * zUnderbust].map((z) => ({
    ...roll,
    z,
    down: 1.2 * step,
    up: 1.2 * step,
    height: backRolls,
  }));
}

/** Cushions a performer wears under the costume. */
function listPaddings({ hipPadding, seatPadding }: Choices, { best }: Heights): ChoiceBump[] {
  const zHip = -best('waistToHip');
  const cushion = { isPair: true, fullness: 0.8, roundness: 0.1 };
  return [
    { ...cushion, u: 0, towards: 0, z: 0.66 * zHip, across: 1.05, down: 135, up: 140, height: hipPadding },
    {
      ...cushion,
      ...{ u: -1, towards: -1.35, z: zHip + 32, across: 0.9, down: 110, up: 140, height: seatPadding },
    },
  ];
}

/** How much the centre front stands forward of the trunk at a level, mm, by the bumps of the belly. */
export function bumpAtFront(bumps: readonly ChoiceBump[], z: number): number {
  return bumps
    .filter(({ u }) => u === FRONT)
    .reduce((sum, { z: middle, down, up, height }) => {
      const q = ((z - middle) / (z < middle ? down : up)) ** 2;
      return sum + (q < 1 ? height * (1 - q) ** 1.3 : 0);
    }, 0);
}

/** What a bump in front of a section adds to its depth over breadth: the tape round it stays as it is typed. */
export function ratioOfBump(bump: number, girth: number): number {
  return (2.2 * bump) / girth;
}
