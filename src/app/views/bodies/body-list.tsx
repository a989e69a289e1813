import { useCallback, useEffect, useState } from 'react';
import type { KeptBodies, KeptBody } from '../../store/index.ts';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useActions, useApp, useServices } from '../parts/workroom-context.tsx';

/** No bodies until the database was looked into. */
type Contents = Omit<KeptBodies, 'bodies'> & { readonly bodies: KeptBodies['bodies'] | null };

interface BodyListProps {
  readonly onClose: () => void;
}

/** The bodies worked on in this browser: open, rename, duplicate, delete, and take a deletion back. */
export function BodyList({ onClose }: BodyListProps) {
  const services = useServices();
  const words = useWords();
  const { bodies, unreadable, trouble, run } = useCabinet();
  const [deleted, setDeleted] = useState<KeptBody | null>(null);
  return (
    <section className="body-list" aria-labelledby="bodies-title">
      <h3 id="bodies-title">{words.bodies.title}</h3>
      {trouble && (
        <p className="field-message" role="alert">
          {words.bodies.refused(trouble)}
        </p>
      )}
      {deleted && (
        <p className="deleted" role="status">
          {words.bodies.deleted(deleted.name || words.top.untitled)}{' '}
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
            {words.bodies.takeBack}
          </button>
        </p>
      )}
      {unreadable.length > 0 && <UnreadableEntries entries={unreadable} />}
      {bodies?.length === 0 && !trouble && <p className="quiet">{words.bodies.none}</p>}
      <NewBodyButtons onClose={onClose} />
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

/** What the cabinet holds, read anew after each work on it; `trouble` tells what went wrong last, empty when nothing did. */
function useCabinet() {
  const services = useServices();
  const [{ bodies, unreadable }, setContents] = useState<Contents>({ bodies: null, unreadable: [] });
  const [trouble, setTrouble] = useState('');
  const refresh = useCallback(async () => {
    try {
      setContents(await services.bodies.list());
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error));
      setContents({ bodies: [], unreadable: [] });
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
  return { bodies, unreadable, trouble, run };
}

function NewBodyButtons({ onClose }: BodyListProps) {
  const services = useServices();
  const words = useWords();
  return (
    <>
      <button
        type="button"
        className="plain save-as"
        onClick={() => {
          onClose();
          services.newBody();
        }}
      >
        {words.gallery.newBody}
      </button>
      {services.saveProjectAs && (
        <button
          type="button"
          className="plain save-as"
          onClick={() => {
            onClose();
            void services.saveProjectAs?.();
          }}
        >
          {words.bodies.saveAs}
        </button>
      )}
    </>
  );
}

function UnreadableEntries({ entries }: { readonly entries: readonly unknown[] }) {
  const services = useServices();
  const words = useWords();
  const text = () => JSON.stringify(entries, null, 2);
  return (
    <p className="field-message" role="status">
      {words.bodies.unreadable(entries.length)}{' '}
      <button
        type="button"
        className="plain"
        onClick={() => services.saveText('loftseam-bodies-unreadable.txt', text())}
      >
        {words.notices.saveFile}
      </button>
    </p>
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
  const words = useWords();
  const { time: sayTime } = useNumbers();
  const shown = body.name || words.top.untitled;
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
          <span className="quiet">{isOpen ? words.bodies.openNow : sayTime(body.at)}</span>
        </button>
      ) : (
        <input
          aria-label={words.bodies.newName(shown)}
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
          aria-label={words.bodies.renameOne(shown)}
          onClick={() => setName(body.name)}
        >
          {words.bodies.rename}
        </button>
        <button
          type="button"
          className="plain"
          aria-label={words.bodies.duplicateOne(shown)}
          onClick={onCopy}
        >
          {words.bodies.duplicate}
        </button>
        {!isOpen && (
          <button
            type="button"
            className="plain"
            aria-label={words.bodies.deleteOne(shown)}
            onClick={onDelete}
          >
            {words.bodies.delete}
          </button>
        )}
      </span>
    </li>
  );
}
