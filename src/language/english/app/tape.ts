/** Typing the measures. */
export const tape = {
  tape: {
    about: 'Five measures make a body. Every further one replaces an estimate, shown in grey.',
    printEmpty: 'Print an empty list',
    figure: 'Figure',
    withBust: 'With bust',
    withFlatChest: 'With flat chest',
    firstFive: 'The first five',
    further: 'Further measures',
    waist: {
      which: 'Where was the waist tied?',
      kinds: {
        narrowest: 'At the narrowest place',
        elastic: 'Where an elastic settles',
        navel: 'At the navel',
      },
      why: 'Take every length to or from the waist at the same place.',
    },
    armsHeld: {
      which: 'How were the arms held?',
      states: { relaxed: 'Hanging, relaxed', flexed: 'Bent, with a fist' },
      why: 'Over a relaxed arm sleeves fit at rest, over a bent one they let it work. It is written on the pieces and in the order of work.',
    },
    next: {
      measure: 'These would tell most about the shape, the first the most:',
      gain: (after: string, before: string) => `(shape known to ±${after} instead of ±${before})`,
    },
    groups: {
      girths: { name: 'More girths', why: 'They shape the body between the first three.' },
      lengths: { name: 'Lengths', why: 'They set the heights of bust, hip and base.' },
      shoulders: {
        name: 'Shoulders and armholes',
        why: 'They set slope and breadth, left and right if they differ.',
      },
      widths: { name: 'Widths and depths', why: 'A girth cannot tell wide from deep; these can.' },
      arms: { name: 'Arms', why: 'All five make a pair of arms that can be taken off.' },
      heights: {
        name: 'Heights',
        why: 'From the floor. Nape and waist tell how tall the stand must be, the others how high each place lies.',
      },
      wall: {
        name: 'From a wall',
        why: 'How the person stands, which no tape can tell. Barefoot, heels a hand’s breadth from a wall, standing as always; read each distance level. Take at least three, some behind and some in front: one alone says nothing.',
      },
    },
    countOf: (count: number, all: number) => `${count} of ${all}`,
    howToType:
      'Type centimetres or inches as you like: 92.5, 92,5 cm, 36 3/8 in. Take each measure twice, and a third time when they differ by more than 1 cm (0.5 cm for lengths and small girths).',
  },
  measure: {
    left: 'left',
    right: 'right',
    apart: 'Left and right apart',
    apartOf: (name: string) => `${name}: left and right apart`,
    together: 'One value for both sides',
    again: 'measure again',
    againOf: (name: string) => `${name}: measure again`,
    difference: (length: string) => `difference ${length}`,
    guide: 'why, and how it goes wrong',
    guideOf: (name: string) => `${name}: why, and how it goes wrong`,
    why: 'Why',
    takeCare: 'Take care',
    drawing: {
      front: 'Where the tape lies, front',
      back: 'Where the tape lies, back',
      side: 'What is read, from the right side',
    },
    met: (side: string, got: string) => `${side}met, body reads ${got}`,
    conflict: (side: string, got: string, off: string) => `${side}conflict: body reads ${got}, ${off}`,
    estimated: (side: string) => `${side}estimated`,
    ordinals: ['first', 'second', 'third', 'fourth', 'fifth'] as readonly string[],
    shortOrdinals: ['1st', '2nd', '3rd', '4th', '5th'] as readonly string[],
    reading: (name: string, ordinal: string) => `${name}, ${ordinal} reading`,
    apartOnceMore: (length: string) => `${length} apart: measure once more.`,
    apartMean: (length: string, mean: string) => `${length} apart, mean ${mean} is used`,
  },
  length: {
    needed: (label: string) => `${label} is needed; nothing can take its place.`,
    /** `message`: as the core says it; `typed`: what stood in the field. */
    notALength: (typed: string, example: string) =>
      `${typed === '' ? 'Nothing was typed' : `“${typed}” is not a length`}; type for example ${example}, or with a unit: 92.5 cm, 925 mm, 36 3/8 in.`,
    outside: (label: string, value: string, low: string, high: string) =>
      `${label} is ${value}; it must lie between ${low} and ${high}.`,
    meant: (unit: string, typed: string) => ` If you meant ${unit}, type ${typed}.`,
    units: { mm: 'millimetres', cm: 'centimetres', in: 'inches' },
  },
  printList: {
    title: 'Measures of ____________________ \u00a0 taken on ____________ \u00a0 by ____________',
    how: (unit: string) =>
      `In ${unit}. Snug, not tight; in the underwear that will be worn. Take each twice, and a third time when they differ by more than 1 cm or 3/8 in (0.5 cm or 3/16 in for lengths and small girths). The first five are needed, the rest help.`,
    measure: 'Measure',
    where: 'Where the tape lies',
    first: '1st',
    second: '2nd',
    sides: 'L          R',
    ask: 'Ask before you touch, and keep pins and scissors out of the way.',
  },
};
