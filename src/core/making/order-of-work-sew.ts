import { type OrderedSeam, orderSeams } from '../assembly/index.ts';
import { type Phrase, plain, wordsOf } from '../base/index.ts';
import type { Form, WorkCheck, WorkSeam, WorkStep } from '../form/index.ts';
import type { DesignedBrace } from '../supports/index.ts';
import {
  cautionsOf,
  innerPieces,
  innerSeams,
  lengthCheck,
  panelsOf,
  shellSeam,
  step,
  widthAtLevel,
} from './work-parts.ts';

type Group = 'front' | 'back' | 'shoulder' | 'neck' | 'side' | 'closing';

const SHORT = 'Short stitches of 2 mm, a second row a millimetre into the allowance; clip, and press open.';

/** Every seam of shell and inner parts: flat sections, inner parts, shoulders, neck, sides; the closing seam last. */
export function sewSteps(form: Form): WorkStep[] {
  const order = orderSeams(form.shell, form.body.landmarks.neckFront.v);
  const groups = groupSeams(order);
  const of = (group: Group): readonly OrderedSeam[] => groups.get(group) ?? [];
  const sections = (['front', 'back'] as const)
    .filter((half) => of(half).length > 0)
    .map((half) => sectionStep(form, half, of(half)));
  const flat = sections.map(({ id }) => id);
  const inner = innerSteps(form, order, flat);
  const open = [...flat, ...inner.map(({ id }) => id)];
  const rest = (['shoulder', 'neck', 'side', 'closing'] as const)
    .filter((group) => of(group).length > 0)
    .map((group, k, present) => {
      const needs = k > 0 ? [`sew-${present[k - 1]}`] : open;
      return roundStep(form, group, of(group), needs);
    });
  return [...sections, ...inner, ...rest, ...armSteps(form)];
}

/** Seams by the step they belong to; the line that closes the shell stands alone. */
function groupSeams(order: readonly OrderedSeam[]): Map<Group, OrderedSeam[]> {
  const groups = new Map<Group, OrderedSeam[]>();
  const last = order[order.length - 1];
  for (const entry of order) {
    const isClosing =
      entry.role === 'side' && entry.seam.lineId === last.seam.lineId && entry.side === last.side;
    const group: Group = isClosing
      ? 'closing'
      : entry.role === 'frontLevel'
        ? 'front'
        : entry.role === 'backLevel'
          ? 'back'
          : entry.role;
    groups.set(group, [...(groups.get(group) ?? []), entry]);
  }
  return groups;
}

function sectionStep(form: Form, half: 'front' | 'back', seams: readonly OrderedSeam[]): WorkStep {
  const ids = new Set(seams.flatMap(({ seam }) => seam.panels));
  const hasLevel = seams.some(({ seam }) => seam.isLevel);
  const checks: WorkCheck[] = form.shell.levels.flatMap(({ id, name }) => {
    const width = widthAtLevel(form, ids, id);
    return width > 0 ? [lengthCheck(`width-${id}`, `${wordsOf(name)}, across the ${half}`, width)] : [];
  });
  return step(
    `sew-${half}`,
    'sew',
    `Sew the ${half}, lying flat`,
    [
      hasLevel
        ? 'In the order of the letters below: level seams first, then the upright ones from the middle outwards, across them.'
        : 'In the order of the letters below, from the middle outwards.',
      'Pin letter to letter and notch to notch; level lines may miss each other by 1.5 mm, no more. Where one side curves out and the other in, pin with the hollow one on top.',
      SHORT,
    ],
    {
      needs: ['mark'],
      pieces: panelsOf(form, ids),
      seams: seams.map((entry) => shellSeam(form, entry)),
      checks,
      cautions: cautionsOf('iron'),
    },
  );
}

/** Sleeve with ties and straps, then the webs on front and back, while the shell is open. */
function innerSteps(form: Form, order: readonly OrderedSeam[], needs: readonly string[]): WorkStep[] {
  const { inside } = form;
  if (!inside) return [];
  const braces = new Map(inside.shape.braces.map((brace) => [brace.id, brace]));
  const sewn = new Set(
    order.filter(({ role }) => role !== 'side' && role !== 'shoulder').map(({ seam }) => seam.id),
  );
  const all = innerSeams(form, (_, piece) => braces.has(piece) || piece === 'pole-sleeve');
  const onSleeve = (seam: WorkSeam): boolean => /\/sleeve-/.test(seam.id);
  const strip = ({ pieceId: _, ...seam }: WorkSeam & { pieceId: string }): WorkSeam => seam;
  const sleeve: WorkStep = step(
    'sew-sleeve',
    'sew',
    'Sew the pole sleeve with its ties and straps',
    [
      'Hem webs, ties and straps at top and bottom, and stitch round their openings before cutting these out.',
      'Stitch the front tie and the straps flat on the sleeve along their letters, level on level. Close the sleeve behind with the back tie caught in the seam, and sew the tabs to its lower end.',
      'Slide it over the pole: it must pass without force.',
    ],
    {
      needs: ['mark', 'use'],
      pieces: innerPieces(form, (id) => /^(pole-sleeve|tab-|tie-|strap-)/.test(id)),
      seams: oncePerLetter(all.filter(onSleeve)).map(strip),
      checks: [
        lengthCheck('sleeve', 'Sleeve, flat width when closed', inside.shape.pole.sleeveGirth / 2, 0.5, 1.5),
      ],
    },
  );
  const halfOf = (seam: WorkSeam & { pieceId: string }): 'front' | 'back' => {
    const brace = braces.get(seam.pieceId);
    return brace ? halfOfAttachment(form, brace, seam) : 'back';
  };
  const attach = (half: 'front' | 'back'): WorkStep => {
    const own = all.filter((seam) => !onSleeve(seam) && halfOf(seam) === half);
    const rungs = own.flatMap((seam) => {
      const brace = braces.get(seam.pieceId);
      return brace && half === (brace.kind === 'web' ? 'back' : half) ? lengthsOf(form, brace) : [];
    });
    return step(
      `sew-inner-${half}`,
      'sew',
      half === 'front' ? 'Sew webs and ties to the front' : 'Sew webs, ties and straps to the back',
      [
        'Front and back still lie open like a book: do it now, for once the sides are closed no machine gets there.',
        half === 'front'
          ? 'On the wrong side, sew the front tie to the allowances of its seam and each web to its line, mark on mark.'
          : 'Turn the back over beside it, pass the straps through the openings of the webs, and sew what is left, mark on mark. No web may cross another or twist.',
      ],
      {
        needs: half === 'front' ? [...needs, 'sew-sleeve'] : [...needs, 'sew-sleeve', 'sew-inner-front'],
        pieces: innerPieces(form, (id) => own.some(({ pieceId }) => pieceId === id)),
        seams: own.map((seam) => {
          const onto = form.shell.seams.find(({ id }) => seam.id === `${seam.pieceId}/${id}`);
          const isOpen = onto !== undefined && !sewn.has(onto.id);
          const note = isOpen
            ? 'to the allowance of one edge alone, since this seam is still open'
            : undefined;
          return { ...strip(withPartner(form, seam)), ...(note && { note: plain(note) }) };
        }),
        checks: rungs,
      },
    );
  };
  return [sleeve, attach('front'), attach('back')];
}

function lengthsOf(form: Form, brace: DesignedBrace): WorkCheck[] {
  return brace.rungs.flatMap(({ levelId, length }) => {
    const level = form.shell.levels.find(({ id }) => id === levelId);
    return level
      ? [
          lengthCheck(
            `${brace.id}-${level.id}`,
            `${wordsOf(brace.name)}, ${wordsOf(level.name).toLowerCase()}`,
            length,
          ),
        ]
      : [];
  });
}

/** On which half a brace's edge is sewn to the shell. */
function halfOfAttachment(form: Form, { from, to }: DesignedBrace, seam: WorkSeam): 'front' | 'back' {
  const lines = to === 'sleeve' ? [from] : [from, to];
  const line = lines.find(({ seams }) => seams.some(({ letter }) => letter === seam.letter)) ?? from;
  if (line.half !== 'side') return line.half;
  const drawn = form.inside?.shape.panelLines.find(({ letter }) => letter === seam.letter);
  return drawn && Math.sin(drawn.chart[0]) > 0 ? 'front' : 'back';
}

/** Adds the length of the line drawn on the panels, where it is sewn to one. */
function withPartner<T extends WorkSeam>(form: Form, seam: T): T {
  const drawn = form.inside?.shape.panelLines.find(({ letter }) => letter === seam.letter);
  const lines = form.pieces.flatMap(({ levelLines }) => levelLines.filter(({ id }) => id === drawn?.id));
  if (!drawn || lines.length === 0) return seam;
  const length = lines.reduce((sum, { points }) => sum + lengthOfPoints(points), 0);
  return { ...seam, lengths: [...seam.lengths, length] };
}

function lengthOfPoints(points: Float64Array): number {
  let sum = 0;
  for (let i = 2; i < points.length; i += 2)
    sum += Math.hypot(points[i] - points[i - 2], points[i + 1] - points[i - 1]);
  return sum;
}

/** Edges of the same letter are sewn together: one seam with all their lengths. */
function oncePerLetter<T extends WorkSeam>(seams: readonly T[]): T[] {
  const byLetter = new Map<string, T[]>();
  for (const seam of seams) byLetter.set(seam.letter, [...(byLetter.get(seam.letter) ?? []), seam]);
  return [...byLetter.values()].map((own) => ({
    ...own[0],
    name: plain([...new Set(own.map(({ name }) => wordsOf(name)))].join(' + ')),
    lengths: own.flatMap(({ lengths }) => lengths),
  }));
}

const ROUND: Readonly<Record<Exclude<Group, 'front' | 'back'>, { title: Phrase; text: readonly Phrase[] }>> =
  {
    shoulder: {
      title: plain('Sew the shoulders'),
      text: [
        plain('From the neck outwards. From here the shell no longer lies flat: inner parts must be in.'),
        plain(SHORT),
      ],
    },
    neck: {
      title: plain('Set on the neck band'),
      text: [
        plain(
          'Pin the band round the neck edge from the centre back, right sides together, clip the neck edge up to the row of stitches, and sew with the body side on top.',
        ),
        plain('Close the band behind last.'),
      ],
    },
    side: {
      title: plain('Sew the first side'),
      text: [plain('In the order of the letters below, webs and straps held out of the way.'), plain(SHORT)],
    },
    closing: {
      title: plain('Close the shell: the last side'),
      text: [
        plain(
          'Turn webs and sleeve to the middle and count the pins. Then sew in the order of the letters below, as before: this closes the shell.',
        ),
        plain(
          'Turn the shell right side out through the base and lay it flat, level line on level line. Now is the time to sew a seam again: not when it is full.',
        ),
      ],
    },
  };

function roundStep(
  form: Form,
  group: Exclude<Group, 'front' | 'back'>,
  seams: readonly OrderedSeam[],
  needs: readonly string[],
): WorkStep {
  const { text } = ROUND[group];
  const title = group === 'side' ? `Sew the ${seams[0].side} side` : ROUND[group].title;
  const checks =
    group === 'closing'
      ? form.report.levels.map(({ id, lengthFlat }) => {
          const name = wordsOf(form.shell.levels.find((level) => level.id === id)?.name ?? plain(id));
          return lengthCheck(`flat-${id}`, `${name}: empty shell laid flat, its width`, lengthFlat / 2);
        })
      : [];
  return step(`sew-${group}`, 'sew', title, text, {
    needs,
    pieces: panelsOf(
      form,
      seams.flatMap(({ seam }) => seam.panels),
    ),
    seams: seams.map((entry) => shellSeam(form, entry)),
    checks,
    cautions: group === 'closing' ? cautionsOf('blades') : [],
  });
}

function armSteps(form: Form): WorkStep[] {
  const seams = innerSeams(form, (id) => /^arm-/.test(id)).map(({ pieceId: _, ...seam }) => seam);
  if (seams.length === 0) return [];
  return [
    step(
      'sew-arms',
      'sew',
      'Sew the arms',
      [
        'Each arm has a front and a back: sew the outer seam, then the inner one, and turn it right side out. Leave armhole and wrist open.',
        SHORT,
      ],
      {
        needs: ['mark'],
        pieces: innerPieces(form, (_, material) => material === 'arms'),
        seams: oncePerLetter(seams),
      },
    ),
  ];
}
