import { Icon } from './icon.tsx';
import { useWords } from './use-words.ts';

interface NearerToolsProps {
  readonly legend: string;
  readonly showAllName: string;
  readonly move: (dx: number, dy: number, factor: number) => void;
  readonly showAll: () => void;
}

/** Nearer, farther, and all of it. */
export function NearerTools({ legend, showAllName, move, showAll }: NearerToolsProps) {
  const words = useWords().flat;
  return (
    <fieldset className="flat-tools">
      <legend className="visually-hidden">{legend}</legend>
      <button type="button" className="icon-only" aria-label={words.nearer} onClick={() => move(0, 0, 1.4)}>
        <Icon name="plus" />
      </button>
      <button
        type="button"
        className="icon-only"
        aria-label={words.farther}
        onClick={() => move(0, 0, 1 / 1.4)}
      >
        <Icon name="minus" />
      </button>
      <button type="button" className="icon-only" aria-label={showAllName} onClick={showAll}>
        <Icon name="fit" />
      </button>
    </fieldset>
  );
}
