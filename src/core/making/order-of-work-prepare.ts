import { readCutting } from '../assembly/index.ts';
import { type Phrase, verbatim } from '../base/index.ts';
import type { Form, WorkCheck, WorkSeam, WorkStep } from '../form/index.ts';
import { instructionsOfTestTube, measuredGrowthOf, sewnGirthOfTestTube } from '../inside/index.ts';
import { barsOfCover, findPaper, PRINT_OPTIONS, planTiles } from '../sheet/index.ts';
import { plateSteps } from './order-of-work-plates.ts';
import { phrase } from './phrases.ts';
import {
  cautionsOf,
  innerPieces,
  innerSeams,
  lengthCheck,
  nameOfLevel,
  panelsOf,
  step,
} from './work-parts.ts';

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
    ...plateSteps(form),
  ];
}

/** What of the cloth the panels are cut for. */
function tellOfGrowth({ report: { filled } }: Form, growth: number | undefined): Phrase {
  if (growth !== undefined) return phrase(`step.test-tube.${filled ? 'reckoned' : 'taken-off'}`, { growth });
  const ends = (filled?.levels ?? []).flatMap(({ found, band }) =>
    (band ?? []).map((girth) => girth - found.girth),
  );
  if (ends.length === 0) return phrase('step.test-tube.nothing-typed');
  return phrase('step.test-tube.usual-cloth', { below: -Math.min(...ends), above: Math.max(...ends) });
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
    phrase('step.test-tube.title'),
    [
      phrase('step.test-tube.why'),
      ...instructionsOfTestTube(closing, end, options.clothThickness),
      tellOfGrowth(form, growth),
    ],
    {
      pieces: innerPieces(form, (_, material) => material === 'test-tube'),
      seams,
      checks: [
        lengthCheck(
          'test-tube',
          phrase('check.test-tube'),
          sewnGirthOfTestTube(options.clothThickness),
          0,
          null,
        ),
      ],
      cautions: cautionsOf('blades', 'iron', 'dust'),
    },
  );
}

/** The closing seam, then both ends, each with the lengths of its two sides. */
function seamsOfTube(form: Form): WorkSeam[] {
  const edges = innerSeams(form, (id) => id.startsWith('test-tube-'));
  return (['closing', 'bottom', 'top'] as const).flatMap((at): WorkSeam[] => {
    const own = edges.filter(({ id }) => id.endsWith(`/test-tube-${at}`));
    if (own.length === 0) return [];
    const { pieceId: _, ...seam } = own[0];
    const isClosing = at === 'closing';
    // A disc's rim comes in two edges.
    const sumOf = (piece: string): number =>
      own.filter(({ pieceId }) => pieceId === piece).reduce((sum, { lengths }) => sum + lengths[0], 0);
    const lengths = isClosing
      ? own.map(({ lengths }) => lengths[0])
      : ['test-tube', `test-tube-${at}`].map(sumOf);
    return [
      { ...seam, id: `test-tube-${at}`, name: phrase('seam.test-tube', { at }), lengths, isFlat: false },
    ];
  });
}

function decideUse(form: Form): WorkStep {
  const { inside } = form;
  const checks: WorkCheck[] = inside
    ? [
        lengthCheck('tube', phrase('check.tube'), 2 * inside.shape.pole.radius, 0.5),
        {
          id: 'tip',
          name: phrase('check.loaded-tilt'),
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
    phrase('step.use.title'),
    [phrase('step.use.settle'), phrase('step.use.pole')],
    { checks, cautions: cautionsOf('tipping', 'fire', 'rigging') },
  );
}

function measureTwice(form: Form): WorkStep {
  const count = (status: string): number => form.report.tapes.filter((tape) => tape.status === status).length;
  const tally = (id: 'conflicts' | 'estimates', value: number): WorkCheck => {
    return { id, name: phrase(`check.${id}`), unit: 'pieces', value, below: null, above: null };
  };
  return step(
    'measure',
    'prepare',
    phrase('step.measure.title'),
    [phrase('step.measure.how'), phrase('step.measure.compare')],
    {
      needs: ['use'],
      checks: [tally('conflicts', count('conflict')), tally('estimates', count('estimated'))],
    },
  );
}

function printFirstPage(form: Form): WorkStep {
  const cutting = readCutting(form.project.cutting);
  const papers = cutting.ok ? cutting.value.papers : undefined;
  const paper = papers?.[0] ?? PRINT_OPTIONS.paper.usual;
  const grid = planTiles({ ...(cutting.ok ? cutting.value.print : {}), paper });
  const bars = grid.ok ? barsOfCover(grid.value, grid.value.isRoll ? 297 : grid.value.pageHeight) : undefined;
  const name = findPaper(paper)?.name ?? verbatim(paper);
  return step(
    'print',
    'prepare',
    phrase('step.print.title'),
    [phrase('step.print.cover', { paper: name }), phrase('step.print.rest')],
    {
      needs: [...(form.inside ? ['test-tube'] : []), 'measure'],
      checks: bars
        ? [
            lengthCheck('bar-across', phrase('check.bar', { way: 'across' }), bars.across, 0.5),
            lengthCheck('bar-up', phrase('check.bar', { way: 'up' }), bars.up, 0.5),
            lengthCheck('square', phrase('check.sides-of-square'), 100, 0.5),
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
    phrase('step.trial.title'),
    [phrase('step.trial.sew'), phrase('step.trial.judge')],
    {
      needs: ['print'],
      isOptional: true,
      pieces: panelsOf(
        form,
        form.shell.panels.map(({ id }) => id),
      ),
      checks: form.report.levels.map(({ id, lengthFlat }) =>
        lengthCheck(
          `girth-${id}`,
          phrase('check.all-round', { level: nameOfLevel(form, id) }),
          lengthFlat,
          5,
        ),
      ),
    },
  );
}

function prepareCloth(): WorkStep {
  return step(
    'cloth',
    'cut',
    phrase('step.cloth.title'),
    [phrase('step.cloth.wash'), phrase('step.cloth.fuse'), phrase('step.cloth.square')],
    {
      needs: ['print'],
      checks: [lengthCheck('square', phrase('check.fused-square'), 200, 1)],
      cautions: cautionsOf('iron'),
    },
  );
}

function cutCloth(form: Form): WorkStep {
  const cloth = innerPieces(form, (_, material) => ['webs', 'covers', 'arms'].includes(material));
  const pieces = [...form.pieces.map(({ id, name }) => ({ id, name })), ...cloth];
  const count = (id: string, name: Phrase, value: number): WorkCheck => {
    return { id, name, unit: 'pieces', value, below: 0, above: 0 };
  };
  const countMarked = (side: 'right' | 'left'): WorkCheck => {
    const own = form.pieces.filter((piece) => piece.side === side);
    return count(side, phrase('check.panels-marked', { side }), own.length);
  };
  return step('cut', 'cut', phrase('step.cut.title'), [phrase('step.cut.lay'), phrase('step.cut.cut')], {
    needs: ['cloth'],
    pieces,
    checks: [count('all', phrase('check.pieces'), pieces.length), countMarked('right'), countMarked('left')],
    cautions: cautionsOf('blades'),
  });
}

function markPieces(form: Form): WorkStep {
  const curved = form.shell.panels.filter(({ edges }) =>
    edges.some(({ kind, id }) => kind === 'opening' && id !== 'base'),
  );
  return step(
    'mark',
    'cut',
    phrase('step.mark.title'),
    [phrase('step.mark.mark'), phrase('step.mark.hold'), phrase('step.mark.compare')],
    {
      needs: ['cut'],
      pieces: panelsOf(
        form,
        curved.map(({ id }) => id),
      ),
    },
  );
}
