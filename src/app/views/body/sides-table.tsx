import { useMemo } from 'react';
import { type Section, sidesOfSection } from '../../store/index.ts';
import { useNumbers, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

const SIZES = ['girth', 'width', 'depth'] as const;

/** What differs between the right and the left half of the body at the height looked at. */
export function SidesTable({ section }: { readonly section: Section }) {
  const isAlike = useApp((state) => state.form?.body.shape.isMirrorSymmetric ?? false);
  const showsMirror = useApp((state) => state.layers.mirror);
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const actions = useActions();
  const words = useWords().sides;
  const numbers = useNumbers();
  const sides = useMemo(() => sidesOfSection(section), [section]);
  if (!sides) return null;
  if (isAlike) return <p className="measure-how">{words.alike}</p>;
  const { right, left } = sides;
  return (
    <>
      <table className="table">
        <caption>{words.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{words.half}</th>
            {[words.right, words.left, words.difference].map((name) => (
              <th key={name} scope="col" className="number">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {SIZES.map((size) => (
            <tr key={size}>
              <th scope="row">{words.sizes[size]}</th>
              <td className="number">{numbers.length(right[size], unit, { bare: true })}</td>
              <td className="number">{numbers.length(left[size], unit, { bare: true })}</td>
              <td className="number">{numbers.signedLength(right[size] - left[size], unit)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <label className="mirror-switch">
        <input
          type="checkbox"
          checked={showsMirror}
          onChange={(event) => actions.showLayer('mirror', event.target.checked)}
        />
        {words.layMirror}
      </label>
    </>
  );
}
