import { type Issue, withUsual } from '../base/index.ts';
import { type LevelCase, makeLevelCase } from './balance-level.ts';
import { anchorOf, rungsOfBrace } from './brace-rungs.ts';
import { checkBraces, checkGrowth, judgeLevels } from './check-inside.ts';
import { chooseStraps, gainOfStraps } from './choose-straps.ts';
import { depthOfShell } from './cloth-growth.ts';
import { describeLevel } from './describe-level.ts';
import { type Brace, designLevel, type LevelDesign } from './design-level.ts';
import { fitPole, topOnSleeve } from './fit-pole.ts';
import { angleFromBack, placeOnLine } from './inside-lines.ts';
import { INSIDE_OPTIONS } from './inside-options.ts';
import { type PlacedBrace, placeBraces } from './place-braces.ts';
import {
  type BracePlan,
  isOff,
  levelsToHold,
  mayAddStraps,
  plansWith,
  topOfWebs,
  usualPlan,
} from './plan-braces.ts';
import { sliceTarget } from './section-target.ts';
import { checkTestTube } from './test-tube-growth.ts';
import { type ThroatWebs, throatWebs } from './throat-webs.ts';
import type {
  InsideForm,
  InsideOptions,
  InsideShape,
  LevelFinding,
  PoleFit,
  StrapGain,
  WebPlaces,
} from './types.ts';

/** Rungs of a web are this far apart, mm of chart height. */
const RUNG_GAP = 12;
/** Rows further apart than this get another one designed between them, mm. */
const DESIGN_GAP = 70;
const JUDGED = ['hip', 'waist'];
const WITHOUT_THROAT: ThroatWebs = { braces: [], panelLines: [], issues: [] };

interface Row {
  readonly v: number;
  readonly levelId?: string;
  readonly level: LevelCase;
  readonly active: readonly number[];
  readonly design: LevelDesign;
}

/** Rows designed so far, by height, held places and braces: a plan that changes one row costs one row. */
type RowMemory = Map<string, Pick<Row, 'level' | 'design'>>;

interface Attempt {
  readonly shape: Omit<InsideShape, 'strapGains' | 'strapsNeeded'>;
  readonly issues: readonly Issue[];
}

/**
 * Webs, ties and straps for a form, and what the stuffed form then measures. On a pressure of filling the cloth takes
 * the shape of `solveSection`; the lengths of the braces are those that keep it nearest the body, row by row. The back
 * and front ties end on the pole sleeve; a pair of webs runs from front to back; straps hold the sides at the bust, at levels that are
 * `needed` or swell much by their sections, with all parts at the hip too.
 * With `webPlaces` left open, seams are tried first. With all parts, where a level then stays too far off, more straps and webs set
 * otherwise are tried there, and kept if they bring it within its limit or are worth their sewing. Throat webs, as deep as the body, go on above. About 25 balances at each of 11 rows, more rows
 * for what is tried.
 */
export function designInside(
  form: InsideForm,
  options: InsideOptions,
  needed: readonly string[] = [],
): { shape: InsideShape; issues: Issue[] } {
  const {
    wantedDeviation: wanted,
    boardThickness,
    throat: hasThroat,
    tubeDiameter,
    webPlaces,
  } = withUsual(INSIDE_OPTIONS, options);
  const shellDepth = depthOfShell(options);
  const usual = usualPlan(form.levels, options, needed);
  const { pole, issues } = fitPole(
    form,
    tubeDiameter,
    boardThickness,
    rungRows(form, boardThickness, usual),
    shellDepth,
  );
  const memory: RowMemory = new Map();
  const attempt = (places: WebPlaces, plan: BracePlan, only?: readonly string[]): Attempt => {
    const rows = rungRows(form, boardThickness, plan);
    const nape = hasThroat ? rowsOfNape(form, pole, rows[rows.length - 1]) : [];
    const placed = placeBraces(form, rows, nape, places, plan);
    const heights = designRows(form, rows).filter((v) => {
      return only === undefined || form.levels.some((level) => level.v === v && only.includes(level.id));
    });
    const shape = shapeOf(
      form,
      pole,
      rows,
      heights,
      placed.braces,
      places,
      placed.panelLines,
      memory,
      shellDepth,
    );
    return { shape, issues: placed.issues };
  };
  const isGoodOnSeams = (): boolean =>
    attempt('seams', usual, JUDGED).shape.levels.every(({ held }) => Math.abs(held.deviation) <= wanted);
  const places = webPlaces ?? (isGoodOnSeams() ? 'seams' : 'panels');

  const bare = attempt(places, usual);
  const strapsNeeded = [...needed, ...levelsToHold(bare.shape.levels, options, usual)];
  const start = strapsNeeded.length > needed.length ? usualPlan(form.levels, options, strapsNeeded) : usual;
  const first = start === usual ? bare : attempt(places, start);
  const isOpenToMore = (level: LevelFinding): boolean =>
    isOff(level, wanted) && mayAddStraps(level.id, options);
  const { plan, gains: strapGains } = addStraps(first, start, wanted, isOpenToMore, (other, levelId) =>
    attempt(places, other, [levelId]),
  );
  const best = plan === start ? first : attempt(places, plan);
  const throat = hasThroat
    ? throatWebs(
        form,
        pole,
        topOfWebs(form, plan),
        shellDepth,
        form.letterCount + best.shape.panelLines.length,
      )
    : WITHOUT_THROAT;
  const shape: InsideShape = { ...withThroat(best.shape, throat), strapGains, strapsNeeded };
  return {
    shape,
    issues: [
      ...checkTestTube(options),
      ...issues,
      ...best.issues,
      ...throat.issues,
      ...checkBraces(shape),
      ...checkGrowth(shape.levels, options),
      ...judgeLevels(shape.levels, wanted),
    ],
  };
}

function withThroat(shape: Attempt['shape'], throat: ThroatWebs): Attempt['shape'] {
  return {
    ...shape,
    braces: [...shape.braces, ...throat.braces],
    panelLines: [...shape.panelLines, ...throat.panelLines],
  };
}

/** The plan with the straps added that are worth it, level by level, and what they buy. `tryAt` makes one level with a plan. */
function addStraps(
  first: Attempt,
  usual: BracePlan,
  wanted: number,
  isOpenToMore: (level: LevelFinding) => boolean,
  tryAt: (plan: BracePlan, levelId: string) => Attempt,
): { plan: BracePlan; gains: StrapGain[] } {
  let plan = usual;
  const gains: StrapGain[] = [];
  for (const before of first.shape.levels.filter(isOpenToMore)) {
    const tries = plansWith(plan, before.id).flatMap((other) => {
      const tried = tryAt(other, before.id);
      const [level] = tried.shape.levels;
      return tried.issues.length <= first.issues.length && level ? [{ plan: other, level }] : [];
    });
    const helps = chooseStraps(before, tries, wanted);
    if (!helps) continue;
    plan = helps.plan;
    gains.push(gainOfStraps(before, helps.level));
  }
  return { plan, gains };
}

/** Heights of the rungs: from just above the base plate to the upper chest, every level line among them. */
function rungRows(form: InsideForm, boardThickness: number, plan: BracePlan): number[] {
  const bottom = form.surface.vRange[0] + boardThickness + 12;
  const levels = form.levels.map((level) => level.v).filter((v) => v > bottom + 5);
  const stops = [...new Set([bottom, ...levels, topOfWebs(form, plan)])];
  return stops.flatMap((v, i) => {
    if (i === 0) return [v];
    const count = Math.ceil((v - stops[i - 1]) / RUNG_GAP);
    return Array.from({ length: count }, (_, k) =>
      k === count - 1 ? v : stops[i - 1] + ((v - stops[i - 1]) * (k + 1)) / count,
    );
  });
}

/** A tie that goes level to the sleeve stays so far under the foot of the neck block, mm. */
const UNDER_BLOCK = 10;

/** Rows behind over the uppermost of all braces, as far up as what is sewn there passes under the neck block, to the sleeve. */
function rowsOfNape({ surface, neckBaseV }: InsideForm, pole: PoleFit, top: number): number[] {
  const heights = (us: readonly number[], v: number): number[][] =>
    us.map((u) => [...surface.evaluate(Float64Array.of(u, v))]);
  const [[, front, zFront], [, back, zBack]] = heights([Math.PI / 2, -Math.PI / 2], neckBaseV);
  const t = (pole.y - pole.reach - back) / (front - back);
  const most = Math.min(zBack + t * (zFront - zBack) - UNDER_BLOCK, topOnSleeve(pole));
  const count = Math.max(0, Math.floor((neckBaseV - top) / RUNG_GAP));
  const rows = Array.from({ length: count }, (_, k) => top + (k + 1) * RUNG_GAP);
  const end = rows.findIndex((v) => heights([-Math.PI / 2], v)[0][2] > most);
  return end < 0 ? rows : rows.slice(0, end);
}

/** The rows whose lengths are designed: the lowest, every level, and one between rows far apart. */
function designRows(form: InsideForm, rows: readonly number[]): number[] {
  const top = form.levels[form.levels.length - 1].v;
  const isLevel = (v: number): boolean => form.levels.some((level) => level.v === v);
  const chosen: number[] = [];
  rows.forEach((v, i) => {
    // Above the uppermost level the armholes open: there the lengths of that level go on.
    if (v > top) return;
    const next = rows.slice(i).find((w) => w > v && isLevel(w)) ?? v;
    const last = chosen[chosen.length - 1];
    const isFar = v - last >= DESIGN_GAP / 2 && next - v >= DESIGN_GAP / 2 - RUNG_GAP;
    if (i === 0 || isLevel(v) || isFar) chosen.push(v);
  });
  return chosen;
}

function shapeOf(
  form: InsideForm,
  pole: PoleFit,
  rows: readonly number[],
  heights: readonly number[],
  placed: readonly PlacedBrace[],
  webPlaces: WebPlaces,
  panelLines: InsideShape['panelLines'],
  memory: RowMemory,
  shellDepth: number,
): Attempt['shape'] {
  const designed = heights.map((v) => {
    const level = form.levels.find((candidate) => candidate.v === v);
    const active = placed.flatMap((brace, j) =>
      brace.levelId === undefined || brace.levelId === level?.id ? [j] : [],
    );
    return designRow(form, pole, placed, active, v, level?.id, memory);
  });
  const levels = designed.flatMap((row): LevelFinding[] => {
    const level = form.levels.find(({ id }) => id === row.levelId);
    if (!level) return [];
    const slack = row.active.filter((_, k) => !row.design.balance.ties[k].isTaut).map((j) => placed[j].name);
    return [describeLevel(level, row.level, row.design, slack)];
  });
  const knownOf = (j: number) =>
    designed.flatMap((row) => {
      const k = row.active.indexOf(j);
      return k < 0 ? [] : [{ v: row.v, extra: extraOf(row, k) }];
    });
  return {
    pole,
    webPlaces,
    levels,
    braces: placed.map((brace, j) => rungsOfBrace(form, pole, brace, rows, knownOf(j), shellDepth)),
    panelLines,
    rings: designed.map(({ design, level }) => liftRing(design.ring, level.target.heights)),
  };
}

function designRow(
  form: InsideForm,
  pole: PoleFit,
  placed: readonly PlacedBrace[],
  active: readonly number[],
  v: number,
  levelId: string | undefined,
  memory: RowMemory,
): Row {
  const angles = new Map<string, number>();
  const nameOf = (line: PlacedBrace['from']): string => `${line.id}/${line.side}`;
  for (const j of active) {
    for (const line of [placed[j].from, placed[j].to]) {
      if (line !== 'sleeve') angles.set(nameOf(line), angleFromBack(placeOnLine(line, v)?.u ?? 0));
    }
  }
  const held = [...angles].sort((a, b) => a[1] - b[1]);
  const indexOf = (line: PlacedBrace['from']): number => held.findIndex(([name]) => name === nameOf(line));
  const groups = [...new Set(active.map((j) => placed[j].group))];
  const braces: Brace[] = active.map((j) => ({
    from: indexOf(placed[j].from),
    to: placed[j].to === 'sleeve' ? anchorOf(pole, placed[j]) : indexOf(placed[j].to),
    group: groups.indexOf(placed[j].group),
  }));
  const heldAt = held.map(([, u]) => u);
  const key = JSON.stringify([v, heldAt, braces]);
  const known = memory.get(key);
  const made = known ?? designAt(form, v, heldAt, braces);
  memory.set(key, made);
  return { v, active, ...made, ...(levelId === undefined ? {} : { levelId }) };
}

function designAt(
  form: InsideForm,
  v: number,
  heldAt: readonly number[],
  braces: readonly Brace[],
): Pick<Row, 'level' | 'design'> {
  const level = makeLevelCase(sliceTarget(form.surface, v, heldAt));
  return { level, design: designLevel(level, braces) };
}

/** Extra length of the k-th active brace; a slack brace is left as long as the body is deep there. */
function extraOf(row: Row, k: number): number {
  return row.design.balance.ties[k].isTaut ? row.design.extraOfBrace[k] : 0;
}

function liftRing(ring: Float64Array, heights: Float64Array): Float64Array {
  const out = new Float64Array(3 * heights.length);
  heights.forEach((z, i) => {
    out.set([ring[2 * i], ring[2 * i + 1], z], 3 * i);
  });
  return out;
}
