import { useCallback, useEffect, useState } from 'react';
import type { KeptBody } from '../store/index.ts';
import { useActions, useApp, useServices } from './workroom-context.tsx';

interface BodyListProps {
  readonly onClose: () => void;
}

/** The bodies worked on in this browser: open, rename, duplicate, delete, and take a deletion back. */
export function BodyList({ onClose }: BodyListProps) {
  const services = useServices();
  const [bodies, setBodies] = useState<readonly KeptBody[] | null>(null);
  const [trouble, setTrouble] = useState('');
  const [deleted, setDeleted] = useState<KeptBody | null>(null);
  const refresh = useCallback(async () => {
    try {
      setBodies(await services.bodies.list());
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error));
      setBodies([]);
    }
  }, [services]);
  useEffect(() => void refresh(), [refresh]);
  const run = async (work: () => Promise<void>) => {
    try {
      await work();
      setTrouble('');
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error));
    }
    await refresh();
  };
  return (
    <section className="body-list" aria-labelledby="bodies-title">
      <h3 id="bodies-title">Bodies in this browser</h3>
      {trouble && (
        <p className="field-message" role="alert">
          This browser cannot keep bodies here ({trouble}). Save to files instead; nothing that is open is
          lost.
        </p>
      )}
      {deleted && (
        <p className="deleted" role="status">
          {deleted.name || 'Untitled'} was deleted.{' '}
          <button
            type="button"
            className="plain"
            onClick={() =>
              void run(async () => {
                await services.bodies.put(deleted);
                setDeleted(null);
              })
            }
          >
            Take it back
          </button>
        </p>
      )}
      {bodies?.length === 0 && !trouble && (
        <p className="quiet">None yet. A body is kept here from the first change on.</p>
      )}
      {services.saveProjectAs && (
        <button
          type="button"
          className="plain save-as"
          onClick={() => {
            onClose();
            void services.saveProjectAs?.();
          }}
        >
          Save the open one to a file you choose…
        </button>
      )}
      <ul className="earlier-list">
        {bodies?.map((body) => (
          <BodyRow
            key={body.id}
            body={body}
            onClose={onClose}
            onCopy={() => void run(() => services.bodies.duplicate(body))}
            onRename={(name) => void run(() => services.bodies.rename(body, name))}
            onDelete={() =>
              void run(async () => {
                await services.bodies.remove(body.id);
                setDeleted(body);
              })
            }
          />
        ))}
      </ul>
    </section>
  );
}

interface BodyRowProps {
  readonly body: KeptBody;
  readonly onClose: () => void;
  readonly onCopy: () => void;
  readonly onRename: (name: string) => void;
  readonly onDelete: () => void;
}

function BodyRow({ body, onClose, onCopy, onRename, onDelete }: BodyRowProps) {
  const services = useServices();
  const actions = useActions();
  const isOpen = useApp((state) => state.bodyId === body.id);
  const [name, setName] = useState<string | null>(null);
  const shown = body.name || 'Untitled';
  const settle = () => {
    if (name !== null && name.trim() !== '' && name !== body.name) {
      // The open one is renamed like any other change of it, to be undone.
      if (isOpen) actions.renameProject(name.trim());
      onRename(name.trim());
    }
    setName(null);
  };
  return (
    <li className="body-row" data-open={isOpen || undefined}>
      {name === null ? (
        <button
          type="button"
          className="body-open"
          disabled={isOpen}
          onClick={() => {
            onClose();
            void services.openText(body.text, shown, body.id);
          }}
        >
          <span className="card-name">{shown}</span>
          <span className="quiet">{isOpen ? 'open now' : sayTime.format(body.at)}</span>
        </button>
      ) : (
        <input
          aria-label={`New name of ${shown}`}
          value={name}
          maxLength={200}
          ref={(field) => field?.focus()}
          onChange={(event) => setName(event.target.value)}
          onBlur={settle}
          onKeyDown={(event) => {
            if (event.key === 'Enter') settle();
            if (event.key !== 'Escape') return;
            event.preventDefault();
            event.stopPropagation();
            setName(null);
          }}
        />
      )}
      <span className="body-tools">
        <button
          type="button"
          className="plain"
          aria-label={`Rename ${shown}`}
          onClick={() => setName(body.name)}
        >
          Rename
        </button>
        <button type="button" className="plain" aria-label={`Duplicate ${shown}`} onClick={onCopy}>
          Duplicate
        </button>
        {!isOpen && (
          <button type="button" className="plain" aria-label={`Delete ${shown}`} onClick={onDelete}>
            Delete
          </button>
        )}
      </span>
    </li>
  );
}

const sayTime = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });
