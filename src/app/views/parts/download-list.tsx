import { useState } from 'react';
import { useWords } from './use-words.ts';
import { useActions, useApp, useServices } from './workroom-context.tsx';

/** Where another stage would offer files: all stand under Cutting. */
export function FilesLink() {
  const actions = useActions();
  const words = useWords().downloads;
  return (
    <p className="files-link">
      {words.elsewhere}{' '}
      <button type="button" className="as-text" onClick={() => actions.goTo('cutting')}>
        {words.go}
      </button>
    </p>
  );
}

/** Pieces, body and report for other programs, and the project. Made on this computer, at full quality. */
export function DownloadList() {
  const hasForm = useApp((state) => state.form !== null);
  const services = useServices();
  const words = useWords().downloads;
  if (!hasForm) return null;
  return (
    <section aria-labelledby="files-title">
      <h3 id="files-title">{words.title}</h3>
      <ul className="downloads">
        <Download
          {...words.pieces}
          start={() => services.download({ formats: ['svg'], only: 'panels.svg' })}
        />
        <Download {...words.body} start={() => services.download({ formats: ['glb'], only: 'body.glb' })} />
        <Download {...words.report} start={() => services.download({ formats: ['json'] })} />
        <Download {...words.project} start={services.saveProject} />
      </ul>
    </section>
  );
}

interface DownloadProps {
  readonly name: string;
  readonly what: string;
  readonly start: () => Promise<void>;
  readonly isMain?: boolean;
}

export function Download({ name, what, start, isMain = false }: DownloadProps) {
  const [isBusy, setIsBusy] = useState(false);
  const words = useWords().downloads;
  const run = async () => {
    setIsBusy(true);
    await start();
    setIsBusy(false);
  };
  return (
    <li>
      <button type="button" className={isMain ? 'main' : ''} disabled={isBusy} onClick={() => void run()}>
        {isBusy ? words.making : words.download(name)}
      </button>
      <span className="quiet">{what}</span>
    </li>
  );
}
