import type { ReactNode } from 'react';
import { MEASURES, type MeasureDefinition, type MeasureGroup } from '../../../core/body/index.ts';
import { useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { ArmChoice } from './arm-choice.tsx';
import { MeasureField } from './measure-field.tsx';
import { NextMeasure } from './next-measure.tsx';
import { WaistChoice } from './waist-choice.tsx';

const GROUPS = ['girths', 'lengths', 'shoulders', 'widths', 'arms', 'heights', 'wall'] as const;

/** Typing the measures: the first five, then all others by group. */
export function TapeStage() {
  const figure = useApp((state) => state.project?.body.figure ?? 'bust');
  const { stages, tape: words } = useWords();
  const measures = MEASURES.filter((measure) => measure.figures.includes(figure));
  const ofGroup = (group: MeasureGroup) => measures.filter((measure) => measure.group === group);
  return (
    <div className="stage tape-stage">
      <header className="stage-head">
        <h2>{stages.names.tape}</h2>
        <p>{words.about}</p>
        <FigureChoice />
        <button type="button" className="plain print-empty" onClick={() => window.print()}>
          {words.printEmpty}
        </button>
      </header>
      <section aria-labelledby="first-five">
        <h3 id="first-five">{words.firstFive}</h3>
        <ul className="measures">
          {ofGroup('first').map((measure) => (
            <MeasureField key={measure.id} measure={measure} isRequired />
          ))}
        </ul>
        <WaistChoice />
        <NextMeasure />
      </section>
      {GROUPS.map((group) => (
        <MeasureGroupList key={group} {...words.groups[group]} measures={ofGroup(group)}>
          {group === 'arms' && <ArmChoice />}
        </MeasureGroupList>
      ))}
      <p className="quiet">{words.howToType}</p>
    </div>
  );
}

function FigureChoice() {
  const figure = useApp((state) => state.project?.body.figure ?? 'bust');
  const actions = useActions();
  const words = useWords().tape;
  return (
    <fieldset className="segments">
      <legend>{words.figure}</legend>
      {(['bust', 'chest'] as const).map((id) => (
        <label key={id}>
          <input type="radio" name="figure" checked={figure === id} onChange={() => actions.setFigure(id)} />
          <span>{id === 'bust' ? words.withBust : words.withFlatChest}</span>
        </label>
      ))}
    </fieldset>
  );
}

interface MeasureGroupListProps {
  readonly name: string;
  readonly why: string;
  readonly measures: readonly MeasureDefinition[];
  readonly children: ReactNode;
}

function MeasureGroupList({ name, why, measures, children }: MeasureGroupListProps) {
  const given = useApp((state) => state.project?.body.measures);
  const words = useWords().tape;
  const count = measures.filter((measure) => given?.[measure.id] !== undefined).length;
  if (measures.length === 0) return null;
  return (
    <details className="measure-group" open={count > 0}>
      <summary>
        <span className="group-name">{name}</span>
        <span className="group-count">{words.countOf(count, measures.length)}</span>
        <span className="group-why">{why}</span>
      </summary>
      <ul className="measures">
        {measures.map((measure) => (
          <MeasureField key={measure.id} measure={measure} isRequired={false} />
        ))}
      </ul>
      {children}
    </details>
  );
}
