import { withUsual } from '../../../core/base/index.ts';
import type { FormInside } from '../../../core/form/index.ts';
import { INSIDE_OPTIONS, insidePhrase } from '../../../core/inside/index.ts';
import { CoreText } from '../parts/core-text.tsx';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

/** How much goes inside: the fewest parts or all, and every part that may be there or not with what it buys and costs. */
export function FurtherParts({ parts }: { readonly parts: FormInside['parts'] }) {
  const inside = useApp((state) => state.project?.inside ?? {});
  const actions = useActions();
  const { inside: words, core } = useWords();
  const { parts: choice, recut } = withUsual(INSIDE_OPTIONS, inside);
  return (
    <section aria-labelledby="further-parts-title">
      <h3 id="further-parts-title">{words.parts.title}</h3>
      <div className="field-row">
        <label className="measure-name" htmlFor="inside-parts">
          {words.parts.howMany}
        </label>
        <select
          id="inside-parts"
          aria-describedby="inside-parts-how"
          value={choice}
          onChange={({ target: { value } }) => {
            const chosen = INSIDE_OPTIONS.parts.choices.find((one) => one === value);
            const isUsual = chosen === INSIDE_OPTIONS.parts.usual;
            actions.chooseInside(
              { parts: isUsual ? undefined : chosen },
              core.inSentence(words.parts.howMany),
            );
          }}
        >
          {INSIDE_OPTIONS.parts.choices.map((id) => (
            <option key={id} value={id}>
              {words.parts[id]}
            </option>
          ))}
        </select>
      </div>
      <p className="measure-how" id="inside-parts-how">
        {recut ? words.parts.how : words.parts.allWithoutRecut}
      </p>
      <ul className="further-parts">
        {parts.map((part) => (
          <PartChoice key={part.id} part={part} />
        ))}
      </ul>
    </section>
  );
}

function PartChoice({ part }: { readonly part: FormInside['parts'][number] }) {
  const strapsAt = useApp((state) => state.project?.inside.strapsAt);
  const hasThroat = useApp((state) => withUsual(INSIDE_OPTIONS, state.project?.inside ?? {}).throat);
  const actions = useActions();
  const { inside: words, core } = useWords();
  const say = useSay();
  const { fixed } = useNumbers();
  const { id, name, isIn, isNeeded, hours, gain } = part;
  const label = core.inSentence(say(name));
  const choose = (isWanted: boolean): void => {
    if (id === 'throat') actions.setInsidePart(id, isWanted, label);
    else actions.chooseInside({ strapsAt: { ...strapsAt, [id]: isWanted ? 'with' : 'without' } }, label);
  };
  // What was chosen shows at once, before the form is made anew.
  const chosen = id === 'throat' ? hasThroat : strapsAt?.[id] && strapsAt[id] === 'with';
  const told = [
    ...(isNeeded ? [say(insidePhrase('part.needed'))] : []),
    ...(gain ? [say(insidePhrase('part.gain', gain))] : []),
  ];
  return (
    <li>
      <label className="part-switch">
        <input type="checkbox" checked={chosen ?? isIn} onChange={(event) => choose(event.target.checked)} />
        {words.parts.named(say(name))}
        <span className="quiet">{words.parts.hours(fixed(hours, 1))}</span>
      </label>
      {told.length > 0 && (
        <p className="measure-how">
          <CoreText said={told.join(' ')} />
        </p>
      )}
    </li>
  );
}
