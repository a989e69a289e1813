import { useEffect, useRef, useState } from 'react';
import { Icon } from '../parts/icon.tsx';
import { useWords } from '../parts/use-words.ts';

/** On a phone, where a stage is many screens long: its parts in a short list, to go to one. */
export function PartList({ onClose }: { readonly onClose: () => void }) {
  const [headings] = useState(findHeadings);
  const dialog = useRef<HTMLDialogElement>(null);
  const words = useWords().top;
  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  const close = () => dialog.current?.close();
  return (
    <dialog ref={dialog} className="gallery part-list" aria-labelledby="part-list-title" onClose={onClose}>
      <div className="gallery-head">
        <h2 id="part-list-title">{words.toPart}</h2>
        <button type="button" className="icon-only" aria-label={words.close} onClick={close}>
          <Icon name="close" />
        </button>
      </div>
      <ol>
        {headings.map((heading) => (
          <li key={heading.textContent}>
            <button
              type="button"
              onClick={() => {
                close();
                goToPart(heading);
              }}
            >
              {heading.textContent}
            </button>
          </li>
        ))}
      </ol>
    </dialog>
  );
}

/** Headings of the stage in sight, and names of groups that open. */
function findHeadings(): readonly HTMLElement[] {
  const found = document.querySelectorAll<HTMLElement>('#work :is(h2, h3, .group-name)');
  return [...found].filter((heading) => heading.offsetHeight > 1 && heading.checkVisibility());
}

/** Opens the group it names; the focus goes along, for whoever works by keys. */
function goToPart(heading: HTMLElement): void {
  const summary = heading.closest('summary');
  const target = summary ?? heading;
  if (summary?.parentElement instanceof HTMLDetailsElement) summary.parentElement.open = true;
  else target.tabIndex = -1;
  target.focus({ preventScroll: true });
  target.scrollIntoView({ block: 'start' });
}
