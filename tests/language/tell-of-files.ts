import { readFileSync } from 'node:fs';
import { mapDistance } from '../../src/core/advice/index.ts';
import type { Phrase, Say } from '../../src/core/base/index.ts';
import { type ExportOptions, exportForm } from '../../src/core/files/index.ts';
import { gaugedForm, howToHoldGauges, makeGauges } from '../../src/core/gauge/index.ts';
import { arrangePieces, draftPiece, type PatternOptions } from '../../src/core/pattern/index.ts';
import { makeForm } from '../../src/core/pipeline/index.ts';
import { type Project, parseProject } from '../../src/core/project/index.ts';
import { findLayout } from '../../src/core/seams/index.ts';
import { correctionFromBars } from '../../src/core/sheet/index.ts';
import { ENGLISH, inEnglish } from '../in-english.ts';
import { LABEL, polygonPiece, samplePanels } from '../pattern/synthetic-panels.ts';

const FONT = {
  name: 'DejaVuSans',
  bytes: readFileSync('node_modules/dejavu-fonts-ttf/ttf/DejaVuSans.ttf'),
};
const EVERYTHING = ['svg', 'pdf', 'labels', 'lay', 'projector', 'gauges', 'cutter', 'csv', 'json'];

/** A square as it is projected, mm, but for its diagonal. */
function seenAs(diagonal: number) {
  return { top: 512, right: 501, bottom: 496, left: 503, diagonal };
}

/** Files asked for; those of the second half cannot be written, or not as asked. */
const WISHES: readonly Partial<ExportOptions>[] = [
  {
    formats: EVERYTHING,
    papers: ['both', 'roll36'],
    cutter: { mat: { width: 305, height: 305 }, divides: true },
  },
  { formats: ['booklet'], papers: ['letter'], print: { booklet: 'folded' } },
  { formats: ['cutter'], cutter: { mat: { width: 305, height: 305 } } },
  { formats: ['pdf'], papers: ['a4'], print: { joint: 'butt', correction: { x: 1.0123, y: 0.9931 } } },
  { formats: ['docx'], only: ['nobody'] },
  { formats: ['projector'], projector: { ground: 'dark', projectedSquare: seenAs(710) } },
  { formats: ['projector'], projector: { projectedSquare: { ...seenAs(710), left: 703.5 } } },
  {
    formats: ['projector'],
    projector: { projectedSquare: { ...seenAs(840), top: 401, right: 401, bottom: 402, left: 402 } },
  },
  { formats: ['stl'], model: { scale: 1.5 } },
  { formats: ['stl'], model: { scale: 6, wall: 0.25 } },
  { formats: ['pdf'], papers: ['foolscap', 'a4'], print: { margin: -2.5, overlap: 60 } },
  { formats: ['labels'], papers: ['a4'], print: { margin: 82.5 } },
  { formats: ['cutter'], cutter: { kerf: 7.5, mat: { width: 120, height: 305 } } },
  { formats: ['cutter'], cutter: { strokeText: true } },
  { formats: ['gauges'], gauges: { levels: ['waist', 'knee'], clearance: 12.5, strip: 20.5 } },
  { formats: ['gauges'], gauges: { levels: ['waist'], clearance: 0 } },
];

/** Outlines that can be no piece, or leave little room. mm. */
const OUTLINES: readonly (readonly (readonly [number, number])[])[] = [
  [
    [0, 0],
    [0, 200],
    [200, 200],
    [200, 0],
  ],
  [
    [0, 0],
    [200, 0],
    [50, 200],
    [150, 200],
  ],
  [
    [0, 0],
    [2, 0],
    [2, 2],
  ],
  [
    [0, 0],
    [16, 0],
    [16, 300],
    [0, 300],
  ],
  [
    [0, 0],
    [22, 0],
    [22, 90],
    [0, 90],
  ],
  [
    [0, 0],
    [200, 0],
    [200, 200],
    [106, 200],
    [106, 80],
    [94, 80],
    [94, 200],
    [0, 200],
  ],
  [
    ...([
      [0, 0],
      [200, 0],
      [200, 150],
      [108, 150],
      [108, 110],
      [130, 110],
    ] as const),
    ...([
      [130, 50],
      [70, 50],
      [70, 110],
      [92, 110],
      [92, 150],
      [0, 150],
    ] as const),
  ],
];

/** A sheet with hardly anything between its margins. mm. */
const NARROW = { sheetWidth: 200, gap: 62.5 };
const SQUARE = [
  [0, 0],
  [200, 0],
  [200, 200],
  [0, 200],
] as const;
const SPLINTER = [
  [0, 0],
  [9, 0],
  [9, 30],
  [0, 30],
] as const;

function tellOfPieces(say: Say): unknown {
  const label = { ...LABEL, say, revision: 'k3f7' };
  const draft = (outline: (typeof OUTLINES)[number], options?: PatternOptions): unknown =>
    draftPiece(polygonPiece(outline), label, options);
  const pieces = samplePanels().flatMap((input) => {
    const made = draftPiece(input, label);
    return made.ok ? [made.value] : [];
  });
  return [
    OUTLINES.map((outline) => draft(outline)),
    draft(SQUARE, { allowance: 1.5 }),
    draft(SQUARE, { allowance: 12.7, allowanceByEdge: { 'side-0': 25.4, 'side-1': 6 } }),
    draft(SPLINTER, { allowance: 3 }),
    [{ sheetWidth: 20.5 }, { gap: -1.5 }, NARROW, {}].map((options) =>
      arrangePieces(pieces, { say, ...options }),
    ),
    arrangePieces([], { say, ...NARROW }),
  ];
}

/** What is said on pieces, paper and in files, and of those that cannot be made. */
export async function tellOfFiles(): Promise<unknown> {
  const said: Phrase[] = [];
  const say: Say = (phrase) => {
    said.push(phrase);
    return inEnglish(phrase);
  };
  const read = parseProject(readFileSync('shared/demos/average.loftseam.json', 'utf8'));
  if (!read.ok) throw new Error('demo');
  const cloth = { ...read.value.cloth, grain: { nowhere: 0.1 }, allowanceByEdge: { nowhere: 15 } };
  const project: Project = { ...read.value, name: 'Cat 𓃠', cloth };
  const result = makeForm(project, { speaker: { ...ENGLISH, say }, targetTriangles: 1500 });
  if (!result.ok) throw new Error('demo');
  const form = result.value;
  const made: unknown[] = [result.issues];
  for (const wish of WISHES) {
    made.push(await exportForm(form, { formats: [], date: '2026-11-25', ...wish, say, font: FONT }));
  }
  const lines = findLayout('upright8')?.lines ?? [];
  const layouts = [{ layout: 'spiral' }, { lines: [...lines, ...lines] }].map((seams) =>
    makeForm({ ...project, seams }, { speaker: ENGLISH, targetTriangles: 500 }),
  );
  const { shell, closedMesh } = form;
  const gauged = gaugedForm(shell, closedMesh, 0);
  const aloft = { ...gauged, levels: gauged.levels.map((level) => ({ ...level, z: 5000 })) };
  made.push(makeGauges(aloft), howToHoldGauges());
  mapDistance(form.body, form.body, say);
  return [made, layouts, tellOfPieces(say), correctionFromBars({ x: 170.5, y: 199 }), said];
}
