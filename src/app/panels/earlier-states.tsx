import { useEffect, useRef, useState } from 'react';
import { BodyList } from './body-list.tsx';
import { Icon } from './icon.tsx';
import { useServices } from './workroom-context.tsx';

/** The maker's bodies, and the last states this browser kept, to go back to after a mistake or a crash. */
export function EarlierStates({ onClose }: { readonly onClose: () => void }) {
  const services = useServices();
  const [states] = useState(services.listEarlierStates);
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  const sayTime = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });
  return (
    <dialog ref={dialog} className="gallery earlier" aria-labelledby="earlier-title" onClose={onClose}>
      <div className="gallery-head">
        <h2 id="earlier-title">Bodies and earlier states</h2>
        <button type="button" className="icon-only" aria-label="Close" onClick={onClose}>
          <Icon name="close" />
        </button>
      </div>
      <BodyList onClose={onClose} />
      <h3>Earlier states</h3>
      <p className="quiet">
        The last ten states kept in this browser, one a minute while you work. Opening one can be undone.
      </p>
      <ol className="earlier-list">
        {states.map(({ at, name, text }, index) => (
          <li key={`${at} ${name}`}>
            <button
              type="button"
              onClick={() => {
                onClose();
                void services.openText(text, `the state of ${sayTime.format(at)}`);
              }}
            >
              <span className="card-name">{name || 'Untitled'}</span>
              <time className="quiet" dateTime={new Date(at).toISOString()}>
                {sayTime.format(at)}
                {index === 0 ? ', newest' : ''}
              </time>
            </button>
          </li>
        ))}
      </ol>
    </dialog>
  );
}
