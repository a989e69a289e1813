/** What is lit, round what, and what must not cover it. */
export interface Lighting {
  readonly findThing: () => Element | null;
  /** What is lit while the thing is not there. */
  readonly findInstead: () => Element | null;
  /** Fixed to the screen; laid round the thing. */
  readonly ring: HTMLElement;
  /** Over the page, with the words. */
  readonly sheet: HTMLElement;
  /** Whether `findThing` finds it; called on every change of that. */
  readonly onFound: (isFound: boolean) => void;
}

/** The page may still be growing: forms, pictures and parts of the program come late. */
const LOOK_MS = 200;
const AROUND = 5;

/**
 * Keeps a ring round a thing of the page, and brings the thing to where nothing covers it until somebody scrolls. Answers with
 * what ends it.
 */
export function lightThing({ findThing, findInstead, ring, sheet, onFound }: Lighting): () => void {
  let isTouched = false;
  let wasFound: boolean | null = null;
  const look = () => {
    const thing = findThing();
    if ((thing !== null) !== wasFound) {
      wasFound = thing !== null;
      onFound(wasFound);
    }
    if (thing && !isTouched) bringOut(thing, sheet);
    layRound(thing ?? findInstead(), ring, sheet);
  };
  const touch = ({ target }: Event) => {
    if (!(target instanceof Node && sheet.contains(target))) isTouched = true;
  };
  const follow = () => layRound(findThing() ?? findInstead(), ring, sheet);
  const timer = setInterval(look, LOOK_MS);
  for (const kind of TOUCHES) window.addEventListener(kind, touch, { passive: true });
  window.addEventListener('scroll', follow, { capture: true, passive: true });
  window.addEventListener('resize', follow);
  look();
  return () => {
    clearInterval(timer);
    for (const kind of TOUCHES) window.removeEventListener(kind, touch);
    window.removeEventListener('scroll', follow, { capture: true });
    window.removeEventListener('resize', follow);
  };
}

const TOUCHES = ['wheel', 'touchmove', 'pointerdown', 'keydown'] as const;

interface Span {
  readonly top: number;
  readonly bottom: number;
}

/** What scrolls with the thing: the pane of the work, else the whole page. Null for what stands fast. */
function paneOf(thing: Element): HTMLElement | null {
  const work = thing.closest<HTMLElement>('#work');
  const isPane = work !== null && getComputedStyle(work).overflowY !== 'visible';
  if (isPane) return work;
  return document.documentElement.scrollHeight > window.innerHeight ? document.documentElement : null;
}

/** The height in which the thing can be seen: within its pane, and where the sheet lies across the page, above it. */
function spanFor(thing: Element, sheet: HTMLElement): Span {
  // On a phone the stages stand under the sheet.
  if (thing.closest('.stage-bar')) return { top: 0, bottom: window.innerHeight };
  const pane = paneOf(thing);
  const box = pane === document.documentElement ? null : pane?.getBoundingClientRect();
  const over = sheet.getBoundingClientRect();
  const isAcross = over.width > 0.8 * window.innerWidth;
  return {
    top: box?.top ?? 0,
    bottom: Math.min(box?.bottom ?? window.innerHeight, isAcross ? over.top : Infinity),
  };
}

/** Into the middle of what can be seen; of what is taller than that, its top. */
function bringOut(thing: Element, sheet: HTMLElement): void {
  const pane = paneOf(thing);
  if (!pane) return;
  const { top, bottom } = spanFor(thing, sheet);
  const box = thing.getBoundingClientRect();
  if (box.top >= top + AROUND && box.bottom <= bottom - AROUND) return;
  const room = bottom - top - box.height;
  const by = box.top - top - Math.max(2 * AROUND, room / 2);
  if (Math.abs(by) < 1) return;
  const isStill = window.matchMedia('(prefers-reduced-motion: reduce)').matches;
  pane.scrollBy({ top: by, behavior: isStill ? 'instant' : 'smooth' });
}

/** As far as the thing can be seen; the ring is hidden where nothing of it can. */
function layRound(thing: Element | null, ring: HTMLElement, sheet: HTMLElement): void {
  const box = thing?.getBoundingClientRect();
  if (!thing || !box) {
    ring.hidden = true;
    return;
  }
  const span = spanFor(thing, sheet);
  const top = Math.max(box.top - AROUND, span.top);
  const bottom = Math.min(box.bottom + AROUND, span.bottom);
  const left = Math.max(box.left - AROUND, 0);
  const right = Math.min(box.right + AROUND, document.documentElement.clientWidth);
  ring.hidden = bottom - top < 2 * AROUND;
  Object.assign(ring.style, {
    top: `${top}px`,
    left: `${left}px`,
    width: `${right - left}px`,
    height: `${Math.max(0, bottom - top)}px`,
  });
  sheet.dataset.side = (left + right) / 2 > window.innerWidth / 2 + 1 ? 'left' : 'right';
}
