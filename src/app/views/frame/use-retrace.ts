import { useEffect } from 'react';
import type { Stage } from '../../store/index.ts';
import { useWorkroom } from '../parts/workroom-context.tsx';

/** Where a step was made. */
interface Place {
  readonly stage: Stage;
  /** What had the focus, as `nameOf` says it; null where that is not in the work. */
  readonly field: string | null;
}

/** How long a stage may take to stand, frames. */
const PATIENCE = 90;
const LIT_MS = 2200;

/** Undo and redo say what they change, go to where it was made, and light it for a moment. */
export function useRetrace(): void {
  const { store, actions } = useWorkroom();
  useEffect(() => {
    const places = new WeakMap<object, Place>();
    return store.subscribe((now, before) => {
      if (now.retraced && now.retraced !== before.retraced) {
        const { way, step, made } = now.retraced;
        const { undone, redone } = now.words.messages;
        actions.mention(way === 'undo' ? undone(step) : redone(step));
        const place = places.get(made);
        if (!place) return;
        if (place.stage !== now.stage) actions.goTo(place.stage);
        if (place.field !== null) whenThere(place.field, PATIENCE, show);
        return;
      }
      const made = now.project !== before.project ? now.project : now.drawn;
      const isNew = now.project !== before.project || now.drawn !== before.drawn;
      if (isNew && made && !places.has(made)) places.set(made, { stage: now.stage, field: fieldWithFocus() });
    });
  }, [store, actions]);
}

function fieldWithFocus(): string | null {
  const element = document.activeElement;
  return element?.closest('#work') && element.id !== 'work' ? nameOf(element) : null;
}

/** Tag and name of a field: the same again when its stage is shown anew. */
function nameOf(element: Element): string {
  const name = element.getAttribute('aria-label') ?? (element.closest('label') ?? element).textContent;
  return `${element.tagName} ${name}`;
}

function whenThere(field: string, frames: number, then: (element: Element) => void): void {
  const tag = field.slice(0, field.indexOf(' '));
  const found = [...document.querySelectorAll(`#work ${tag}`)].find((element) => nameOf(element) === field);
  if (found) then(found);
  else if (frames > 0) requestAnimationFrame(() => whenThere(field, frames - 1, then));
}

function show(field: Element): void {
  for (let at = field.closest('details'); at; at = at.parentElement?.closest('details') ?? null)
    at.open = true;
  const row = field.closest<HTMLElement>('label, li, tr, .field-row') ?? (field as HTMLElement);
  const { top, bottom } = row.getBoundingClientRect();
  if (top < 0 || bottom > window.innerHeight || !isInPane(row)) row.scrollIntoView({ block: 'center' });
  row.dataset.retraced = '';
  setTimeout(() => delete row.dataset.retraced, LIT_MS);
}

function isInPane(row: Element): boolean {
  const pane = document.querySelector('#work')?.getBoundingClientRect();
  const { top, bottom } = row.getBoundingClientRect();
  return !pane || (top >= pane.top && bottom <= pane.bottom);
}
