/** Choosing, pulling and drawing seam lines. */
export const seams = {
  seams: {
    about:
      'More seams follow the body more truly and cost more sewing. In these layouts seams pass over the bust points and shoulder blades.',
    layout: 'Seam layout',
    panels: 'Panels',
    strain: 'Strain: 95 % of the cloth below',
    aboutStrain:
      'Strain is how much the cloth must shrink or stretch to lie on the body. 95 % of the cloth is strained less than the figure: it is the same everywhere, and tells of wrinkles better than a mean.',
    aboutCards:
      'The figures are rough, for this body: how far 95 % of the cloth is strained at most, cloth of the width chosen under Laying, hours to cut and sew the outer cloth.',
    aboutStrained: (strain: string) => `about ${strain} strain`,
    aboutCloth: (length: string) => `about ${length} of cloth`,
    aboutHours: (hours: string) => `about ${hours} h`,
    doesNotFit: 'does not fit this body',
    list: 'Seams on the body',
  },
  pull: {
    title: 'Pull the lines',
    how: 'Drag a bead on the body; both halves follow, and it catches on landmarks and levels unless Alt is held. By keyboard: choose a point, then arrow keys move it a little, with Shift ten times as far.',
    caught: (what: string) => `Caught on ${what}.`,
    strain: 'Strain, roughly: 95 % of the cloth below',
    before: 'Before',
    point: (line: string, number: number) => `${line}, point ${number}`,
    addPoint: 'Add a point',
    leaveOut: 'Leave this point out',
    takeAway: 'Take the line away',
    backTo: (layout: string) => `Back to ${layout}`,
  },
  ownLines: {
    title: 'More seams, or fewer',
    about: 'Both halves follow. Draw from base, neck, armhole or seam to another.',
    sewIn: 'Sew it in',
    divideLengthwise: 'Divide lengthwise',
    divide: 'Divide',
    joinAcross: 'Join across a seam',
    join: 'Join',
    both: (piece: string) => `both ${piece}`,
    two: (a: string, b: string) => `${a} and ${b}`,
    joint: (pieces: string, seam: string) => `${pieces}: ${seam}`,
    fewPoints: 'A seam needs two points or more.',
    uprightEnds:
      'Both ends must lie on something: the base, the neck, the armhole or another seam. Drag the end onto it.',
    levelEnds:
      'Both ends of a level seam must lie on another seam, a centre or the armhole. Drag the end onto it.',
  },
  draw: {
    click: 'Click on the body, point by point. Drag a bead to move it. Hold Alt to catch on nothing.',
    keys: 'By keyboard: add a named place, then arrow keys move it a little, with Shift ten times as far.',
    pencil: 'Draw on the body',
    caught: (number: number, what: string) => `Point ${number} caught on ${what}.`,
    count: (count: number) => `${count} ${count === 1 ? 'point' : 'points'}.`,
    leaveOut: 'Leave this point out',
    wipe: 'Wipe away',
    addPlace: 'Add a point at a named place',
    place: 'A named place…',
    pointOf: {
      region: (number: number) => `Point ${number} of the region`,
      line: (number: number) => `Point ${number} of the line`,
    },
  },
  /** What a point caught on; `what` is its name. */
  catches: {
    centre: { front: 'the centre front', back: 'the centre back' },
    armhole: 'the armhole',
    level: (what: string) => `the ${what} level`,
    line: (what: string) => `the line “${what}”`,
    landmark: (what: string) => `the ${what}`,
  },
  seamAdvice: {
    title: 'Ask for advice',
    about:
      'Tries out which seam to move, or which to add, where the cloth is asked for more than it takes. Nothing changes until you take it.',
    looking: 'Looking for the places',
    place: (number: number, all: number) => `Place ${number} of ${all}`,
    stop: 'Stop looking',
    look: 'Look for better seams',
    nowhere: (cloth: string) => `Nowhere is the cloth asked for more than ${cloth} takes.`,
    stale: 'The seams or the body have changed since: look again.',
    take: 'Take this advice',
  },
};
