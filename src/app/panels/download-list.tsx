import { useState } from 'react';
import { useApp, useServices } from './workroom-context.tsx';

/** Everything that can be taken away. Files are made on this computer, at full quality. */
export function DownloadList() {
  const drawings = useApp((state) => state.form?.drawings);
  const services = useServices();
  if (!drawings) return null;
  const only = drawings.length === 1;
  return (
    <section aria-labelledby="files-title">
      <h3 id="files-title">Take away</h3>
      <ul className="downloads">
        {drawings.map(({ material }) => (
          <Download
            key={material}
            name={only ? 'Pieces' : `Pieces, ${material}`}
            what="SVG at true size, for printing or a cutter"
            start={() => services.download(only ? 'panels.svg' : `panels-${material}.svg`)}
            isMain
          />
        ))}
        <Download
          name="Body"
          what="GLB, the body in three dimensions"
          start={() => services.download('body.glb')}
        />
        <Download
          name="Report"
          what="JSON, every number on this page"
          start={() => services.download('report.json')}
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

function Download({ name, what, start, isMain = false }: DownloadProps) {
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
