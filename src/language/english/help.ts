/** What the help says: keys and gestures, and words of the trade. Loaded when it is asked for. */
export const help = {
  title: 'Keys and words',
  keys: 'Keys and gestures',
  words: 'Words of the trade',
  toWords: 'Words of the trade are told below.',
  groups: [
    {
      name: 'Everywhere',
      keys: [
        ['Ctrl or ⌘, Z', 'takes the last step back, and goes to where it was made'],
        ['Ctrl or ⌘, Shift, Z', 'does it again'],
        ['Ctrl or ⌘, S', 'saves the project; with Shift to a file you choose, where the browser can'],
        ['Alt, 1 to 9', 'goes to a stage'],
        ['Enter, Esc', 'takes what is typed; gives up what cannot be used'],
        ['?', 'opens this list'],
      ],
    },
    {
      name: 'The body',
      keys: [
        ['Drag, or arrow keys', 'turns it'],
        ['Wheel, two fingers, + and −', 'brings it nearer or farther'],
        ['Point at it', 'lights the seam, tape or level, and its row in the list'],
      ],
    },
    {
      name: 'Flat pieces, cloth and photos',
      keys: [
        ['Drag, or arrow keys', 'moves the picture, or the piece or point that is chosen'],
        ['+ and −, 0', 'brings it nearer or farther; shows all of it'],
        ['Shift with an arrow', 'moves ten times as far'],
        ['Alt while dragging', 'a point then catches on nothing'],
        ['R, L', 'turns a laid piece by half a turn; locks it'],
      ],
    },
    {
      name: 'At the bench',
      keys: [['Arrow keys, or a swipe', 'goes to the next step, or back']],
    },
  ],
  glossary: [
    ['allowance', 'Cloth beyond the seam line, by which the seam is sewn.'],
    ['basting', 'Long stitches by hand that hold until the seam is sewn, and are pulled out.'],
    ['bias', 'The slanting direction of cloth, at 45° to its threads; it stretches most.'],
    ['ease', 'What one side of a seam has more than the other; it is taken up while sewing.'],
    ['grain', 'The direction of the warp, which runs along the selvedge.'],
    ['interfacing', 'A second cloth, glued on by the iron or sewn on, that makes the outer cloth firm.'],
    ['level', 'A line round the body at one height: bust, waist, hip.'],
    ['notch', 'A mark on the edge that meets its partner on the other piece.'],
    ['panel', 'One part of the outer cloth between its seams.'],
    ['selvedge', 'The firm woven edge of the cloth.'],
    ['sleeve', 'Here: the cloth tube inside the form through which the pole goes.'],
    ['strain', 'How much cloth must shrink or stretch to lie on the body.'],
    ['tie, strap', 'A band of cloth inside, from the outer cloth to the sleeve, that holds it back.'],
    ['toile, trial shell', 'The shell sewn first of cheap cloth, to be tried on.'],
    ['warp, weft', 'The threads along the cloth, and those across it.'],
    ['web', 'A wall of cloth inside, from front to back, that keeps the form from going round.'],
  ],
} as const satisfies Help;

/** What every language's help has. */
export interface Help {
  readonly title: string;
  readonly keys: string;
  readonly words: string;
  readonly toWords: string;
  readonly groups: readonly {
    readonly name: string;
    readonly keys: readonly (readonly [string, string])[];
  }[];
  /** Word and meaning, in the order of the language's alphabet. */
  readonly glossary: readonly (readonly [string, string])[];
}
