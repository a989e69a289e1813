import type { Caution } from '../../core/supports/index.ts';

/** Where the work can hurt, and what to do about it. */
export function CautionList({ cautions }: { readonly cautions: readonly Caution[] }) {
  return (
    <section className="cautions" aria-labelledby="cautions-title">
      <h3 id="cautions-title">Take care</h3>
      <dl>
        {cautions.map(({ id, title, text }) => (
          <div key={id}>
            <dt>{title}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
