import { useThree } from '@react-three/fiber';
import { useEffect, useMemo, useRef, useState } from 'react';
import { CanvasTexture, LinearMipmapLinearFilter, RepeatWrapping, SRGBColorSpace, type Texture } from 'three';
import { useStore } from 'zustand';
import type { Form } from '../../core/form/index.ts';
import { findUse, type LayPlan } from '../../core/laying/index.ts';
import {
  type AppState,
  type AppStore,
  isLaid,
  isShown,
  type LaySeen,
  layInView,
  type PrintTile,
  printTileOf,
  stageOf,
} from '../store/index.ts';
import { printOnPanels } from './print-on-panels.ts';

/** A print on the panels: its picture, and where in it every vertex of each panel lies, in repeats. */
export interface LaidPrint {
  readonly texture: Texture;
  readonly places: readonly Float32Array[];
}

/** Enough to keep stripes sharp where the cloth turns away. */
const ANISOTROPY = 4;

/** The print as the panels are cut from it, where it is looked at; null for plain cloth and until it is laid. */
export function useLaidPrint(form: Form, store: AppStore): LaidPrint | null {
  const seen = useStore(store, (state) => {
    const isWanted = isShown(stageOf(state.stage), 'print', state.layers);
    return isWanted ? layInView(state, laidOnBody(state)) : null;
  });
  const print = seen?.of.stock.print;
  const photo = useStore(store, (state) => (print?.kind === 'photo' ? state.clothPhoto : null));
  const tile = usePrintTile(print, photo);
  const invalidate = useThree((state) => state.invalidate);
  const texture = useMemo(() => (tile ? textureOf(tile) : null), [tile]);
  useEffect(() => () => texture?.dispose(), [texture]);
  const isSearched = useStore(store, ({ layWork }) => layWork.search?.use === seen?.rules.use.id);
  const plan = useSettledPlan(seen, isSearched);
  // A plan of other panels than those on the body is not shown on them.
  const isPresent = seen?.of.pieces === form.pieces;
  const places = useMemo(
    () => (tile && plan && isPresent ? printOnPanels(form, plan, tile) : null),
    [form, plan, tile, isPresent],
  );
  const laid = useMemo(() => (texture && places ? { texture, places } : null), [texture, places]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another print is to be drawn
  useEffect(invalidate, [laid, invalidate]);
  return laid;
}

/** While a search goes on the first plan it found, then its last: a body drawn for each would keep the page waiting. */
function useSettledPlan(seen: LaySeen | null, isSearched: boolean): LayPlan | null {
  const drawn = useRef<{ readonly of: LaySeen['of']; readonly plan: LayPlan } | null>(null);
  const held = drawn.current;
  if (!seen?.plan) return null;
  if (isSearched && held?.of === seen.of) return held.plan;
  drawn.current = { of: seen.of, plan: seen.plan };
  return seen.plan;
}

/** The cloth looked at, if panels are cut from it; else the shell's. */
function laidOnBody({ layWork, project }: AppState): AppState['layWork']['use'] {
  const { material } = findUse(layWork.use);
  return material === 'shell' && isLaid(project?.laying, layWork.use) ? layWork.use : 'shell';
}

function usePrintTile(
  print: Parameters<typeof printTileOf>[0] | undefined,
  photo: AppState['clothPhoto'],
): PrintTile | null {
  const [tile, setTile] = useState<PrintTile | null>(null);
  useEffect(() => {
    let isWanted = true;
    const show = async () => {
      const made = print ? await printTileOf(print, photo) : null;
      if (isWanted) setTile(made);
    };
    void show();
    return () => {
      isWanted = false;
    };
  }, [print, photo]);
  return tile;
}

function textureOf({ picture }: PrintTile): CanvasTexture {
  const texture = new CanvasTexture(picture);
  texture.colorSpace = SRGBColorSpace;
  texture.wrapS = texture.wrapT = RepeatWrapping;
  texture.minFilter = LinearMipmapLinearFilter;
  texture.anisotropy = ANISOTROPY;
  return texture;
}
