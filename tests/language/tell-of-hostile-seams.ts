import {
  addControlPoint,
  cutIntoPanels,
  cutRegion,
  findLayout,
  joinPanels,
  moveControlPoint,
  nameOfPlace,
  removeControlPoint,
  removeLine,
  type SeamAnchor,
  type SeamForm,
  type SeamLayout,
  type SeamLine,
} from '../../src/core/seams/index.ts';
import { torso } from '../seams/sample-forms.ts';

const upright8 = findLayout('upright8') as SeamLayout;
const CENTRE_FRONT = Math.PI / 2;
const BASE: SeamAnchor = { u: 0.9, v: 0 };

const cut = (lines: readonly SeamLine[], form: SeamForm = torso.form): unknown =>
  cutIntoPanels(torso.surface, form, { ...upright8, lines }, { targetTriangles: 600 });

/** The usual layout with one line altered. */
function alter(id: string, changed: Partial<SeamLine>): SeamLine[] {
  return upright8.lines.map((line) => (line.id === id ? { ...line, ...changed } : line));
}

/** The usual layout, its front princess line through other places. */
const lead = (...through: SeamAnchor[]): SeamLine[] => alter('princessFront', { through });

/** The usual layout and one line more. */
const add = (line: Partial<SeamLine>): SeamLine[] => [
  ...upright8.lines,
  { id: 'own', name: 'own line 2', side: 'right', through: [], ...line },
];

const shoulder = upright8.lines.find(({ id }) => id === 'shoulder') as SeamLine;

/** Layouts that cannot be cut, each for another reason. */
const LAYOUTS: readonly (readonly SeamLine[])[] = [
  lead(BASE),
  lead(BASE, { u: 2, v: 545 }),
  lead({ u: 0.9, v: 300 }, { u: 0.9, v: 100 }),
  lead(BASE, { landmark: 'elbow' }),
  lead(BASE, { level: 'knee', u: 1 }),
  lead(BASE, { u: 0.9, v: 690, onLine: 'nowhere' }),
  lead(BASE, { u: 0.9, v: 550, onLine: 'shoulder' }),
  lead(BASE, { u: 0.2, v: 545 }, { landmark: 'neckTopFront', u: -0.5 }),
  lead({ u: -0.4, v: 0 }, { u: 0.5, v: 300 }, { landmark: 'bustPointRight' }, { u: 0.9, v: 700 }),
  lead({ u: CENTRE_FRONT, v: 0 }, { u: CENTRE_FRONT, v: 300 }),
  lead(BASE, { u: 0.9, v: 290 }, { u: 0.8, v: 295 }, { u: 0.9, v: 505 }),
  alter('princessFront', { ease: { fraction: 0.2, longer: 'front' } }),
  alter('centreFront', {
    through: [
      { u: 1, v: 0 },
      { u: 1, v: 500 },
    ],
  }),
  alter('centreFront', { through: [{ landmark: 'baseCentreFront' }, { u: CENTRE_FRONT, v: 333 }] }),
  alter('side', { through: [{ landmark: 'baseSideRight' }, { u: 0, v: 505 }] }),
  alter('side', { through: [{ u: 0, v: 33 }, { armhole: 0 }] }),
  [{ ...shoulder, through: [...shoulder.through, { landmark: 'neckTopSideRight' }] }],
  upright8.lines.filter(({ id }) => !['side', 'shoulder', 'princessFront', 'princessBack'].includes(id)),
  add({ alongLevel: 'knee', through: [BASE, BASE] }),
  add({ alongHeight: { v: 60 }, through: [BASE, { armhole: 0.25 }] }),
  add({
    alongHeight: { v: 560 },
    through: [{ landmark: 'baseCentreBack' }, { landmark: 'baseCentreFront' }],
  }),
  add({ alongHeight: { v: 250 }, through: [{ landmark: 'baseCentreBack' }, { u: -0.7 }] }),
  [
    ...add({ alongHeight: { v: 250 }, through: [{ landmark: 'baseCentreBack' }, { u: 0, onLine: 'side' }] }),
    {
      id: 'late',
      name: 'late',
      side: 'right',
      through: [
        { u: 0.5, onLine: 'own' },
        { u: 0.5, v: 600 },
      ],
    },
  ],
  [
    ...add({
      through: [
        { u: 0.6, v: 0 },
        { u: 0.6, v: 300, onLine: 'other' },
      ],
    }),
    {
      id: 'other',
      name: 'other',
      side: 'right',
      through: [
        { u: 0.5, v: 0 },
        { u: 0.6, v: 300, onLine: 'own' },
      ],
    },
  ],
];

/** A level line through the armhole, one below the base, and one that a line crosses often. */
function tellOfLevels(): unknown {
  const { levels } = torso.form;
  const place = (id: string, v: number): SeamForm => ({
    ...torso.form,
    levels: levels.map((level) => (level.id === id ? { ...level, name: nameOfPlace(id), v } : level)),
  });
  return [cut(upright8.lines, place('upperChest', 560)), cut(upright8.lines, place('hip', -20))];
}

/** Pieces too small and narrow to sew, with corners too sharp. */
function tellOfSlivers(): unknown {
  const through: Readonly<Record<string, readonly SeamAnchor[]>> = {
    centreFront: [{ landmark: 'baseCentreFront' }, { landmark: 'neckTopFront' }],
    shoulder: [{ armhole: 0.5 }, { landmark: 'neckSideRight' }, { landmark: 'neckTopSideRight' }],
    princessFront: [{ u: 0.95, v: 0 }, { landmark: 'bustPointRight' }, { landmark: 'neckTopFront', u: -0.6 }],
    princessBack: [
      { u: -0.95, v: 0 },
      { landmark: 'bladePointRight' },
      { landmark: 'neckTopFront', u: -2.5 },
    ],
  };
  const lines = upright8.lines
    .filter(({ id }) => id !== 'neckBase')
    .map((line) => ({ ...line, through: through[line.id] ?? line.through }));
  const sliver: readonly SeamAnchor[] = [
    { armhole: 0.49 },
    { u: 0.12, v: 640 },
    { landmark: 'neckSideRight', onLine: 'shoulder' },
  ];
  return cut([...lines, { id: 'sliver', name: 'sliver', side: 'right', through: sliver }]);
}

function tellOfEdits(): unknown {
  const { surface, form } = torso;
  const shell = cutIntoPanels(surface, form, upright8, { targetTriangles: 1500 });
  if (!shell.ok) throw new Error('not cut');
  const panels = shell.value.panels.map(({ id }) => id);
  const move = (lineId: string) =>
    moveControlPoint(surface, form, upright8, { lineId, anchor: 0, to: { u: 0.9, v: 0 } });
  return [
    move('hem'),
    move('centreFront'),
    addControlPoint(surface, form, upright8, 'side', { u: 0, v: -50 }),
    removeControlPoint(upright8, 'side', 0),
    removeLine(upright8, 'shoulder'),
    removeLine(upright8, 'hem'),
    ...[['nowhere'], [], [panels[0], panels[2]], panels].map((ids) => joinPanels(shell.value, ids)),
  ];
}

/** Loops on the body, angles and mm of height in turn. */
const REGIONS: readonly (readonly number[])[] = [
  [0.5, 100, 0.7, 100],
  [0.5, 100, 0.7, -100, 0.6, 200],
  [0, 100, 1.6, 100, 3.2, 100, 4.8, 100],
  [0.5, 100, 0.8, 200, 0.8, 100, 0.5, 200],
  [-0.6, 450, 0.6, 450, 0.6, 620, -0.6, 620],
];

/** What is told of lines, panels and regions that cannot be, each in its own way. */
export function tellOfHostileSeams(): unknown {
  return [
    LAYOUTS.map((lines) => cut(lines)),
    tellOfLevels(),
    tellOfSlivers(),
    tellOfEdits(),
    REGIONS.map((loop) => cutRegion(torso.surface, torso.form, loop, 10)),
  ];
}
