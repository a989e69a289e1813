import { useWords } from '../parts/use-words.ts';

/** Said where a part of the program could not be had. */
export function NotLoaded() {
  const words = useWords().top;
  return (
    <div className="stage">
      <p role="alert">{words.notLoaded}</p>
      <p>
        <button type="button" className="main" onClick={() => window.location.reload()}>
          {words.loadAgain}
        </button>
      </p>
    </div>
  );
}
