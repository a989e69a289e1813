import { useRef } from 'react';
import type { Notice } from '../../store/index.ts';
import { useWardrobe } from './wardrobe-context.tsx';

interface ArchiveToolsProps {
  /** How many bodies are kept. */
  readonly count: number;
  readonly onTold: (notice: Notice | null) => void;
  readonly run: (work: () => Promise<void>) => Promise<void>;
}

/** All bodies as one file, and back. */
export function ArchiveTools({ count, onTold, run }: ArchiveToolsProps) {
  const { bodies, words: all } = useWardrobe();
  const words = all.archive;
  const input = useRef<HTMLInputElement>(null);
  return (
    <div className="body-archive">
      {count > 0 && (
        <button
          type="button"
          className="plain"
          onClick={() => void run(async () => onTold(await bodies.saveAll()))}
        >
          {words.save}
        </button>
      )}
      <button type="button" className="plain" onClick={() => input.current?.click()}>
        {words.open}
      </button>
      <input
        ref={input}
        type="file"
        accept=".zip,application/zip"
        hidden
        aria-label={words.file}
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file) void run(async () => onTold(await bodies.openArchive(file)));
        }}
      />
      <p className="quiet">{words.about}</p>
    </div>
  );
}
