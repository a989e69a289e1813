import { useState } from 'react';
import type { Issue } from '../../core/base/index.ts';
import type { Form } from '../../core/pipeline/index.ts';
import { findLayout, LAYOUTS, removeLine, type SeamLayout, splitPanel } from '../../core/seams/index.ts';
import { lineFromPoints } from '../store/index.ts';
import { DrawnPointList } from './drawn-point-list.tsx';
import { useActions, useApp, useServices } from './workroom-context.tsx';

/** Whole seams more or less: one drawn on the body, a panel divided, two joined. */
export function OwnLines() {
  const form = useApp((state) => state.form);
  const isReady = useApp(({ formOf, project }) => formOf !== null && formOf.seams === project?.seams);
  const points = useApp((state) => state.drawn.line);
  const actions = useActions();
  const { layout, sew, message } = useSewing();
  if (!form) return null;
  const sewDrawn = async () => {
    const line = lineFromPoints(form, points, layout.lines);
    if (!line.ok) return sew(null, line.issues, '');
    return sew([...layout.lines, line.value], [], `Sew in ${line.value.name}`, actions.sewDrawnLine);
  };
  return (
    <section className="own-lines" aria-labelledby="own-lines-title" data-behind={!isReady || undefined}>
      <h3 id="own-lines-title">More seams, or fewer</h3>
      <p className="measure-how">Both halves follow. Draw from base, neck, armhole or seam to another.</p>
      <DrawnPointList form={form} kind="line" />
      {points.length >= 2 && (
        <button type="button" className="main" disabled={!isReady} onClick={() => void sewDrawn()}>
          Sew it in
        </button>
      )}
      {message && (
        <p className="field-message" role="alert">
          {message}
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
function useSewing(): { readonly layout: SeamLayout; readonly sew: Sew; readonly message: string } {
  const seams = useApp((state) => state.project?.seams);
  const [message, setMessage] = useState('');
  const actions = useActions();
  const services = useServices();
  const named = findLayout(seams?.layout ?? LAYOUTS[0].id) ?? LAYOUTS[0];
  const layout = seams?.lines ? { ...named, lines: seams.lines } : named;
  const sew: Sew = async (lines, issues, step, take = actions.setSeamLines) => {
    setMessage(issues.map((issue) => issue.message).join(' '));
    if (!lines) return;
    const tried = await services.trySeams(lines);
    if (tried?.ok) take(lines, step);
    else if (tried) setMessage(tried.issues.map((issue) => issue.message).join(' '));
  };
  return { layout, sew, message };
}

interface DivideAndJoinProps {
  readonly form: Form;
  readonly layout: SeamLayout;
  readonly isReady: boolean;
  readonly sew: Sew;
}

function DivideAndJoin({ form, layout, isReady, sew }: DivideAndJoinProps) {
  const { panels, seams } = form.shell;
  const nameOf = (id: string) => plainName(panels.find((panel) => panel.id === id)?.name ?? id);
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
    if (made.ok) void sew(made.value.layout.lines, [], `Divide ${plainName(panel.name)}`);
    else void sew(null, made.issues, '');
  };
  const join = (lineId: string) => {
    const made = removeLine(layout, lineId);
    const name = layout.lines.find(({ id }) => id === lineId)?.name ?? lineId;
    if (made.ok) void sew(made.value.lines, [], `Take ${name} away`);
    else void sew(null, made.issues, '');
  };
  return (
    <div className="divide-join">
      <PickAndDo
        label="Divide lengthwise"
        action="Divide"
        isReady={isReady}
        options={divisible.map(({ id, name }) => ({ id, name: plainName(name) }))}
        onDo={divide}
      />
      <PickAndDo
        label="Join across a seam"
        action="Join"
        isReady={isReady}
        options={joints.map(({ lineId, name, panels: [a, b] }) => ({
          id: lineId,
          name: `${nameOf(a) === nameOf(b) ? `both ${nameOf(a)}` : `${nameOf(a)} and ${nameOf(b)}`}: ${plainName(name)}`,
        }))}
        onDo={join}
      />
    </div>
  );
}

const plainName = (name: string): string => name.replace(/ (right|left)$/, '');

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
