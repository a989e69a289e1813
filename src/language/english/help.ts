import type { frame } from './app/frame.ts';

/** What the help says: keys and gestures, words of the trade, each stage, a round of the page. Loaded when it is asked for. */
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
  done: 'Done:',
  stages: {
    tape: {
      purpose: 'Here the measures of a person become a body.',
      steps: [
        'Type the first five. With each the body beside them grows more like the person.',
        'Add those that are named as telling most; a grey number is an estimate.',
        'Where a measure is doubted, take it again.',
      ],
      done: 'when the first five stand, and nothing is left to mend.',
    },
    body: {
      purpose: 'Here the body is compared with the person, before any cloth is cut.',
      steps: [
        'Turn it, or lay a photo under it, and look for what differs.',
        'Choose by the pictures what no tape can tell: back, belly, seat, shoulders.',
        'Where tapes are in conflict, measure again.',
      ],
      done: 'when you know the person again, and every tape is met.',
    },
    seams: {
      purpose: 'Here you choose how the cloth is divided.',
      steps: [
        'Choose a layout by its picture; under it stands about how much strain, cloth and time it takes on this body.',
        'Where cloth would wrinkle, pull the points of a seam line, add a seam, or ask for advice.',
      ],
      done: 'when the line over the work says that it can be sewn.',
    },
    panels: {
      purpose: 'Here the panels lie flat, as they will be cut.',
      steps: [
        'Choose the kind of cloth and the seam allowance.',
        'Look where colours are strong: there the cloth must shrink or stretch most.',
        'Turn the grain of a panel if that helps.',
      ],
      done: 'when no panel asks more than your cloth gives.',
    },
    inside: {
      purpose: 'Here stands what holds the filled form in shape and carries it.',
      steps: [
        'Type the tube and the board you have.',
        'Sew and fill a test tube of your cloth, and type what you read from it.',
        'See what the form needs inside, how safe its stand is, and what to buy.',
      ],
      done: 'when tube, boards and stand are ones you can get, and its level girths come near the body’s.',
    },
    cutting: {
      purpose: 'Here the pattern goes onto paper, or to a machine.',
      steps: [
        'Make the test tube first: it tells how far your cloth grows when it is filled.',
        'Choose the paper, print at 100 %, and measure the bars on the first page.',
        'Stick the pages together and cut, with the care told below.',
      ],
      done: 'when every piece in the list is cut and marked.',
    },
    laying: {
      purpose: 'Here the pieces lie on your cloth and boards, and you see how much to buy.',
      steps: [
        'Type the width of the cloth and, if it has one, its print.',
        'Wait for a plan, or move the pieces by hand.',
        'Keep the plan that you will cut by.',
      ],
      done: 'when there is a plan for each cloth and board you use.',
    },
    making: {
      purpose: 'Here is the order of work, worked out for this very form.',
      steps: [
        'Follow the steps from the top; each names its pieces, seams and lengths.',
        'Tick each as it is done.',
        'At the machine, let one step fill the page, or print them.',
      ],
      done: 'when all but the optional steps are ticked.',
    },
    checking: {
      purpose: 'Here the sewn form is compared with the body.',
      steps: [
        'Measure the empty shell before you fill it, and type the readings.',
        'Fill it, and measure again.',
        'Do what is advised, and measure once more.',
      ],
      done: 'when nothing is left to do for the last readings.',
    },
  },
  round: {
    title: 'A round of the page',
    about: 'Nine places, a sentence or two at each; nothing in the project changes.',
    place: (number, all) => `${number} of ${all}`,
    back: 'Back',
    next: 'Next',
    finish: 'Finish',
    leave: 'Leave',
    notYet: 'It comes once the first measures are typed.',
    stops: {
      firstFive: 'Everything begins with these five measures. All others may follow later.',
      body: 'Your measures make this body. Drag it, or use the arrow keys, to see it from all sides.',
      layout:
        'A layout says where the seams run. This one is chosen; the others are a click away, and undo brings back what was.',
      verdict:
        'This line follows you through all stages: it says whether the form can be sewn, and where it would wrinkle.',
      flat: 'The panels, laid flat. Colours show where the cloth must shrink or stretch to lie on the body.',
      inside:
        'Webs, ties and a pole hold the filled form in shape. Here you begin by telling which tube you have.',
      cutting:
        'Before you print the whole pattern, sew this small tube of your cloth: it tells how far the cloth grows. Then print; how it all lies on your cloth is the next stage.',
      making: 'Every step in order, with its pieces and seams. Tick what is done; the next one stands open.',
      checking:
        'When it is sewn, measure here, empty and filled, and be told what to mend. That is the whole round.',
    },
  },
} as const satisfies Help;

/** What a stage is for, what a maker does there, and when that is done. */
export interface StageHelp {
  readonly purpose: string;
  readonly steps: readonly string[];
  readonly done: string;
}

/** Where the round of the page stops, in its order. */
export type StopId =
  | 'firstFive'
  | 'body'
  | 'layout'
  | 'verdict'
  | 'flat'
  | 'inside'
  | 'cutting'
  | 'making'
  | 'checking';

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
  /** Before `done` of a stage. */
  readonly done: string;
  readonly stages: Readonly<Record<keyof typeof frame.stages.names, StageHelp>>;
  readonly round: {
    readonly title: string;
    readonly about: string;
    readonly place: (number: number, all: number) => string;
    readonly back: string;
    readonly next: string;
    readonly finish: string;
    readonly leave: string;
    /** Of a thing that is shown of a form only. */
    readonly notYet: string;
    readonly stops: Readonly<Record<StopId, string>>;
  };
}
