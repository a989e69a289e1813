import type { Phrase } from '../base/index.ts';
import { findHeights } from './fair-curve.ts';
import { idOfPanel, keyOfPanel, type PanelWords } from './panel-key.ts';
import { phrase } from './phrases.ts';
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
 * Names by place: centre, middle or side column of front or back, lower or upper where a column is divided.
 * Pieces above a level line round the base of the neck are neck bands. `marks`: the side line's angle at the armpit
 * and the height of the side of the neck. Ids are the places' keys in camel case and unique.
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
  const keys = columns.map(keyOfPanel);
  return places.map((place, i) => {
    const twins = places.map((_, k) => k).filter((k) => keys[k] === keys[i] && places[k].side === place.side);
    const rank = twins.filter((k) => places[k].v < place.v || (places[k].v === place.v && k < i)).length;
    const words: PanelWords = {
      ...nameRow(rank, twins.length),
      ...columns[i],
      ...(place.side === 'centre' ? {} : { side: place.side }),
    };
    return { id: idOfPanel(keyOfPanel(words)), name: phrase('panel.place', words) };
  });
}

/** A panel of either half, its side left out; other names stay as they are. */
export function nameWithoutSide(name: Phrase): Phrase {
  if (name.id !== 'panel.place') return name;
  const { side: _, ...rest } = name.values;
  return { ...name, values: rest };
}

function nameBand(place: PanelPlace, bands: readonly PanelPlace[], sideU: number): PanelWords {
  const sameSide = bands.filter((band) => band.side === place.side);
  if (sameSide.length === 1) return { column: 'neckBand' };
  return { column: 'neckBand', half: place.u >= sideU ? 'front' : 'back' };
}

function nameColumn(place: PanelPlace, lines: readonly ResolvedLine[], sideU: number): PanelWords {
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
  if (others.length === 0) return { column: place.side === 'centre' ? 'centre' : 'whole', half };
  const nearer = others.filter((distance) => distance < away(place.u)).length;
  if (nearer === others.length) return { column: 'centre', half };
  if (nearer === 0) return { column: 'side', half };
  return others.length === 2
    ? { column: 'middle', half }
    : { column: 'middle', half, columnNumber: others.length - nearer };
}

function nameRow(rank: number, count: number): Pick<PanelWords, 'row' | 'rowNumber'> {
  if (count === 1) return {};
  if (rank === 0) return { row: 'lower' };
  if (rank === count - 1) return { row: 'upper' };
  return count === 3 ? { row: 'middle' } : { row: 'middle', rowNumber: rank };
}
