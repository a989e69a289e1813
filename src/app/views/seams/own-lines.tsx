import { useState } from 'react';
import { type Issue, type Phrase, verbatim } from '../../../core/base/index.ts';
import type { Form } from '../../../core/form/index.ts';
import {
  findLayout,
  LAYOUTS,
  nameOfLine,
  nameWithoutSide,
  removeLine,
  type SeamLayout,
  splitPanel,
} from '../../../core/seams/index.ts';
import { lineFromPoints } from '../../store/index.ts';
import { Issues } from '../parts/core-text.tsx';
import { DrawnPointList } from '../parts/drawn-point-list.tsx';
import { useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp, useServices } from '../parts/workroom-context.tsx';

/** Whole seams more or less: one drawn on the body, a panel divided, two joined. */
export function OwnLines() {
  const form = useApp((state) => state.form);
  const isReady = useApp(({ formOf, project }) => formOf !== null && formOf.seams === project?.seams);
  const points = useApp((state) => state.drawn.line);
  const actions = useActions();
  const { layout, sew, issues } = useSewing();
  const { ownLines: words, steps } = useWords();
  const say = useSay();
  if (!form) return null;
  const sewDrawn = async () => {
    const line = lineFromPoints(form, points, layout.lines, words);
    if (!line.ok) return sew(null, line.issues, '');
    return sew(
      [...layout.lines, line.value],
      [],
      steps.sewIn(say(nameOfLine(line.value.name))),
      actions.sewDrawnLine,
    );
  };
  return (
    <section className="own-lines" aria-labelledby="own-lines-title" data-behind={!isReady || undefined}>
      <h3 id="own-lines-title">{words.title}</h3>
      <p className="measure-how">{words.about}</p>
      <DrawnPointList form={form} kind="line" />
      {points.length >= 2 && (
        <button type="button" className="main" disabled={!isReady} onClick={() => void sewDrawn()}>
          {words.sewIn}
        </button>
      )}
      {issues.length > 0 && (
        <p className="field-message" role="alert">
          <Issues issues={issues} />
        </p>
      )}
      <DivideAndJoin form={form} layout={layout} isReady={isReady} sew={sew} />
    </section>
  );
}

type Sew = (
  lines: SeamLayout['lines'] | null,
  issues: readonly Issue[],
  step: string,
  take?: (lines: SeamLayout['lines'], step: string) => void,
) => Promise<void>;

/** The layout in force, and trying another before it is taken. */
function useSewing(): { readonly layout: SeamLayout; readonly sew: Sew; readonly issues: readonly Issue[] } {
  const seams = useApp((state) => state.project?.seams);
  const [shown, setShown] = useState<readonly Issue[]>([]);
  const actions = useActions();
  const services = useServices();
  const named = findLayout(seams?.layout ?? LAYOUTS[0].id) ?? LAYOUTS[0];
  const layout = seams?.lines ? { ...named, lines: seams.lines } : named;
  const sew: Sew = async (lines, issues, step, take = actions.setSeamLines) => {
    setShown(issues);
    if (!lines) return;
    const tried = await services.trySeams(lines);
    if (tried?.ok) take(lines, step);
    else if (tried) setShown(tried.issues);
  };
  return { layout, sew, issues: shown };
}

interface DivideAndJoinProps {
  readonly form: Form;
  readonly layout: SeamLayout;
  readonly isReady: boolean;
  readonly sew: Sew;
}

function DivideAndJoin({ form, layout, isReady, sew }: DivideAndJoinProps) {
  const { ownLines: words, steps } = useWords();
  const say = useSay();
  const plainName = (name: Phrase) => say(nameWithoutSide(name));
  const { panels, seams } = form.shell;
  const nameOf = (id: string) => plainName(panels.find((panel) => panel.id === id)?.name ?? verbatim(id));
  const divisible = panels.filter(({ side }) => side === 'right');
  // One entry per line: taking it away joins all along it, on both halves.
  const joints = seams.filter(
    (seam, i) =>
      layout.lines.some(({ id }) => id === seam.lineId) &&
      seams.findIndex(({ lineId }) => lineId === seam.lineId) === i,
  );
  const divide = (panelId: string) => {
    const panel = panels.find(({ id }) => id === panelId);
    if (!panel) return;
    const made = splitPanel(layout, panel, (id) => seams.find((seam) => seam.id === id)?.lineId, form.body);
    if (made.ok) void sew(made.value.layout.lines, [], steps.divide(plainName(panel.name)));
    else void sew(null, made.issues, '');
  };
  const join = (lineId: string) => {
    const made = removeLine(layout, lineId);
    const name = layout.lines.find(({ id }) => id === lineId)?.name ?? lineId;
    if (made.ok) void sew(made.value.lines, [], steps.takeAway(say(nameOfLine(name))));
    else void sew(null, made.issues, '');
  };
  return (
    <div className="divide-join">
      <PickAndDo
        label={words.divideLengthwise}
        action={words.divide}
        isReady={isReady}
        options={divisible.map(({ id, name }) => ({ id, name: plainName(name) }))}
        onDo={divide}
      />
      <PickAndDo
        label={words.joinAcross}
        action={words.join}
        isReady={isReady}
        options={joints.map(({ lineId, name, panels: [a, b] }) => ({
          id: lineId,
          name: words.joint(
            nameOf(a) === nameOf(b) ? words.both(nameOf(a)) : words.two(nameOf(a), nameOf(b)),
            plainName(name),
          ),
        }))}
        onDo={join}
      />
    </div>
  );
}

interface PickAndDoProps {
  readonly label: string;
  readonly action: string;
  readonly isReady: boolean;
  readonly options: readonly { readonly id: string; readonly name: string }[];
  readonly onDo: (id: string) => void;
}

function PickAndDo({ label, action, isReady, options, onDo }: PickAndDoProps) {
  const [picked, setPicked] = useState('');
  const id = options.find((option) => option.id === picked)?.id ?? options[0]?.id;
  if (id === undefined) return null;
  return (
    <div className="pick-and-do">
      <label>
        <span className="measure-name">{label}</span>
        <select value={id} onChange={(event) => setPicked(event.target.value)}>
          {options.map((option) => (
            <option key={option.id} value={option.id}>
              {option.name}
            </option>
          ))}
        </select>
      </label>
      <button type="button" className="plain" disabled={!isReady} onClick={() => onDo(id)}>
        {action}
      </button>
    </div>
  );
}
