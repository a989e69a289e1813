import { useMemo, useState } from 'react';
import {
  describeBodies,
  layOutWardrobe,
  type Notice,
  personsOf,
  WARDROBE_ORDERS,
  type WardrobeOrder,
  type WholeBody,
} from '../../store/index.ts';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useServices } from '../parts/workroom-context.tsx';
import { ArchiveTools } from './archive-tools.tsx';
import { ChosenPair, usePair } from './chosen-pair.tsx';
import { useCabinet } from './use-cabinet.ts';
import { WardrobeCards } from './wardrobe-card.tsx';
import { useWardrobe } from './wardrobe-context.tsx';

interface BodyListProps {
  readonly onClose: () => void;
}

/** From so many bodies on, searching and ordering is worth its place. */
const MANY = 2;

/** The bodies worked on in this browser: looked for, opened, named, compared, copied, saved together, deleted and taken back. */
export function BodyList({ onClose }: BodyListProps) {
  const { untitled } = useWords().top;
  const { bodies: tending, words } = useWardrobe();
  const { locale } = useNumbers();
  const { contents, trouble, run } = useCabinet();
  const [search, setSearch] = useState('');
  const [order, setOrder] = useState<WardrobeOrder>('changed');
  const [deleted, setDeleted] = useState<WholeBody | null>(null);
  const [told, setTold] = useState<Notice | null>(null);
  const pair = usePair(contents.bodies);
  const { bodies, cards, unreadable } = contents;
  const described = useMemo(() => describeBodies({ bodies: bodies ?? [], cards }), [bodies, cards]);
  const shown = useMemo(
    () => layOutWardrobe(described, { order, search, locale }),
    [described, order, search, locale],
  );
  const persons = useMemo(() => personsOf(described), [described]);
  const count = bodies?.length ?? 0;
  return (
    <section className="body-list" aria-labelledby="bodies-title">
      <h3 id="bodies-title">{words.title}</h3>
      {trouble && (
        <p className="field-message" role="alert">
          {trouble.of === 'cabinet' ? words.refused(trouble.reason) : words.notDone(trouble.reason)}
        </p>
      )}
      {told && <Told notice={told} />}
      {deleted && (
        <p className="deleted" role="status">
          {words.deleted(deleted.body.name || untitled)}{' '}
          <button
            type="button"
            className="plain"
            onClick={() =>
              void run(async () => {
                await tending.putBack(deleted);
                setDeleted(null);
              })
            }
          >
            {words.takeBack}
          </button>
        </p>
      )}
      {unreadable.length > 0 && <UnreadableEntries entries={unreadable} />}
      {bodies?.length === 0 && !trouble && <p className="quiet">{words.none}</p>}
      <NewBodyButtons onClose={onClose} />
      {count >= MANY && (
        <Finding
          search={search}
          onSearch={setSearch}
          order={order}
          onOrder={setOrder}
          shown={shown.reduce((sum, card) => sum + card.bodies.length, 0)}
          count={count}
        />
      )}
      <WardrobeCards
        cards={shown}
        persons={persons}
        pair={pair}
        onClose={onClose}
        run={run}
        onDeleted={setDeleted}
      />
      <ChosenPair pair={pair} onClose={onClose} />
      <ArchiveTools count={count} onTold={setTold} run={run} />
    </section>
  );
}

/** Of a long list of what was found. */
const MOST_DETAILS = 8;

function Told({ notice: { tone, text, details = [] } }: { readonly notice: Notice }) {
  const words = useWords().notices;
  return (
    <div className={tone === 'warning' ? 'told-warning' : 'deleted'} role="status">
      <p>{text}</p>
      {details.length > 0 && (
        <ul>
          {[...new Set(details)].slice(0, MOST_DETAILS).map((detail) => (
            <li key={detail}>{detail}</li>
          ))}
          {details.length > MOST_DETAILS && <li>{words.more(details.length - MOST_DETAILS)}</li>}
        </ul>
      )}
    </div>
  );
}

interface FindingProps {
  readonly search: string;
  readonly onSearch: (text: string) => void;
  readonly order: WardrobeOrder;
  readonly onOrder: (order: WardrobeOrder) => void;
  readonly shown: number;
  readonly count: number;
}

function Finding({ search, onSearch, order, onOrder, shown, count }: FindingProps) {
  const { words } = useWardrobe();
  return (
    <search className="body-finding">
      <label>
        <span>{words.search}</span>
        <input type="search" value={search} onChange={(event) => onSearch(event.target.value)} />
      </label>
      <label>
        <span>{words.order}</span>
        <select value={order} onChange={(event) => onOrder(event.target.value as WardrobeOrder)}>
          {WARDROBE_ORDERS.map((id) => (
            <option key={id} value={id}>
              {words.orders[id]}
            </option>
          ))}
        </select>
      </label>
      <p className="quiet" role="status">
        {shown === 0 ? words.nothingFound : words.shown(shown, count)}
      </p>
    </search>
  );
}

function NewBodyButtons({ onClose }: BodyListProps) {
  const services = useServices();
  const { words } = useWardrobe();
  return (
    <p className="body-begin">
      <button
        type="button"
        className="plain"
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
          className="plain"
          onClick={() => {
            onClose();
            void services.saveProjectAs?.();
          }}
        >
          {words.saveAs}
        </button>
      )}
    </p>
  );
}

function UnreadableEntries({ entries }: { readonly entries: readonly unknown[] }) {
  const services = useServices();
  const { notices } = useWords();
  const { words } = useWardrobe();
  const text = () => JSON.stringify(entries, null, 2);
  return (
    <p className="field-message" role="status">
      {words.unreadable(entries.length)}{' '}
      <button
        type="button"
        className="plain"
        onClick={() => services.saveText('loftseam-bodies-unreadable.txt', text())}
      >
        {notices.saveFile}
      </button>
    </p>
  );
}
