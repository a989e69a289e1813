import { readCutting } from '../assembly/index.ts';
import { type Phrase, verbatim, withUsual } from '../base/index.ts';
import type { Form, WorkCheck } from '../form/index.ts';
import {
  ASSUMED_DENSITY,
  GRAVITY,
  INSIDE_OPTIONS,
  instructionsOfTestTube,
  measuredGrowthOf,
  sewnGirthOfTestTube,
} from '../inside/index.ts';
import { barsOfCover, findPaper, PRINT_OPTIONS, planTiles } from '../sheet/index.ts';
import { phrase } from './phrases.ts';
import type { Work } from './work-of-form.ts';
import {
  cautionsOf,
  edgeOfOpening,
  innerPieces,
  lengthCheck,
  type PlannedStep,
  panelsOf,
  pick,
  plan,
} from './work-parts.ts';

/** Drawn on cloth before fusing, mm. */
const SQUARE = 400;
/** Depth pinned off at one seam, for the example of the trial shell, mm. */
const PINNED = 6;

/** From what the form is for to pieces that are cut and marked. */
export function prepareSteps(work: Work): PlannedStep[] {
  const { form, has } = work;
  return [
    decideUse(work),
    measureTwice(form),
    prepareCloth(work),
    ...(has.inside ? [tryCloth(work)] : []),
    printFirstPage(work),
    tryShell(form),
    cutCloth(work),
    markPieces(form),
  ];
}

function decideUse({ form: { inside, project } }: Work): PlannedStep {
  const { garmentMass } = withUsual(INSIDE_OPTIONS, project.inside);
  const checks: WorkCheck[] = inside
    ? [
        lengthCheck('tube', phrase('check.tube'), 2 * inside.shape.pole.radius, 0.5),
        {
          id: 'tip',
          name: phrase('check.loaded-tilt', { mass: garmentMass }),
          unit: 'degrees',
          value: inside.stand.tipAngleDeg,
          below: null,
          above: null,
        },
      ]
    : [];
  return plan(
    'use',
    'prepare',
    phrase('step.use.title'),
    [
      phrase('step.use.settle'),
      ...(inside
        ? [
            phrase('step.use.pole'),
            phrase('step.use.load'),
            phrase('step.use.height'),
            phrase('step.use.arrows', { push: inside.stand.pushForce / GRAVITY }),
          ]
        : []),
    ],
    [
      { does: 'make', part: 'pole', of: [] },
      { does: 'make', part: 'foot', of: [] },
      { does: 'make', part: 'collars', of: [] },
      { does: 'read', fact: 'pole-diameter', how: 'stiff' },
    ],
    { checks, cautions: cautionsOf('tipping', 'rigging') },
  );
}

function measureTwice(form: Form): PlannedStep {
  const count = (status: string): number => form.report.tapes.filter((tape) => tape.status === status).length;
  const tally = (id: 'conflicts' | 'estimates', value: number): WorkCheck => {
    return { id, name: phrase(`check.${id}`), unit: 'pieces', value, below: null, above: null };
  };
  return plan(
    'measure',
    'prepare',
    phrase('step.measure.title'),
    [phrase('step.measure.how'), phrase('step.measure.compare')],
    [{ does: 'read', fact: 'measures', how: 'person' }],
    {
      needs: ['use'],
      checks: [tally('conflicts', count('conflict')), tally('estimates', count('estimated'))],
    },
  );
}

function prepareCloth({ form, has }: Work): PlannedStep {
  const hasCovers = form.inside?.pieces.some(({ material }) => material === 'covers') ?? false;
  return plan(
    'cloth',
    'prepare',
    phrase('step.cloth.title'),
    [
      phrase('step.cloth.wash'),
      phrase('step.cloth.which', { hasArms: has.arms, hasCovers }),
      phrase('step.cloth.fuse'),
      phrase('step.cloth.square', { side: SQUARE }),
    ],
    [
      { does: 'danger', of: 'iron' },
      { does: 'make', part: 'cloth', of: [] },
      { does: 'read', fact: 'shrinkage', how: 'paper' },
    ],
    {
      needs: ['measure'],
      checks: [lengthCheck('square', phrase('check.fused-square'), SQUARE, 1)],
      cautions: cautionsOf('iron'),
    },
  );
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
function tryCloth({ form, seams: all }: Work): PlannedStep {
  const { inside: options } = form.project;
  const growth = measuredGrowthOf(options);
  const seams = pick(all, ['test-tube-closing', 'test-tube-bottom', 'test-tube-top']);
  const [closing, end] = seams.map(({ letter }) => letter);
  const pieces = innerPieces(form, (_, material) => material === 'test-tube');
  return plan(
    'test-tube',
    'prepare',
    phrase('step.test-tube.title'),
    [
      phrase('step.test-tube.why'),
      ...instructionsOfTestTube(closing, end, options.clothThickness),
      phrase('step.test-tube.weigh', { ...ASSUMED_DENSITY, isAssumed: form.inside?.fill.isAssumed ?? true }),
      tellOfGrowth(form, growth),
    ],
    [
      { does: 'danger', of: 'blades' },
      { does: 'danger', of: 'dust' },
      ...pieces.map(({ id }) => ({ does: 'make', part: id, of: [], needs: ['cloth'] }) as const),
      ...seams.map(({ id }) => ({ does: 'join', joint: id, how: 'plain' }) as const),
      { does: 'read', fact: 'growth', how: 'stiff', facts: ['shrinkage'] },
      { does: 'read', fact: 'density', how: 'stiff', facts: ['shrinkage'] },
    ],
    {
      needs: ['cloth'],
      pieces,
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
      cautions: cautionsOf('blades', 'dust'),
    },
  );
}

function printFirstPage({ form, has }: Work): PlannedStep {
  const cutting = readCutting(form.project.cutting);
  const papers = cutting.ok ? cutting.value.papers : undefined;
  const paper = papers?.[0] ?? PRINT_OPTIONS.paper.usual;
  const grid = planTiles({ ...(cutting.ok ? cutting.value.print : {}), paper });
  const bars = grid.ok ? barsOfCover(grid.value, grid.value.isRoll ? 297 : grid.value.pageHeight) : undefined;
  const name = findPaper(paper)?.name ?? verbatim(paper);
  return plan(
    'print',
    'prepare',
    phrase('step.print.title'),
    [phrase('step.print.cover', { paper: name })],
    [{ does: 'read', fact: 'bars', how: 'paper', facts: ['measures'] }],
    {
      needs: [...(has.inside ? ['test-tube'] : []), 'measure'],
      checks: bars
        ? [
            lengthCheck('bar-across', phrase('check.bar', { way: 'across' }), bars.across, 0.5),
            lengthCheck('bar-up', phrase('check.bar', { way: 'up' }), bars.up, 0.5),
            lengthCheck('square', phrase('check.sides-of-square'), 100, 0.5),
          ]
        : [],
      // Without a test tube these are the first blades.
      cautions: has.inside ? [] : cautionsOf('blades'),
    },
  );
}

/** Open at the back from the base through the neck, so that no head has to pass; cut as the body is, nothing taken off for filling. */
function tryShell(form: Form): PlannedStep {
  const neck = edgeOfOpening(form, 'neck');
  const heights = form.body.levels.map(({ z }) => z);
  const opened = neck + 2 * (Math.max(...heights) - Math.min(...heights));
  const girthOf = (id: keyof typeof form.body.sections): number => form.body.sections[id].girth;
  const waist = girthOf('waist');
  return plan(
    'trial',
    'prepare',
    phrase('step.trial.title'),
    [
      phrase('step.trial.cut'),
      phrase('step.trial.sew', { neck }),
      phrase('step.trial.put-on'),
      phrase('step.trial.judge', { pinned: PINNED, waist, changed: waist - 2 * PINNED }),
    ],
    [
      { does: 'danger', of: 'blades' },
      { does: 'make', part: 'trial-shell', of: [], facts: ['bars'] },
      { does: 'wear', part: 'trial-shell', through: opened, growth: false },
      { does: 'read', fact: 'trial', how: 'person' },
    ],
    {
      needs: ['print'],
      isOptional: true,
      pieces: panelsOf(
        form,
        form.shell.panels.map(({ id }) => id),
      ),
      checks: form.body.levels.map(({ id, name: level }) =>
        lengthCheck(`girth-${id}`, phrase('check.all-round', { level }), girthOf(id), 5),
      ),
    },
  );
}

function cutCloth({ form, has }: Work): PlannedStep {
  const cloth = innerPieces(form, (_, material) => ['webs', 'covers', 'arms'].includes(material));
  const pieces = [...form.pieces.map(({ id, name }) => ({ id, name })), ...cloth];
  const count = (id: string, name: Phrase, value: number): WorkCheck => {
    return { id, name, unit: 'pieces', value, below: 0, above: 0 };
  };
  const countMarked = (side: 'right' | 'left'): WorkCheck => {
    const own = form.pieces.filter((piece) => piece.side === side);
    return count(side, phrase('check.panels-marked', { side }), own.length);
  };
  const facts = ['measures', 'shrinkage', 'bars', ...(has.inside ? ['growth'] : [])];
  return plan(
    'cut',
    'cut',
    phrase('step.cut.title'),
    [phrase('step.cut.print'), phrase('step.cut.lay'), phrase('step.cut.cut')],
    [
      { does: 'danger', of: 'blades' },
      ...pieces.map(({ id }) => ({ does: 'make', part: id, of: [], needs: ['cloth'], facts }) as const),
    ],
    {
      needs: ['cloth', 'print'],
      pieces,
      checks: [
        count('all', phrase('check.pieces'), pieces.length),
        countMarked('right'),
        countMarked('left'),
      ],
    },
  );
}

function markPieces(form: Form): PlannedStep {
  const panels = panelsOf(
    form,
    form.shell.panels.map(({ id }) => id),
  );
  return plan(
    'mark',
    'cut',
    phrase('step.mark.title'),
    [
      phrase('step.mark.mark'),
      phrase('step.mark.through'),
      phrase('step.mark.hold'),
      phrase('step.mark.compare'),
    ],
    [{ does: 'make', part: 'marks', of: [], needs: panels.map(({ id }) => id) }],
    { needs: ['cut'], pieces: panels },
  );
}
