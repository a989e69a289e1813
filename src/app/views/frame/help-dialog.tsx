import { useEffect, useRef } from 'react';
import type { Help } from '../../../language/english/help.ts';
import { useHelp } from '../guide/use-help.ts';
import { Icon } from '../parts/icon.tsx';
import { useWords } from '../parts/use-words.ts';
import { useActions } from '../parts/workroom-context.tsx';

/** Keys and gestures, and words of the trade; fetched when asked for. */
export function HelpDialog() {
  const actions = useActions();
  const { top, stages } = useWords();
  const help = useHelp();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (help) dialog.current?.showModal();
  }, [help]);
  if (!help) return null;
  return (
    <dialog
      ref={dialog}
      className="gallery help"
      aria-labelledby="help-title"
      onClose={() => actions.showHelp(false)}
    >
      <div className="gallery-head">
        <h2 id="help-title">{help.title}</h2>
        <button
          type="button"
          className="icon-only"
          aria-label={top.close}
          onClick={() => dialog.current?.close()}
        >
          <Icon name="close" />
        </button>
      </div>
      <p>
        <a href="#help-words">{help.toWords}</a>
      </p>
      <div className="round-begin">
        <button
          type="button"
          className="plain"
          onClick={() => {
            dialog.current?.close();
            actions.showRound(0);
          }}
        >
          {stages.showRound}
        </button>
        <span className="quiet">{help.round.about}</span>
      </div>
      <h3>{help.keys}</h3>
      {help.groups.map(({ name, keys }) => (
        <section key={name} aria-label={name}>
          <h4>{name}</h4>
          <Terms terms={keys} />
        </section>
      ))}
      <h3 id="help-words">{help.words}</h3>
      <Terms terms={help.glossary} />
    </dialog>
  );
}

function Terms({ terms }: { readonly terms: Help['glossary'] }) {
  return (
    <dl className="terms">
      {terms.map(([term, meaning]) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{meaning}</dd>
        </div>
      ))}
    </dl>
  );
}
