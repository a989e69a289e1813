import { useEffect, useState } from 'react';
import { arePicturesAwaited, isFillingAwaited, isFormBehind } from '../../store/index.ts';
import { useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp, useServices } from '../parts/workroom-context.tsx';

const PATIENCE_MS = 500;

/** Progress of long work, where the project is kept, and the promise that nothing leaves the computer. */
export function StatusLine() {
  const work = useApp((state) => state.work);
  const isBehind = useApp(isFormBehind);
  const isAwaited = useApp(isFillingAwaited);
  const areUndrawn = useApp(arePicturesAwaited);
  const triangles = useApp((state) => state.form?.report.body.triangles ?? 0);
  const keptAt = useApp((state) => state.keptAt);
  const services = useServices();
  const actions = useActions();
  const hasNone = useApp((state) => state.form === null && state.failure !== null);
  const { status: words, picture } = useWords();
  const say = useSay();
  const isLong = useIsLasting(work !== null);
  const isWorking = work !== null && isLong;
  const whole = areUndrawn ? 'undrawn' : isAwaited ? 'unfilled' : 'upToDate';
  const standing = isBehind || !triangles ? 'rough' : whole;
  return (
    <footer className="status-line">
      <div className="status-now" data-working={isWorking || undefined}>
        <p className="status-work" role="status" data-standing={standing}>
          {isWorking ? (
            <>
              <progress max={1} value={work.fraction} aria-label={words.progress} />
              <span>{work.what ? say(work.what) : words.working}…</span>
            </>
          ) : (
            <span>{hasNone ? picture.none : words[standing]}</span>
          )}
        </p>
        {isWorking && (
          <button type="button" onClick={services.stopWork}>
            {words.stop}
          </button>
        )}
      </div>
      <button type="button" className="notices-link" onClick={() => actions.showHelp(true)}>
        {words.help}
      </button>
      <button type="button" className="problem" onClick={services.saveProblemReport}>
        {words.problem}
      </button>
      <ProgramLinks />
      <p className="status-promise">
        {keptAt === null ? words.notKept : words.kept} {words.promise}
      </p>
    </footer>
  );
}

/** The program as one file, and whose work is in it. */
function ProgramLinks() {
  const { oneFileUrl, saveNotices } = useServices();
  const { status: words } = useWords();
  return (
    <>
      {oneFileUrl !== undefined && (
        <a className="notices-link" href={oneFileUrl} download title={words.aboutOneFile}>
          {words.oneFile}
        </a>
      )}
      {saveNotices ? (
        <button type="button" className="notices-link" onClick={saveNotices}>
          {words.thirdParty}
        </button>
      ) : (
        <a className="notices-link" href="THIRD-PARTY-NOTICES.txt" target="_blank" rel="noreferrer">
          {words.thirdParty}
        </a>
      )}
    </>
  );
}

/** True once `isOn` has lasted a while, so that short work does not flicker. */
function useIsLasting(isOn: boolean): boolean {
  const [isLasting, setIsLasting] = useState(false);
  useEffect(() => {
    if (!isOn) {
      setIsLasting(false);
      return;
    }
    const timer = setTimeout(() => setIsLasting(true), PATIENCE_MS);
    return () => clearTimeout(timer);
  }, [isOn]);
  return isLasting;
}
