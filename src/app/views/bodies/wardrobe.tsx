import { useEffect, useRef, useState } from 'react';
import { Icon } from '../parts/icon.tsx';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useServices } from '../parts/workroom-context.tsx';
import { BodyList } from './body-list.tsx';

/** The maker's bodies, and the last states this browser kept, to go back to after a mistake or a crash. */
export function EarlierStates({ onClose }: { readonly onClose: () => void }) {
  const services = useServices();
  const [states] = useState(services.listEarlierStates);
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  // Closed by the browser, so that the focus goes back to the button it came from.
  const close = () => dialog.current?.close();
  const words = useWords();
  const { time: sayTime } = useNumbers();
  return (
    <dialog ref={dialog} className="gallery earlier" aria-labelledby="earlier-title" onClose={onClose}>
      <div className="gallery-head">
        <h2 id="earlier-title">{words.top.earlier}</h2>
        <button type="button" className="icon-only" aria-label={words.top.close} onClick={close}>
          <Icon name="close" />
        </button>
      </div>
      <BodyList onClose={close} />
      <h3>{words.bodies.earlier}</h3>
      <p className="quiet">{words.bodies.aboutEarlier}</p>
      <ol className="earlier-list">
        {states.map(({ at, name, text }, index) => (
          <li key={`${at} ${name}`}>
            <button
              type="button"
              onClick={() => {
                close();
                void services.openText(text, words.bodies.stateOf(sayTime(at)));
              }}
            >
              <span className="card-name">{name || words.top.untitled}</span>
              <time className="quiet" dateTime={new Date(at).toISOString()}>
                {sayTime(at)}
                {index === 0 ? `, ${words.bodies.newest}` : ''}
              </time>
            </button>
          </li>
        ))}
      </ol>
    </dialog>
  );
}
