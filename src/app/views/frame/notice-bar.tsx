import { isBegun, isFillingAwaited, isFormBehind, type Notice } from '../../store/index.ts';
import { CoreText } from '../parts/core-text.tsx';
import { Icon } from '../parts/icon.tsx';
import { useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp, useHistory, useServices } from '../parts/workroom-context.tsx';

/** What the person should know now: a message, or why no form could be made. */
export function NoticeBar() {
  const notices = useApp((state) => state.notices);
  const failure = useApp((state) => state.failure);
  const hasForm = useApp((state) => state.form !== null);
  // Of a body just begun it is told beside the picture what it still needs.
  const isFaulty = failure !== null && (hasForm || !isBegun(failure));
  const canUndo = useHistory().undo !== null;
  const actions = useActions();
  const { notices: words } = useWords();
  const say = useSay();
  return (
    <div className="notices" aria-live="polite">
      {notices.map((notice) => (
        <OneNotice key={notice.text} notice={notice} />
      ))}
      {isFaulty && (
        <div className="notice warning">
          <div>
            <p>{hasForm ? words.lastShown : words.noForm}</p>
            <ul>
              {failure.slice(0, 6).map((issue) => (
                <li key={issue.code + issue.path}>
                  <CoreText said={say(issue.message)} />
                </li>
              ))}
            </ul>
          </div>
          {canUndo && (
            <button type="button" onClick={actions.undo}>
              {words.undo}
            </button>
          )}
        </div>
      )}
      <StoppedNotice />
    </div>
  );
}

function OneNotice({ notice }: { readonly notice: Notice }) {
  const { tone, text, details = [], file, offersReload } = notice;
  const { notices: words, top } = useWords();
  const actions = useActions();
  const services = useServices();
  return (
    <div className={`notice ${tone}`}>
      <div>
        <p>{text}</p>
        {details.length > 0 && (
          <ul>
            {details.slice(0, 8).map((line) => (
              <li key={line}>{line}</li>
            ))}
            {details.length > 8 && <li>{words.more(details.length - 8)}</li>}
          </ul>
        )}
      </div>
      <div className="notice-tools">
        {file && (
          <button type="button" className="plain" onClick={() => services.saveText(file.name, file.text)}>
            {words.saveFile}
          </button>
        )}
        {offersReload && (
          <button type="button" className="plain" onClick={() => window.location.reload()}>
            {top.loadAgain}
          </button>
        )}
        <button
          type="button"
          className="icon-only"
          aria-label={words.close}
          onClick={() => {
            actions.closeNotice(notice);
            // This button goes with the message; the focus must not go with it.
            document.getElementById('work')?.focus({ preventScroll: true });
          }}
        >
          <Icon name="close" />
        </button>
      </div>
    </div>
  );
}

function StoppedNotice() {
  const isStopped = useApp((state) => state.isStopped && state.work === null);
  const isWhole = useApp((state) => !isFormBehind(state) && isFillingAwaited(state));
  const services = useServices();
  const { notices: words } = useWords();
  if (!isStopped) return null;
  return (
    <div className="notice plain">
      <p>{isWhole ? words.stoppedFilling : words.stopped}</p>
      <button type="button" onClick={services.makeAgain}>
        {words.again}
      </button>
    </div>
  );
}
