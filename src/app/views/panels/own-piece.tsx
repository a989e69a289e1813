import { type ReactNode, useMemo, useState } from 'react';
import type { Form } from '../../../core/form/index.ts';
import { joinPanels } from '../../../core/seams/index.ts';
import { Issues } from '../parts/core-text.tsx';
import { DrawnPointList } from '../parts/drawn-point-list.tsx';
import { usePointing } from '../parts/use-pointing.ts';
import { useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { FlatCutView } from './flat-cut-view.tsx';

/** Any part of the body as one flat piece: drawn point by point, or panels laid together. */
export function OwnPiece({ form }: { readonly form: Form }) {
  const [isDrawn, setIsDrawn] = useState(true);
  const actions = useActions();
  const words = useWords().ownPiece;
  const choose = (next: boolean) => {
    setIsDrawn(next);
    if (!next) actions.setPencil({ isDown: false });
  };
  return (
    <section className="own-piece" aria-labelledby="own-piece-title">
      <h3 id="own-piece-title">{words.title}</h3>
      <fieldset className="segments">
        <legend className="visually-hidden">{words.madeOf}</legend>
        <label>
          <input type="radio" name="own-piece" checked={isDrawn} onChange={() => choose(true)} />
          <span>{words.drawn}</span>
        </label>
        <label>
          <input type="radio" name="own-piece" checked={!isDrawn} onChange={() => choose(false)} />
          <span>{words.together}</span>
        </label>
      </fieldset>
      {isDrawn ? <DrawnRegion form={form} /> : <PanelsTogether form={form} />}
    </section>
  );
}

function DrawnRegion({ form }: { readonly form: Form }) {
  const points = useApp((state) => state.drawn.region);
  const wish = useMemo(() => ({ loop: Float64Array.from(points.flatMap(({ u, v }) => [u, v])) }), [points]);
  return (
    <>
      <DrawnPointList form={form} kind="region" />
      {points.length >= 3 && <FlatCutView wish={wish} />}
    </>
  );
}

function PanelsTogether({ form }: { readonly form: Form }) {
  const [chosen, setChosen] = useState<readonly string[]>([]);
  const say = useSay();
  const { panels } = form.shell;
  const joined = useMemo(() => {
    const known = chosen.filter((id) => form.shell.panels.some((panel) => panel.id === id));
    return known.length > 0 ? joinPanels(form.shell, known) : null;
  }, [form, chosen]);
  const wish = useMemo(() => (joined?.ok ? { joined: joined.value } : null), [joined]);
  return (
    <>
      <ul className="panel-picks">
        {panels.map(({ id, name }) => (
          <PanelPick key={id} id={id}>
            <label>
              <input
                type="checkbox"
                checked={chosen.includes(id)}
                onChange={(event) =>
                  setChosen(event.target.checked ? [...chosen, id] : chosen.filter((other) => other !== id))
                }
              />
              {say(name)}
            </label>
          </PanelPick>
        ))}
      </ul>
      {joined && !joined.ok && (
        <p className="field-message" role="alert">
          <Issues issues={joined.issues} />
        </p>
      )}
      {wish && <FlatCutView wish={wish} />}
    </>
  );
}

function PanelPick({ id, children }: { readonly id: string; readonly children: ReactNode }) {
  return <li {...usePointing({ kind: 'panel', id })}>{children}</li>;
}
