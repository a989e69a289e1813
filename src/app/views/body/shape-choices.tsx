import { useState } from 'react';
import type { ShapeCategory } from '../../../core/body/index.ts';
import { type PartOfShape, partsOfShape } from '../../store/index.ts';
import { useNumbers, useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { ShapePicture } from './shape-picture.tsx';

/** One choice per question this figure has, part by part; a number from a file is kept and shown as it is. */
export function ShapeChoices() {
  const figure = useApp((state) => state.project?.body.figure ?? 'bust');
  const shape = useApp((state) => state.project?.body.shape) ?? {};
  return partsOfShape({ figure, shape }).map((part) => <PartChoices key={part.part} {...part} />);
}

function PartChoices({ part, categories, unusual, startsOpen }: PartOfShape) {
  const { body: words } = useWords();
  const [isOpen, setIsOpen] = useState(startsOpen);
  return (
    <details
      className="measure-group"
      open={isOpen}
      onToggle={(event) => setIsOpen(event.currentTarget.open)}
    >
      <summary>
        <span className="group-name">{words.shapeParts[part]}</span>
        <span className="group-count">{words.shapeAnswers(unusual, categories.length)}</span>
      </summary>
      <div className="shape-choices">
        {categories.map((category) => (
          <ShapeChoice key={category.id} category={category} />
        ))}
      </div>
    </details>
  );
}

function ShapeChoice({ category }: { readonly category: ShapeCategory }) {
  const value = useApp((state) => state.project?.body.shape?.[category.id]);
  const actions = useActions();
  const { core } = useWords();
  const say = useSay();
  const numbers = useNumbers();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const [name, why] = [say(category.name), say(category.why)];
  const choiceIds = category.choices.map(({ id }) => id);
  const choose = (id: string) => actions.setShape(category.id, id, core.inSentence(name));
  return (
    <fieldset className="shape-choice">
      <legend>{name}</legend>
      <p className="measure-how">{why}</p>
      <div className="choice-row">
        {category.choices.map((choice) => (
          <label key={choice.id}>
            <input
              type="radio"
              name={`shape-${category.id}`}
              checked={(value ?? category.usual) === choice.id}
              onChange={() => choose(choice.id)}
            />
            <span>
              <ShapePicture categoryId={category.id} choiceId={choice.id} choiceIds={choiceIds} />
              {say(choice.name)}
            </span>
          </label>
        ))}
        {typeof value === 'number' && (
          <label>
            <input type="radio" name={`shape-${category.id}`} checked readOnly />
            <span>{category.unit === 'mm' ? numbers.length(value, unit) : value}</span>
          </label>
        )}
      </div>
    </fieldset>
  );
}
