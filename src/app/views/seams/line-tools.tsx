import type { Result } from '../../../core/base/index.ts';
import { surfaceOfBody } from '../../../core/body/index.ts';
import {
  addControlPoint,
  findLayout,
  LAYOUTS,
  nameOfLine,
  removeControlPoint,
  removeLine,
  type SeamLayout,
} from '../../../core/seams/index.ts';
import { useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

/** More points, fewer points, one line less, or back to the layout begun from. */
export function LineTools() {
  const project = useApp((state) => state.project);
  const body = useApp((state) => state.form?.body);
  const chosen = useApp((state) => state.seamWork.chosen);
  const preview = useApp((state) => state.seamWork.preview);
  const actions = useActions();
  const { pull: words, steps, core } = useWords();
  const say = useSay();
  const line = preview?.lines.find(({ id }) => id === chosen?.lineId);
  const own = preview?.points.filter(({ lineId }) => lineId === chosen?.lineId) ?? [];
  const change = (edit: (layout: SeamLayout) => Result<SeamLayout>, step: string) => {
    const named = findLayout(project?.seams.layout ?? LAYOUTS[0].id) ?? LAYOUTS[0];
    const made = preview ? edit({ ...named, lines: preview.lines }) : null;
    if (made?.ok) {
      actions.chooseControlPoint(null);
      actions.setSeamLines(made.value.lines, step);
    } else if (made) {
      actions.tell({ tone: 'warning', text: made.issues.map(({ message }) => say(message)).join(' ') });
    }
  };
  const begunFrom = project?.seams.lines ? findLayout(project.seams.layout ?? LAYOUTS[0].id) : undefined;
  const at = own.findIndex(({ anchor }) => anchor === chosen?.anchor);
  const next = own[at + 1] ?? own[at];
  const before = own[at + 1] ? own[at] : own[at - 1];
  return (
    <div className="line-tools">
      {line && chosen && body && (
        <>
          <button
            type="button"
            className="plain"
            disabled={!next || !before}
            onClick={() => {
              if (!next || !before) return;
              const middle = { u: (next.u + before.u) / 2, v: (next.v + before.v) / 2 };
              change(
                (layout) => addControlPoint(surfaceOfBody(body), body, layout, line.id, middle),
                steps.addPointTo(say(nameOfLine(line.name))),
              );
            }}
          >
            {words.addPoint}
          </button>
          <button
            type="button"
            className="plain"
            disabled={own[at]?.isEnd ?? true}
            onClick={() =>
              change(
                (layout) => removeControlPoint(layout, line.id, chosen.anchor),
                steps.leavePointOf(say(nameOfLine(line.name))),
              )
            }
          >
            {words.leaveOut}
          </button>
          <button
            type="button"
            className="plain"
            onClick={() =>
              change((layout) => removeLine(layout, line.id), steps.takeAway(say(nameOfLine(line.name))))
            }
          >
            {words.takeAway}
          </button>
        </>
      )}
      {begunFrom && (
        <button
          type="button"
          className="plain"
          onClick={() => actions.setLayout(begunFrom.id, core.inSentence(say(begunFrom.name)))}
        >
          {words.backTo(core.inSentence(say(begunFrom.name)))}
        </button>
      )}
    </div>
  );
}
