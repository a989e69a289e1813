import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { planPrint } from '../../src/core/files/index.ts';
import { printInfo } from '../../src/core/files/write-pages.ts';
import type { Form } from '../../src/core/form/index.ts';
import type { Piece } from '../../src/core/pattern/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { LAYOUTS } from '../../src/core/seams/index.ts';
import { chooseDrawn, type DrawnPieces } from '../../src/core/sheet/choose-drawn.ts';
import { printPieces } from '../../src/core/sheet/index.ts';
import { DEMO_IDS } from '../body/read-demo.ts';
import { inEnglish } from '../in-english.ts';
import { isCampaign } from '../is-campaign.ts';
import { COARSE, sharedPipeline } from '../shared-pipeline.ts';

const INFO = { say: inEnglish, project: 'P', body: '94', date: '2026-01-31' };
const USUAL = { twins: 'once', plain: 'told' } as const;

function make(demo: string, layout?: string): Form {
  const read = parseProject(readFileSync(`shared/demos/${demo}.loftseam.json`, 'utf8'));
  if (!read.ok) throw new Error(demo);
  const project = layout ? { ...read.value, seams: { layout } } : read.value;
  const form = sharedPipeline.makeForm(project, COARSE);
  if (!form.ok) throw new Error(inEnglish(form.issues[0].message));
  return form.value;
}

const piecesOf = (form: Form): Piece[] => [...form.pieces, ...(form.inside?.pieces ?? [])];

/** Every demo as it is, and the average one in every second layout; in every one in the campaign. */
const MADE = [
  ...DEMO_IDS.map((demo) => [demo, undefined] as const),
  ...LAYOUTS.filter((_, i) => isCampaign || i % 2 === 1).map(({ id }) => ['average', id] as const),
];

/** Where a notch lies on the seam it is named after: from the nearer and from the farther end, mm. */
function placesOf(piece: Piece): { name: string; ends: [number, number] }[] {
  const seams = piece.sewLines.filter(({ name }) => /^[A-Z]+$/.test(name));
  const found: { name: string; ends: [number, number] }[] = [];
  const numbered = new Map<string, Float64Array[]>();
  // Slits side by side are one notch.
  for (const { name, points } of piece.notches)
    if (/^[A-Z]+\d+$/.test(name)) numbered.set(name, [...(numbered.get(name) ?? []), points]);
  for (const [name, slits] of numbered) {
    const letter = name.replace(/\d+/, '');
    for (const seam of seams.filter((one) => one.name === letter)) {
      const near = slits.filter((slit) => nearest(seam.points, slit[2], slit[3]).off < 40);
      if (near.length === 0) continue;
      const places = near.map((slit) => nearest(seam.points, slit[2], slit[3]));
      const along = places.reduce((sum, place) => sum + place.along, 0) / places.length;
      const [{ length }] = places;
      found.push({ name, ends: [Math.min(along, length - along), Math.max(along, length - along)] });
    }
  }
  return found;
}

function nearest(line: Float64Array, x: number, y: number) {
  let [along, off, length] = [0, Number.POSITIVE_INFINITY, 0];
  for (let i = 0; i + 3 < line.length; i += 2) {
    const [ax, ay, bx, by] = [line[i], line[i + 1], line[i + 2], line[i + 3]];
    const step = Math.hypot(bx - ax, by - ay);
    const t =
      step === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / step ** 2));
    const distance = Math.hypot(ax + t * (bx - ax) - x, ay + t * (by - ay) - y);
    if (distance < off) [off, along] = [distance, length + t * step];
    length += step;
  }
  return { along, off, length };
}

describe.each(MADE)('the print of %s (%s)', (demo, layout) => {
  let pieces: Piece[] = [];
  let chosen: DrawnPieces = { drawn: [], told: [], serves: new Map() };
  beforeAll(() => {
    pieces = piecesOf(make(demo, layout));
    chosen = chooseDrawn(pieces, INFO, USUAL);
  });

  it('leaves no piece out: each is drawn, drawn with its twin, or told', () => {
    const { drawn, told, serves } = chosen;
    const reached = [
      ...drawn.flatMap(({ id }) => serves.get(id) ?? []),
      ...told.map(({ piece }) => piece.id),
    ];
    expect(reached.sort()).toEqual(pieces.map(({ id }) => id).sort());
  });

  it('has letters that are read one way only, however the piece lies', () => {
    const letters = pieces
      .flatMap(({ sewLines }) => sewLines.map(({ name }) => name))
      .filter((name) => /^[A-Z]+$/.test(name));
    expect(letters.length).toBeGreaterThan(10);
    // Turned by a half or a quarter these are each other, or a figure (by looking at them, no source).
    for (const letter of letters) expect(letter).not.toMatch(/[NZMWIOU]/);
  });

  it('gives a name to one place of a seam alone, and that place meets every other of the name', () => {
    const byName = new Map<string, [number, number][]>();
    for (const piece of pieces.filter(({ material }) => material !== 'test-tube'))
      for (const { name, ends } of placesOf(piece)) byName.set(name, [...(byName.get(name) ?? []), ends]);
    expect(byName.size).toBeGreaterThan(20);
    for (const [name, places] of byName) {
      // Webs are sewn to a part of the shell's seam: their notches are judged with their pieces (tests/inside).
      const shell = places.filter(([a, b]) => Math.abs(a + b - (places[0][0] + places[0][1])) < 1);
      for (const [a, b] of shell) {
        expect(a, name).toBeCloseTo(shell[0][0], 0);
        expect(b, name).toBeCloseTo(shell[0][1], 0);
      }
    }
    // On the sleeve each is one tick.
    const sleeve = pieces.find(({ id }) => id === 'pole-sleeve');
    const ticks =
      sleeve?.sewLines.map(({ name }) => /^[A-Z]+\d+/.exec(name)?.[0] ?? '').filter(Boolean) ?? [];
    expect(new Set(ticks).size).toBe(ticks.length);
    for (const { id, notches } of pieces.filter((piece) => /^(strap|throat)-/.test(piece.id))) {
      const own = pieces.find((piece) => piece.id === id)!.sewLines;
      const onSleeve = own[1].name;
      for (const { name } of notches.filter((notch) => notch.name.replace(/\d+/, '') === onSleeve))
        expect(ticks, `${id} ${name}`).toContain(name);
    }
  });

  it('writes on twins what is true of both', () => {
    const { drawn, serves } = chosen;
    for (const piece of drawn.filter(({ twins }) => twins)) {
      const [right, left] = (serves.get(piece.id) ?? []).map((id) => pieces.find((one) => one.id === id)!);
      const namesOf = ({ notches }: Piece) =>
        new Set(notches.map(({ name }) => name).filter((name) => /^[A-Z]+\d+$/.test(name)));
      const written = piece.texts.flatMap(({ text }) =>
        /^[A-Z]+\d+(\/[A-Z]+\d+)?$/.test(text) ? [text.split('/')] : [],
      );
      expect(new Set(written.map(([own]) => own))).toEqual(namesOf(right));
      expect(new Set(written.map((names) => names[names.length - 1]))).toEqual(namesOf(left));
    }
  });
});

it('names no page as a notch is named, and tells pages and joints as they come out', () => {
  const form = make('average');
  const pieces = piecesOf(form);
  const notches = new Set(pieces.flatMap(({ notches: own }) => own.map(({ name }) => name)));
  for (const paper of ['a4', 'letter']) {
    // Words on pieces take room: those of the plan.
    const job = printPieces(pieces, printInfo(form, pieces, '', inEnglish), { paper });
    const plan = planPrint(form, { papers: [paper], say: inEnglish });
    if (!job.ok || !plan.ok) throw new Error(paper);
    const { pages, tiled } = job.value;
    expect(pages.length).toBeLessThanOrEqual(50);
    expect([plan.value.patternPages, plan.value.joints]).toEqual([tiled.tiles.length, tiled.joints.length]);
    expect(plan.value.pictures).toHaveLength(plan.value.pages);
    for (const { name, words } of tiled.tiles) {
      expect(notches.has(name)).toBe(false);
      // Alone, 6 and 9 are each other when the page is turned.
      expect(words).toBe(`page ${name}`);
    }
    const apart = planPrint(form, {
      papers: [paper],
      print: { twins: 'apart', plain: 'drawn' },
      say: inEnglish,
    });
    if (!apart.ok) throw new Error(paper);
    expect(apart.value.patternPages).toBeGreaterThan(1.5 * tiled.tiles.length);
  }
});

it('has no page with only a sliver of the pattern', () => {
  for (const demo of ['average', 'large-bust']) {
    const job = printPieces(piecesOf(make(demo)), INFO, { paper: 'a4' });
    if (!job.ok) throw new Error(demo);
    for (const { layers, title } of job.value.tiled.pages) {
      const cuts = layers
        .find(({ name }) => name === 'cut')!
        .items.flatMap((item) => (item.kind === 'path' ? [item.points] : []));
      const xs = cuts.flatMap((points) => [...points].filter((_, i) => i % 2 === 0));
      const ys = cuts.flatMap((points) => [...points].filter((_, i) => i % 2 === 1));
      expect(Math.max(...xs) - Math.min(...xs), title).toBeGreaterThan(25);
      expect(Math.max(...ys) - Math.min(...ys), title).toBeGreaterThan(25);
    }
  }
});
