import { useEffect, useRef, useState } from 'react';
import type { Help } from '../../../language/english/help.ts';
import { loadHelp } from '../../../language/load-help.ts';
import { Icon } from '../parts/icon.tsx';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

/** Keys and gestures, and words of the trade; fetched when asked for. */
export function HelpDialog() {
  const language = useApp((state) => state.language);
  const actions = useActions();
  const { top } = useWords();
  const help = useHelp(language);
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

function useHelp(language: Parameters<typeof loadHelp>[0]): Help | null {
  const [help, setHelp] = useState<Help | null>(null);
  useEffect(() => {
    let isWanted = true;
    loadHelp(language)
      .then((loaded) => isWanted && setHelp(loaded))
      .catch(() => {});
    return () => {
      isWanted = false;
    };
  }, [language]);
  return help;
}
