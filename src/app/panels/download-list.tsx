import { useState } from 'react';
import { useApp, useServices } from './workroom-context.tsx';

/** What is wanted most often. Files are made on this computer, at full quality. */
export function DownloadList() {
  const hasForm = useApp((state) => state.form !== null);
  const services = useServices();
  if (!hasForm) return null;
  return (
    <section aria-labelledby="files-title">
      <h3 id="files-title">Take away</h3>
      <ul className="downloads">
        <Download
          name="Pieces"
          what="SVG at true size; for paper, see Cutting"
          start={() => services.download({ formats: ['svg'], only: 'panels.svg' })}
          isMain
        />
        <Download
          name="Body"
          what="GLB, the body in three dimensions"
          start={() => services.download({ formats: ['glb'], only: 'body.glb' })}
        />
        <Download
          name="Report"
          what="JSON, every number on this page"
          start={() => services.download({ formats: ['json'] })}
        />
        <Download name="Project" what="to open here again" start={services.saveProject} />
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
  const run = async () => {
    setIsBusy(true);
    await start();
    setIsBusy(false);
  };
  return (
    <li>
      <button type="button" className={isMain ? 'main' : ''} disabled={isBusy} onClick={() => void run()}>
        {isBusy ? 'Making…' : `Download ${name.toLowerCase()}`}
      </button>
      <span className="quiet">{what}</span>
    </li>
  );
}
