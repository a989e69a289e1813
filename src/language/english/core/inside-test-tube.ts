import type { InsidePhrases } from '../../../core/inside/index.ts';
import type { Entries } from '../../catalogue.ts';

type TestTube = {
  readonly [Id in keyof InsidePhrases as Id extends `test-tube.${string}` ? Id : never]: InsidePhrases[Id];
};

/** The tube that tells by how much the cloth grows. */
export const testTube: Entries<TestTube> = {
  'test-tube.name': 'test tube',
  'test-tube.end': ({ end }) => `test tube ${end}`,
  'test-tube.line': ({ number }) => `measure ${number}`,
  'test-tube.why': 'Before any panel is cut: how much does this cloth grow when it is stuffed?',
  'test-tube.numbered': ({ number, text }, { say }) => `${number}. ${say(text)}`,
  'test-tube.cut':
    'Cut tube and two ends from the cloth and interfacing of the shell, fused as they will be, the grain as drawn.',
  'test-tube.sew': ({ closingLetter: closing, endLetter: end }) =>
    `Sew ${closing} to ${closing}, then an end to each ${end}, mark on mark, with the stitch and thread of the shell. Leave 10 cm of one ${end} open. Turn it right side out.`,
  'test-tube.stuff':
    'Stuff it as hard as the form will be, small tufts first into the rims, wearing a mask: a thumb pressed in leaves no dent. Close it by hand, stand it on end and let it rest for a day.',
  'test-tube.measure':
    'Measure round it at lines 1, 2 and 3, the tape level and touching all round but not pulled.',
  'test-tube.type': ({ girth }, { fineLength }) =>
    `Type the three girths under Inside, “Test tube”. Before stuffing it measures ${fineLength(girth)} over the cloth. The panels are then cut for what the cloth grows: only then print and cut them.`,
  'test-tube.too-small': ({ line, girth, least }, { lengthAlone }) =>
    `Test tube, girth at line ${line}: ${lengthAlone(girth)} is less than the tube as it was sewn, ${lengthAlone(least)} over the cloth. Fill it harder, or check that it was printed true to size, and measure again; until then nothing is taken off for growth.`,
  'test-tube.too-large': ({ line, girth, most }, { lengthAlone }) =>
    `Test tube, girth at line ${line}: ${lengthAlone(girth)} is more than cloth can grow, ${lengthAlone(most)} over the cloth. Check that its seam is not open and that it was printed true to size, and measure again; until then nothing is taken off for growth.`,
  'test-tube.uneven': ({ spread, most }, { small, exactLength }) =>
    `Test tube: the girths differ by ${small(spread)}, and ${exactLength(most)} are the most of a tube filled evenly. Fill the thin part harder and measure all three lines again.`,
  'test-tube.skipped': ({ level, width }, { say, small }) =>
    `STOP before you print: no test tube was measured, so how much your cloth grows is a guess. At the level “${say(level)}” alone the girth may come out anywhere within ${small(width)}. Sew the test tube first and type its girths under Inside.`,
  'test-tube.growth-twice': ({ growth }, { percent }) =>
    `Growth is given twice: ${percent(growth, 2)} in the project file (inside.measuredGrowth), which is used, and girths of the test tube. Leave one out.`,
};
