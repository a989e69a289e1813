import { readCutting } from '../assembly/index.ts';
import { plain, wordsOf } from '../base/index.ts';
import type { Form, WorkCheck, WorkSeam, WorkStep } from '../form/index.ts';
import { barsOfCover, findPaper, PRINT_OPTIONS, planTiles } from '../sheet/index.ts';
import { instructionsOfTestTube, measuredGrowthOf, sewnGirthOfTestTube } from '../supports/index.ts';
import { boardSteps } from './order-of-work-boards.ts';
import { cautionsOf, innerPieces, innerSeams, lengthCheck, panelsOf, step } from './work-parts.ts';

/** From the test of the cloth, which changes all panels, to the plates that close the form. */
export function prepareSteps(form: Form): WorkStep[] {
  return [
    ...(form.inside ? [tryCloth(form)] : []),
    decideUse(form),
    measureTwice(form),
    printFirstPage(form),
    tryShell(form),
    prepareCloth(),
    cutCloth(form),
    markPieces(form),
    ...boardSteps(form),
  ];
}

/** Sews, fills and measures a tube of the cloth: what it grows by is taken off the panels. */
function tryCloth(form: Form): WorkStep {
  const { inside: options } = form.project;
  const growth = measuredGrowthOf(options);
  const seams = seamsOfTube(form);
  const [closing, end] = seams.map(({ letter }) => letter);
  return step(
    'test-tube',
    'prepare',
    'Sew, stuff and measure the test tube',
    [
      'Stuffed cloth grows, each cloth by its own share, and the panels are cut smaller by it: so this comes before anything else is printed. Under Cutting, tick only “test tube” in “To cut”, take the pattern, and measure its bars.',
      ...instructionsOfTestTube(closing, end, options.clothThickness),
      growth === undefined
        ? 'Nothing is typed in yet: nothing is taken off the panels for growth.'
        : `Taken off the panels: ${(100 * growth).toFixed(2)} % of growth on the test tube.`,
    ],
    {
      pieces: innerPieces(form, (_, material) => material === 'test-tube'),
      seams,
      checks: [
        lengthCheck(
          'test-tube',
          'Test tube, girth over the cloth before it is stuffed; afterwards more',
          sewnGirthOfTestTube(options.clothThickness),
          0,
          null,
        ),
      ],
      cautions: cautionsOf('blades', 'iron', 'dust'),
    },
  );
}

const TUBE_SEAMS = {
  closing: 'test tube, closing seam',
  bottom: 'test tube to its bottom',
  top: 'test tube to its top',
} as const;

/** The closing seam, then both ends, each with the lengths of its two sides. */
function seamsOfTube(form: Form): WorkSeam[] {
  const edges = innerSeams(form, (id) => id.startsWith('test-tube-'));
  return (['closing', 'bottom', 'top'] as const).flatMap((name): WorkSeam[] => {
    const own = edges.filter(({ id }) => id.endsWith(`/test-tube-${name}`));
    if (own.length === 0) return [];
    const { pieceId: _, ...seam } = own[0];
    const isClosing = name === 'closing';
    // A disc's rim comes in two edges.
    const sumOf = (piece: string): number =>
      own.filter(({ pieceId }) => pieceId === piece).reduce((sum, { lengths }) => sum + lengths[0], 0);
    const lengths = isClosing
      ? own.map(({ lengths }) => lengths[0])
      : ['test-tube', `test-tube-${name}`].map(sumOf);
    return [{ ...seam, id: `test-tube-${name}`, name: plain(TUBE_SEAMS[name]), lengths, isFlat: false }];
  });
}

function decideUse(form: Form): WorkStep {
  const { inside } = form;
  const checks: WorkCheck[] = inside
    ? [
        lengthCheck('tube', 'Outside of the pole, by caliper', 2 * inside.shape.pole.radius, 0.5),
        {
          id: 'tip',
          name: plain('Tilt at which the loaded form tips; 10° at least'),
          unit: 'degrees',
          value: inside.stand.tipAngleDeg,
          below: null,
          above: null,
        },
      ]
    : [];
  return step(
    'use',
    'prepare',
    'Decide what the form is for, and have the pole in your hand',
    [
      'Heaviest garment, pinning into it, arms or none, a cover over it: settle these first, since they change the pieces.',
      'Measure the pole with a caliper before anything is cut: tubes are seldom as thick as they are called.',
    ],
    { checks, cautions: cautionsOf('tipping', 'fire', 'rigging') },
  );
}

function measureTwice(form: Form): WorkStep {
  const count = (status: string): number => form.report.tapes.filter((tape) => tape.status === status).length;
  const tally = (id: string, name: string, value: number): WorkCheck => {
    return { id, name: plain(name), unit: 'pieces', value, below: null, above: null };
  };
  return step(
    'measure',
    'prepare',
    'Measure twice, and look at the body',
    [
      'Measure over the underwear that will be worn, standing at ease, with neck, shoulder and bust points marked.',
      'Type what you read, measure a second time, and correct what is marked. Compare widths, depths and the side view with the person.',
    ],
    {
      needs: ['use'],
      checks: [
        tally('conflicts', 'Tapes that do not fit together; 0 is wanted', count('conflict')),
        tally('estimates', 'Measures estimated, not taken', count('estimated')),
      ],
    },
  );
}

function printFirstPage(form: Form): WorkStep {
  const cutting = readCutting(form.project.cutting);
  const papers = cutting.ok ? cutting.value.papers : undefined;
  const paper = papers?.[0] ?? PRINT_OPTIONS.paper.usual;
  const grid = planTiles({ ...(cutting.ok ? cutting.value.print : {}), paper });
  const bars = grid.ok ? barsOfCover(grid.value, grid.value.isRoll ? 297 : grid.value.pageHeight) : undefined;
  const name = wordsOf(findPaper(paper)?.name ?? plain(paper));
  return step(
    'print',
    'prepare',
    'Print the first page and measure its bars',
    [
      `Print the cover alone on ${name}, at actual size, never “fit to page”, and measure both long bars. If they are off, type what they measure under Cutting and print the corrected file.`,
      'Only then print the rest, join the pages, and measure once more from cross to cross over the joints: a millimetre on the metre is fine.',
    ],
    {
      needs: [...(form.inside ? ['test-tube'] : []), 'measure'],
      checks: bars
        ? [
            lengthCheck('bar-across', 'Long bar across the page', bars.across, 0.5),
            lengthCheck('bar-up', 'Long bar up the page', bars.up, 0.5),
            lengthCheck('square', 'Sides of the square', 100, 0.5),
          ]
        : [],
      cautions: cautionsOf('blades'),
    },
  );
}

function tryShell(form: Form): WorkStep {
  return step(
    'trial',
    'prepare',
    'Try a cheap shell on the person',
    [
      'Sew the panels once in old sheeting, without inner parts and with one side left open, and put it on the person over the same garment.',
      'It must close without pulling, its level lines must run level, and nothing may gape. This is the cheapest place to find a wrong measure.',
    ],
    {
      needs: ['print'],
      isOptional: true,
      pieces: panelsOf(
        form,
        form.shell.panels.map(({ id }) => id),
      ),
      checks: form.report.levels.map(({ id, lengthFlat }) =>
        lengthCheck(`girth-${id}`, `${nameOfLevel(form, id)}, all round`, lengthFlat, 5),
      ),
    },
  );
}

function prepareCloth(): WorkStep {
  return step(
    'cloth',
    'cut',
    'Wash, press and fuse the cloth before cutting',
    [
      'Wash and press the cloth, and pull its threads square.',
      'Fuse the interfacing to oblongs of cloth larger than the pieces, and let them cool flat. Fused cloth shrinks, so no piece is cut before.',
      'Draw a square of 20 cm (7 7/8 in) on one oblong before fusing and measure it after: if either side is off by more than 1 mm, let it shrink again before you cut.',
    ],
    {
      needs: ['print'],
      checks: [lengthCheck('square', 'Drawn square, after fusing, both ways', 200, 1)],
      cautions: cautionsOf('iron'),
    },
  );
}

function cutCloth(form: Form): WorkStep {
  const cloth = innerPieces(form, (_, material) => ['webs', 'covers', 'arms'].includes(material));
  const pieces = [...form.pieces.map(({ id, name }) => ({ id, name })), ...cloth];
  const ofSide = (side: string): number => form.pieces.filter((piece) => piece.side === side).length;
  return step(
    'cut',
    'cut',
    'Cut the cloth',
    [
      'All panels the same way up along the grain, face up as printed: right and left are drawn apart and are not the same.',
      'Cut on the solid line. Notches no deeper than a third of the allowance.',
    ],
    {
      needs: ['cloth'],
      pieces,
      checks: [
        {
          id: 'all',
          name: plain('Pieces of cloth in all'),
          unit: 'pieces',
          value: pieces.length,
          below: 0,
          above: 0,
        },
        {
          id: 'right',
          name: plain('Shell panels marked right'),
          unit: 'pieces',
          value: ofSide('right'),
          below: 0,
          above: 0,
        },
        {
          id: 'left',
          name: plain('Shell panels marked left'),
          unit: 'pieces',
          value: ofSide('left'),
          below: 0,
          above: 0,
        },
      ],
      cautions: cautionsOf('blades'),
    },
  );
}

function markPieces(form: Form): WorkStep {
  const curved = form.shell.panels.filter(({ edges }) =>
    edges.some(({ kind, id }) => kind === 'opening' && id !== 'base'),
  );
  return step(
    'mark',
    'cut',
    'Mark the pieces and hold the hollow edges',
    [
      'On the wrong side, with thread or a pen that washes out: level lines, seam letters, notch numbers, right or left, and the lines to which webs are sewn.',
      'Run a row of stitches just inside the seam line along neck, armholes and other hollow edges before they are clipped, so that they do not stretch.',
      'Lay right and left panels on each other face to face: they must agree wherever the body is the same on both sides.',
    ],
    {
      needs: ['cut'],
      pieces: panelsOf(
        form,
        curved.map(({ id }) => id),
      ),
    },
  );
}

function nameOfLevel(form: Form, id: string): string {
  return wordsOf(form.shell.levels.find((level) => level.id === id)?.name ?? plain(id));
}
