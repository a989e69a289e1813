import type { Laying, Stock, UseId } from '../../core/laying/index.ts';
import type { Project } from '../../core/project/index.ts';

/** The project with what is laid on of one use; nothing at all takes it out. */
export function withStock(project: Project, use: UseId, stock: Stock): Project {
  const { laying: before, ...others } = project;
  const { [use]: _replaced, ...rest } = before ?? {};
  const laying: Laying = Object.keys(stock).length > 0 ? { ...rest, [use]: stock } : rest;
  return Object.keys(laying).length > 0 ? { ...others, laying } : others;
}

/** Locked pieces stay where they are; the others have no place any more. */
export function withHeldAlone({ placed = [], ...stock }: Stock): Stock {
  const held = placed.filter(({ isHeld }) => isHeld);
  return held.length > 0 ? { ...stock, placed: held } : stock;
}
