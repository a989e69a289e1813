import { MEASURES, type MeasureDefinition, type MeasureGroup } from '../../core/body/index.ts';
import { MeasureField } from './measure-field.tsx';
import { useActions, useApp } from './workroom-context.tsx';

const GROUPS: readonly { readonly id: MeasureGroup; readonly name: string; readonly why: string }[] = [
  { id: 'girths', name: 'More girths', why: 'They shape the body between the first three.' },
  { id: 'lengths', name: 'Lengths', why: 'They set the heights of bust, hip and base.' },
  {
    id: 'shoulders',
    name: 'Shoulders and armholes',
    why: 'They set slope and breadth, left and right if they differ.',
  },
  { id: 'widths', name: 'Widths and depths', why: 'A girth cannot tell wide from deep; these can.' },
  { id: 'arms', name: 'Arms', why: 'All five make a pair of arms that can be taken off.' },
  { id: 'heights', name: 'Heights', why: 'From the floor, for the stand.' },
];

/** Typing the measures: the first five, then all others by group. */
export function TapeStage() {
  const figure = useApp((state) => state.project?.body.figure ?? 'bust');
  const measures = MEASURES.filter((measure) => measure.figures.includes(figure));
  const ofGroup = (group: MeasureGroup) => measures.filter((measure) => measure.group === group);
  return (
    <div className="stage tape-stage">
      <header className="stage-head">
        <h2>Tape</h2>
        <p>Five measures make a body. Every further one replaces an estimate, shown in grey.</p>
        <FigureChoice />
        <button type="button" className="plain print-empty" onClick={() => window.print()}>
          Print an empty list
        </button>
      </header>
      <section aria-labelledby="first-five">
        <h3 id="first-five">The first five</h3>
        <ul className="measures">
          {ofGroup('first').map((measure) => (
            <MeasureField key={measure.id} measure={measure} isRequired />
          ))}
        </ul>
      </section>
      {GROUPS.map((group) => (
        <MeasureGroupList key={group.id} name={group.name} why={group.why} measures={ofGroup(group.id)} />
      ))}
      <p className="quiet">
        Type centimetres or inches as you like: 92.5, 92,5 cm, 36 3/8 in. Take each measure twice; when the
        two differ by more than a centimetre, take it a third time.
      </p>
    </div>
  );
}

function FigureChoice() {
  const figure = useApp((state) => state.project?.body.figure ?? 'bust');
  const actions = useActions();
  return (
    <fieldset className="segments">
      <legend>Figure</legend>
      {(['bust', 'chest'] as const).map((id) => (
        <label key={id}>
          <input type="radio" name="figure" checked={figure === id} onChange={() => actions.setFigure(id)} />
          <span>{id === 'bust' ? 'With bust' : 'With flat chest'}</span>
        </label>
      ))}
    </fieldset>
  );
}

interface MeasureGroupListProps {
  readonly name: string;
  readonly why: string;
  readonly measures: readonly MeasureDefinition[];
}

function MeasureGroupList({ name, why, measures }: MeasureGroupListProps) {
  const given = useApp((state) => state.project?.body.measures);
  const count = measures.filter((measure) => given?.[measure.id] !== undefined).length;
  if (measures.length === 0) return null;
  return (
    <details className="measure-group" open={count > 0}>
      <summary>
        <span className="group-name">{name}</span>
        <span className="group-count">
          {count} of {measures.length}
        </span>
        <span className="group-why">{why}</span>
      </summary>
      <ul className="measures">
        {measures.map((measure) => (
          <MeasureField key={measure.id} measure={measure} isRequired={false} />
        ))}
      </ul>
    </details>
  );
}
