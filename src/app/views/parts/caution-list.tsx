import type { Caution } from '../../../core/inside/index.ts';
import { useSay, useWords } from './use-words.ts';

/** Where the work can hurt, and what to do about it. */
export function CautionList({ cautions }: { readonly cautions: readonly Caution[] }) {
  const title = useWords().cautions;
  const say = useSay();
  return (
    <section className="cautions" aria-labelledby="cautions-title">
      <h3 id="cautions-title">{title}</h3>
      <dl>
        {cautions.map((caution) => {
          const [title, text] = [say(caution.title), say(caution.text)];
          return (
            <div key={caution.id}>
              <dt>{title}</dt>
              <dd>{text}</dd>
            </div>
          );
        })}
      </dl>
    </section>
  );
}
