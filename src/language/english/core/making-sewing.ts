import type { MakingPhrases } from '../../../core/making/index.ts';
import type { Entries } from '../../catalogue.ts';

export type SewingWords = {
  readonly [Id in keyof MakingPhrases as Id extends `step.${
    | 'sew'
    | 'half'
    | 'sleeve'
    | 'inner'
    | 'shoulder'
    | 'neck'
    | 'side'
    | 'closing'
    | 'turn-out'}.${string}`
    ? Id
    : never]: MakingPhrases[Id];
};

/** From the first seam to the empty shell, right side out. */
export const sewingSteps: Entries<SewingWords> = {
  'step.sew.stitch':
    'Every seam of the shell is sewn right sides together in stitches of 2 mm, with a second row a millimetre into the allowance; clip hollow edges up to the stay-stitching, and press open.',

  'step.half.title': ({ half, isApart }) =>
    half === 'front'
      ? 'Sew the front, lying flat'
      : isApart
        ? 'Sew right and left back, each lying flat'
        : 'Sew the back, lying flat',
  'step.half.apart':
    'Right and left back stay apart: the centre back is the last seam of all, and until then everything is reached from there.',
  'step.half.level-seams-first':
    'In the order of the letters below: level seams first, then the upright ones from the middle outwards, across them.',
  'step.half.outwards': 'In the order of the letters below, from the middle outwards.',
  'step.half.pin':
    'Pin letter to letter and notch to notch; level lines may miss each other by 0.15 cm (1/16 in), no more. Where one side curves out and the other in, pin with the hollow one on top.',

  'step.sleeve.title': 'Sew the pole sleeve with its ties and straps',
  'step.sleeve.hem': ({ hasStraps }) =>
    `The sleeve is the narrow tube for the pole. Ties go from it to centre front and back, ${hasStraps ? 'straps to the sides, ' : ''}webs from front to back. Hem (fold the edge under twice and stitch it down) ${hasStraps ? 'webs, ties and straps' : 'webs and ties'} at top and bottom, and stitch round their openings before cutting these out.`,
  'step.sleeve.stitch': ({ hasStraps, areOneLine }) =>
    hasStraps
      ? `The sleeve lies flat, marks up. Stitch every strap, then the front tie, along its own line on it, in the order below, level on level${areOneLine ? ': each strap is a line of its own, though one letter names all on a line' : ''}.`
      : 'The sleeve lies flat, marks up. Stitch the front tie along its line on it, level on level.',
  'step.sleeve.throat':
    'Stitch both throat webs, the small ones that hold the hollow of the neck, beside the front tie in the same way, right and left, their longer end down, mark on mark. They lie higher on the shell than on the sleeve: that slant is wanted.',
  'step.sleeve.close':
    'Close the sleeve to a tube, marked side out, with the edge of the back tie caught in the seam. Everything now hangs on the outside of the tube.',
  'step.sleeve.tabs': ({ count }) =>
    `Stitch the ${count} tabs to its lower end, evenly round it, hanging down.`,
  'step.sleeve.try': 'Slide the sleeve over the pole: it must pass without force, and not flap.',

  'step.inner.title': ({ half, hasStraps }) =>
    half === 'front'
      ? 'Sew tie and webs to the front'
      : `Sew ${hasStraps ? 'straps and webs' : 'the webs'} to the back, right, then left`,
  'step.inner.lay-front':
    'Lay the front flat, wrong side up, and the sleeve on it along its middle. Nothing is closed yet, so every line is reached from a free side edge: roll up what lies in the machine’s arm.',
  'step.inner.to-front':
    'First the front tie, to the pressed-open allowances of its seam, or along its line. Then the front edge of each web, mark on mark, two rows of stitches 3 and 8 mm from its edge.',
  'step.inner.throat':
    'Last each throat web to its line, end on end and mark on mark, allowance outwards, the sleeve laid over to the other side; reach it from the neck edge. Where stitches on the outside do not matter, top-stitch (sew once more from the right side) along them: they carry much.',
  'step.inner.straps':
    'Begin on the right. Draw each strap, from the sleeve outwards, through the slot of the right web, and sew its end along its line on the side, level on level. A strap that was passed by cannot be threaded once the web is closed.',
  'step.inner.to-back': ({ far, isRolled, hasStraps }, { length }) =>
    `${hasStraps ? 'Then sew' : 'Begin on the right: sew'} the back edge of the web to its line on the right back, mark on mark, in two rows. It lies ${length(far)} from the free edge${isRolled ? ': roll that side up so that it passes the machine’s arm' : ', so near that any machine reaches it'}. Then the same on the left.`,
  'step.inner.no-twist':
    'Measure each web and strap against the figures below, and look through from base to neck: none may twist, or cross another but by its slot.',

  'step.shoulder.title': 'Sew the shoulders',
  'step.shoulder.outwards':
    'Front and back wrong side out, right sides together, from the neck outwards. Webs and sleeve hang free inside.',
  'step.neck.title': 'Set on the neck band',
  'step.neck.pin':
    'Pin the band round the neck edge from the middle of the front, right sides together, clip the neck edge up to the stay-stitching, and sew with the body side on top.',
  'step.neck.open': ({ isOpen }) =>
    isOpen
      ? 'Leave the band open behind: it is closed in one with the centre back.'
      : 'Close the band behind last.',
  'step.side.title': 'Sew the sides',
  'step.side.adjust':
    'These seams adjust: baste both first, smooth the shell, open behind, flat in one layer level by level, wrong side up (it does not lie flat all at once), and compare with the widths below. Too wide: baste deeper, half the error at each side seam, a quarter in each of its two plies; too narrow: less deep in the same way.',
  'step.side.sew':
    'Then sew them, right and left, with webs, straps and sleeve held out of the way; press open.',
  'step.side.packed':
    'Webs already close these sides. For each: turn the tube between side and web inside out over everything else, rolled up, so that the side edges lie right sides together round the roll; sew, and draw it out through the base.',
  'step.side.ladder':
    'Webs already close these sides, and what is left does not fit into the tube beside them: turn everything right side out and close them from outside in ladder stitch: small stitches that run in the folds of both turned-in edges and cross straight over, like the rungs of a ladder.',

  'step.closing.title': ({ isBehind, isLaddered }) =>
    isLaddered
      ? 'Turn the shell right side out'
      : isBehind
        ? 'Close the centre back, band and all'
        : 'Close the shell: the last side',
  'step.closing.empty':
    'Sew the last seam on the empty tube, wrong side out, from the base up, band and all.',
  'step.closing.count': 'Count the pins: from here on none is found again.',
  'step.closing.roll': ({ isBehind, hasStraps, mouth, pack, ratio }, { length, fixed }) =>
    isBehind
      ? `Lay the shell down with the outside of the front up, sleeve and ties under it. Roll both sides up from the side seams${hasStraps ? ', with the ends of their straps,' : ''} and lay the rolls on the middle of the front, between the lines of the two webs. Bring the right and left back edges up round them, right sides together, and pin: the webs turn inside out with them, and the rolls lie inside a tube of front, webs and back. Together they are about ${length(pack)} round, the tube at its narrowest ${length(mouth)}: ${fixed(ratio, 1)} times as much.`
      : `Roll everything but the open side together. Turn the tube between side and web inside out over the roll, and pin its edges right sides together. The roll is about ${length(pack)} round, the tube at its narrowest ${length(mouth)}: ${fixed(ratio, 1)} times as much.`,
  'step.closing.sew':
    'Sew in the order of the letters below, from the base up and on through the band, turning the tube under the needle and keeping the roll away from it. Second row, press the seam open with your fingers.',
  'step.closing.tie-to-one':
    'Sew the back tie, mark on mark, to the right one of the two free allowances of the centre back, close to the seam line.',
  'step.closing.turn': ({ isBehind }) =>
    isBehind
      ? 'Turn everything right side out through the open back and arrange webs and straps inside. Count the pins. Turn both back edges in along the seam line and baste them.'
      : 'Turn everything right side out through the open side. Count the pins. Turn both edges in along the seam line and baste them.',
  'step.closing.flat':
    'Lay the empty shell flat in two layers, level line on level line, and compare with the widths below. Now is the time to sew a seam again: not when it is full. Then measure round the edges of neck, armholes and base along the stitching lines, and write them down beside the figures of the next step: the plates are cut to these.',
  'step.turn-out.title': ({ isBehind, isLaddered }) =>
    isLaddered
      ? isBehind
        ? 'Ladder the centre back from outside'
        : 'Ladder the last side from outside'
      : 'Sew on the back tie and draw the shell out',
  'step.turn-out.tie':
    'Draw nothing out yet: the allowances of the centre back stick out of the tube, and so do sleeve and back tie. Lay the edge of the back tie against both allowances together, mark on mark, and sew through all three close to the seam: nothing else lies under the needle.',
  'step.turn-out.draw': ({ mouth, pack, ratio }, { length, fixed }) =>
    `Reach into the tube from the base and draw the rolls out, one side first, then the other, until the whole shell is right side out and sleeve and ties lie in it. The tie now holds back to front, so that ${length(mouth)} are left round a roll of about ${length(pack)} (${fixed(ratio, 1)} times): slowly, never with a hook.`,
  'step.turn-out.ladder':
    'Close the seam from outside, from the base up, in ladder stitch: stitches of 5 mm that run in the folds of both turned-in edges and cross straight over, like the rungs of a ladder. Waxed thread, a curved needle, a knot every 10 cm (4 in).',
  'step.turn-out.why-ladder': ({ mouth, pack, ratio }, { length, fixed }) =>
    `Sewing it by machine would mean to put a roll of about ${length(pack)} round into a tube ${length(mouth)} round: ${fixed(ratio, 1)} times as much, and 2 are needed.`,
  'step.turn-out.or-packed': ({ mouth, pack, ratio }, { length, fixed }) =>
    `By hand nothing has to be rolled up, turned inside out or drawn out again, and the seam can be mended from outside at any time. Who would rather sew it by machine can: a roll of about ${length(pack)} round goes into a tube ${length(mouth)} round (${fixed(ratio, 1)} times); choose “All parts” under Inside, and the steps for it stand here.`,
};
