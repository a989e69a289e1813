import { useMemo, useState } from 'react';
import type { Form } from '../../../core/form/index.ts';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { GrainDial } from './grain-dial.tsx';
import { GrainField } from './grain-field.tsx';
import { type StrainAtTurn, strainAtTurn } from './strain-at-turn.ts';
import { degreesOf, radiansOf } from './turn-of-grain.ts';
import { useTurn } from './use-turn.ts';

/** Turning the grain of one piece, with what it asks of the cloth while it turns. */
export function GrainTurn({ form }: { readonly form: Form }) {
  const [chosen, setChosen] = useState<string | null>(null);
  const actions = useActions();
  const { grain: words } = useWords();
  const say = useSay();
  const { panels } = form.shell;
  const index = Math.max(
    0,
    panels.findIndex(({ id }) => id === chosen),
  );
  return (
    <section className="grain-turn" aria-labelledby="grain-title">
      <h3 id="grain-title">{words.title}</h3>
      <label className="field-row">
        <span className="measure-name">{words.panel}</span>
        <select
          value={panels[index].id}
          onChange={(event) => {
            setChosen(event.target.value);
            actions.pointAt({ kind: 'panel', id: event.target.value });
          }}
        >
          {panels.map(({ id, name }) => (
            <option key={id} value={id}>
              {say(name)}
            </option>
          ))}
        </select>
      </label>
      <GrainOfPanel key={panels[index].id} form={form} index={index} />
    </section>
  );
}

function GrainOfPanel({ form, index }: { readonly form: Form; readonly index: number }) {
  const panel = form.shell.panels[index];
  const piece = form.pieces.find(({ id }) => id === panel.id);
  const kept = useApp((state) => state.project?.cloth.grain?.[panel.id] ?? 0);
  const actions = useActions();
  const { grain: words } = useWords();
  const say = useSay();
  const sayTurn = useTurn();
  /** While the dial is held, degrees. */
  const [held, setHeld] = useState<number | null>(null);
  const [isMirrored, setIsMirrored] = useState(true);
  const turn = held ?? degreesOf(kept);
  const strain = useMemo(() => strainAtTurn(form, index, radiansOf(turn)), [form, index, turn]);
  const partner = form.shell.panels.find(
    ({ id, mirrorOf }) => mirrorOf === panel.id || id === panel.mirrorOf,
  );
  const { bestGrain } = form.report.panels[index].cloth;
  const best = degreesOf(bestGrain.angle) - 90;
  if (!piece) return null;
  const set = (deg: number) => {
    const other = partner && isMirrored ? { [partner.id]: -radiansOf(deg) } : {};
    actions.setGrain({ [panel.id]: radiansOf(deg), ...other }, say(panel.name));
  };
  return (
    <div className="grain-work">
      <GrainDial
        piece={piece}
        turn={turn}
        madeTurn={degreesOf(form.project.cloth.grain?.[panel.id] ?? 0)}
        bestTurn={best}
        onTurn={setHeld}
        onDone={() => {
          if (held !== null) set(held);
          setHeld(null);
        }}
        onKeyTurn={set}
        onFocus={actions.beginEdit}
        onBlur={actions.endEdit}
      />
      <div className="grain-side">
        <p className="measure-how">{words.how}</p>
        <GrainField turn={turn} name={say(panel.name)} onTurn={set} />
        {partner && (
          <label className="grain-both">
            <input
              type="checkbox"
              checked={isMirrored}
              onChange={(event) => setIsMirrored(event.target.checked)}
            />
            {words.mirrored(say(partner.name))}
          </label>
        )}
        <div className="grain-buttons">
          <button type="button" className="plain" onClick={() => set(Number(best.toFixed(1)))}>
            {words.best(sayTurn(best))}
          </button>
          <button type="button" className="plain" disabled={turn === 0} onClick={() => set(0)}>
            {words.upright}
          </button>
        </div>
        <GrainStrain strain={strain} bestUsage={bestGrain.usage} />
      </div>
    </div>
  );
}

function GrainStrain({ strain, bestUsage }: { readonly strain: StrainAtTurn; readonly bestUsage: number }) {
  const words = useWords().grain;
  const { percent, signedPercent } = useNumbers();
  const rows = [
    [words.along, strain.warp],
    [words.across, strain.weft],
    [words.bias, strain.bias],
  ] as const;
  return (
    <table className="table grain-strain">
      <thead>
        <tr>
          <th scope="col">{words.clothMust}</th>
          <th scope="col" className="number">
            {words.shrink}
          </th>
          <th scope="col" className="number">
            {words.stretch}
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, [least, most]]) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td className="number">{signedPercent(Math.min(0, least))}</td>
            <td className="number">{signedPercent(Math.max(0, most))}</td>
          </tr>
        ))}
        <tr>
          <th scope="row">{words.used}</th>
          <td className="number" colSpan={2}>
            {words.usage(percent(strain.usage, 0), percent(bestUsage, 0))}
          </td>
        </tr>
      </tbody>
    </table>
  );
}
