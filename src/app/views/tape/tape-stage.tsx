import { type FocusEvent, type ReactNode, useState } from 'react';
import { MEASURES, type MeasureDefinition, type MeasureGroup } from '../../../core/body/index.ts';
import { LateGuide } from '../frame/late-parts.tsx';
import { useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { ArmChoice } from './arm-choice.tsx';
import { MeasureField } from './measure-field.tsx';
import { MeasureGuide } from './measure-guide.tsx';
import { NextMeasures } from './next-measures.tsx';
import { useFirstField } from './use-first-field.ts';
import { useGoingOn } from './use-going-on.ts';
import { byWorth, useWorth } from './use-worth.ts';
import { WaistChoice } from './waist-choice.tsx';

const GROUPS = ['girths', 'lengths', 'shoulders', 'widths', 'arms', 'heights', 'wall'] as const;

/** Typing the measures: the first five in one view, then all others, those first that tell most about this body. */
export function TapeStage() {
  const figure = useApp((state) => state.project?.body.figure ?? 'bust');
  const { stages, tape: words } = useWords();
  const worth = useWorth();
  const goOn = useGoingOn();
  const measures = MEASURES.filter((measure) => measure.figures.includes(figure));
  const ofGroup = (group: MeasureGroup) =>
    byWorth(
      measures.filter((m) => m.group === group),
      worth,
    );
  const groups = GROUPS.map((group) => ({ group, id: ofGroup(group)[0]?.id })).filter(({ id }) => id);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a key of the fields in it, not one of its own
    <div className="stage tape-stage" onKeyDown={goOn}>
      <header className="stage-head">
        <h2>{stages.names.tape}</h2>
        <FigureChoice />
        <LateGuide />
      </header>
      <FirstFive measures={measures.filter((m) => m.group === 'first')} />
      <WaistChoice />
      <section className="further" aria-labelledby="further-measures">
        <h3 id="further-measures">{words.further}</h3>
        <p className="quiet">{words.about}</p>
        <NextMeasures />
        {byWorth(groups, worth).map(({ group }) => (
          <MeasureGroupList key={group} {...words.groups[group]} measures={ofGroup(group)}>
            {group === 'arms' && <ArmChoice />}
          </MeasureGroupList>
        ))}
      </section>
      <p className="quiet">{words.howToType}</p>
    </div>
  );
}

/** The needed ones as short rows, with one place above them for how the tape of the one being typed lies. */
function FirstFive({ measures }: { readonly measures: readonly MeasureDefinition[] }) {
  const [typing, setTyping] = useState<string>();
  const list = useFirstField();
  const { tape: words } = useWords();
  const say = useSay();
  const shown = measures.find(({ id }) => id === typing) ?? measures[0];
  const follow = (event: FocusEvent<HTMLElement>) => {
    const id = event.target.closest<HTMLElement>('[data-measure]')?.dataset.measure;
    if (id && event.target instanceof HTMLInputElement) setTyping(id);
  };
  return (
    <section className="first-five" aria-labelledby="first-five" onFocus={follow}>
      <div className="list-head">
        <h3 id="first-five">{words.firstFive}</h3>
        <button type="button" className="plain print-empty" onClick={() => window.print()}>
          {words.printEmpty}
        </button>
      </div>
      <div className="tape-how">
        <p>
          <b>{say(shown.name)}.</b> {say(shown.how)}
        </p>
        <MeasureGuide measure={shown} />
      </div>
      <ul className="measures" ref={list}>
        {measures.map((measure) => (
          <MeasureField key={measure.id} measure={measure} isRequired />
        ))}
      </ul>
    </section>
  );
}

function FigureChoice() {
  const figure = useApp((state) => state.project?.body.figure ?? 'bust');
  const actions = useActions();
  const words = useWords().tape;
  return (
    <fieldset className="segments">
      <legend className="visually-hidden">{words.figure}</legend>
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
