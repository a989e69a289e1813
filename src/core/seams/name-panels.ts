import { type Phrase, plain } from '../base/index.ts';
import { findHeights } from './fair-curve.ts';
import type { ResolvedLine } from './resolve-lines.ts';

export interface PanelPlace {
  readonly side: 'right' | 'left' | 'centre';
  /** Mean chart point, on the right half (left panels: of their image). */
  readonly u: number;
  readonly v: number;
}

export interface PanelName {
  readonly id: string;
  readonly name: Phrase;
}

/** A level line no further below the side of the neck than this, mm of the chart, divides the neck off. */
const NECK_WIDTH = 30;
/** Uprights nearer than this to the side are the side line itself, rad. */
const SIDE_WIDTH = 0.12;

/**
 * Plain names by place: centre, middle or side column of front or back, lower or upper where a column is divided.
 * Pieces above a level line round the base of the neck are neck bands. `marks`: the side line's angle at the armpit
 * and the height of the side of the neck. Ids are the same in camel case and unique.
 */
export function namePanels(
  places: readonly PanelPlace[],
  lines: readonly ResolvedLine[],
  marks: { readonly sideU: number; readonly neckV: number },
): PanelName[] {
  const neckLine = lines.find((line) => line.kind === 'level' && Math.abs(line.v - marks.neckV) < NECK_WIDTH);
  const neckV = neckLine?.kind === 'level' ? neckLine.v : Number.POSITIVE_INFINITY;
  const bands = places.filter((place) => place.v > neckV);
  const columns = places.map((place) =>
    place.v > neckV ? nameBand(place, bands, marks.sideU) : nameColumn(place, lines, marks.sideU),
  );
  return places.map((place, i) => {
    const twins = places
      .map((_, k) => k)
      .filter((k) => columns[k] === columns[i] && places[k].side === place.side);
    const rank = twins.filter((k) => places[k].v < place.v || (places[k].v === place.v && k < i)).length;
    const words = [
      ...nameRow(rank, twins.length),
      columns[i],
      ...(place.side === 'centre' ? [] : [place.side]),
    ];
    return { id: camelCase(words.join(' ')), name: plain(words.join(' ')) };
  });
}

function nameBand(place: PanelPlace, bands: readonly PanelPlace[], sideU: number): string {
  const sameSide = bands.filter((band) => band.side === place.side);
  return sameSide.length === 1 ? 'neck band' : `${place.u >= sideU ? 'front' : 'back'} neck band`;
}

function nameColumn(place: PanelPlace, lines: readonly ResolvedLine[], sideU: number): string {
  const isFront = place.u >= sideU;
  const half = isFront ? 'front' : 'back';
  // Distances from the side towards the centre, of lines in the same half that reach this height.
  const away = (u: number): number => (isFront ? u - sideU : sideU - u);
  const others = lines.flatMap((line) => {
    if (line.kind !== 'upright') return [];
    if (line.ends[0].point[1] > place.v || line.ends[1].point[1] < place.v) return [];
    const [t] = findHeights(line.curve, place.v);
    if (t === undefined) return [];
    const distance = away(line.curve.at(t)[0]);
    return distance > SIDE_WIDTH ? [distance] : [];
  });
  if (others.length === 0) return place.side === 'centre' ? `centre ${half}` : half;
  const nearer = others.filter((distance) => distance < away(place.u)).length;
  if (nearer === others.length) return `centre ${half}`;
  if (nearer === 0) return `side ${half}`;
  return others.length === 2 ? `middle ${half}` : `middle ${half} ${others.length - nearer}`;
}

function nameRow(rank: number, count: number): string[] {
  if (count === 1) return [];
  if (rank === 0) return ['lower'];
  if (rank === count - 1) return ['upper'];
  return count === 3 ? ['middle'] : ['middle', `${rank}`];
}

function camelCase(words: string): string {
  return words.replace(/ (\w)/g, (_, letter: string) => letter.toUpperCase());
}
