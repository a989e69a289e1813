import { Icon } from './icon.tsx';
import { useActions, useApp, useHistory, useServices } from './workroom-context.tsx';

/** What the person should know now: a message, or why no form could be made. */
export function NoticeBar() {
  const notice = useApp((state) => state.notice);
  const failure = useApp((state) => state.failure);
  const hasForm = useApp((state) => state.form !== null);
  const canUndo = useHistory().undo !== null;
  const actions = useActions();
  return (
    <div className="notices" aria-live="polite">
      {notice && (
        <div className={`notice ${notice.tone}`}>
          <div>
            <p>{notice.text}</p>
            {notice.details && notice.details.length > 0 && (
              <ul>
                {notice.details.slice(0, 8).map((line) => (
                  <li key={line}>{line}</li>
                ))}
                {notice.details.length > 8 && <li>and {notice.details.length - 8} more</li>}
              </ul>
            )}
          </div>
          <button
            type="button"
            className="icon-only"
            aria-label="Close this message"
            onClick={() => actions.tell(null)}
          >
            <Icon name="close" />
          </button>
        </div>
      )}
      {failure && (
        <div className="notice warning">
          <div>
            <p>
              {hasForm
                ? 'From what is typed now no form can be made; the one shown is the last that could. To go on:'
                : 'From what is typed now no form can be made. To go on:'}
            </p>
            <ul>
              {failure.slice(0, 6).map((issue) => (
                <li key={issue.code + issue.path}>{issue.message}</li>
              ))}
            </ul>
          </div>
          {canUndo && (
            <button type="button" onClick={actions.undo}>
              Undo the last step
            </button>
          )}
        </div>
      )}
      <StoppedNotice />
    </div>
  );
}

function StoppedNotice() {
  const isStopped = useApp((state) => state.isStopped && state.work === null);
  const services = useServices();
  if (!isStopped) return null;
  return (
    <div className="notice plain">
      <p>Stopped. The body and panels may not match what you typed.</p>
      <button type="button" onClick={services.makeAgain}>
        Work it out again
      </button>
    </div>
  );
}
