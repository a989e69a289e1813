import { useEffect, useState } from 'react';
import { withUsual } from '../../../core/base/index.ts';
import type { Project } from '../../../core/project/index.ts';
import { findPaper, type PagePicture, PRINT_OPTIONS, type PrintPlan } from '../../../core/sheet/index.ts';
import { CoreText } from '../parts/core-text.tsx';
import { useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp, useServices } from '../parts/workroom-context.tsx';
import { useCutting } from './print-choices.tsx';

/** Choices that save pages, with the value that does and the one that does not. */
const SAVERS = {
  twins: { saving: 'once', other: 'apart' },
  plain: { saving: 'told', other: 'drawn' },
  joint: { saving: 'butt', other: 'overlap' },
} as const;
type Saver = keyof typeof SAVERS;
const SAVER_NAMES = Object.keys(SAVERS) as Saver[];

/** What is known of the print as it is now chosen: `saved` holds how many pages each choice saves. */
interface Plans {
  readonly plan: PrintPlan | null;
  readonly saved: Readonly<Partial<Record<Saver, number>>>;
  readonly problems: readonly string[];
}

const NOTHING_KNOWN: Plans = { plan: null, saved: {}, problems: [] };

/** How many pages and joints the pattern has, what each choice saves, and all pages small: before anything is made. */
export function PrintPages({ wanted }: { readonly wanted: readonly string[] | null }) {
  const { plan, saved, problems } = usePlans(wanted);
  const { print: words } = useWords();
  const say = useSay();
  const paper = plan && findPaper(plan.paper);
  return (
    <div className="print-pages">
      {(['twins', 'plain'] as const).map((name) => (
        <SaverChoice key={name} name={name} saved={saved[name]} />
      ))}
      {saved.joint !== undefined && saved.joint > 0 && (
        <p className="quiet">{words.buttSaves(saved.joint)}</p>
      )}
      <p role="status">
        {plan && paper
          ? words.pages(say(paper.name), plan.pages, plan.patternPages, plan.joints)
          : problems.length === 0 && words.counting}
      </p>
      {problems.length > 0 && (
        <ul role="alert" className="readings-differ">
          {problems.map((problem) => (
            <li key={problem}>
              <CoreText said={problem} />
            </li>
          ))}
        </ul>
      )}
      {plan && <PagePictures pictures={plan.pictures} />}
    </div>
  );
}

/** Drawn while they are looked at only: they are some dozens, of some thousand lines, and other at every choice. */
function PagePictures({ pictures }: { readonly pictures: readonly PagePicture[] }) {
  const [isOpen, setIsOpen] = useState(false);
  const { print: words } = useWords();
  return (
    <details className="page-pictures" onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary>{words.look}</summary>
      {isOpen && (
        <ol>
          {pictures.map((picture, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: pages have no other name, and their order is what they are
            <li key={i}>
              <Page picture={picture} />
            </li>
          ))}
        </ol>
      )}
    </details>
  );
}

function SaverChoice({
  name,
  saved,
}: {
  readonly name: 'twins' | 'plain';
  readonly saved: number | undefined;
}) {
  const options = withUsual(PRINT_OPTIONS, useCutting());
  const { print: words, steps } = useWords();
  const actions = useActions();
  const { saving, other } = SAVERS[name];
  return (
    <label className="check-row">
      <input
        type="checkbox"
        checked={options[name] === saving}
        onChange={(event) =>
          actions.setCutting({ [name]: event.target.checked ? saving : other }, steps.things[name])
        }
      />
      <span>
        {words.savers[name]} {saved !== undefined && <span className="quiet">{words.saves(saved)}</span>}
      </span>
    </label>
  );
}

/** Asks for the print as chosen, then once more for each choice the other way. */
function usePlans(wanted: readonly string[] | null): Plans {
  const cutting = useCutting();
  const { worker } = useServices();
  const say = useSay();
  const isReady = useApp(({ formOf, formQuality, project }) => formOf === project && formQuality === 'full');
  const [plans, setPlans] = useState(NOTHING_KNOWN);
  const pieces = wanted?.join(' ') ?? null;
  useEffect(() => {
    if (!isReady) return;
    let isLeft = false;
    const ask = async (change: Partial<Project['cutting']>) => {
      const found = await worker.planPrint({ change, ...(pieces !== null && { pieces: pieces.split(' ') }) });
      return isLeft ? null : found;
    };
    const follow = async () => {
      setPlans((before) => ({ ...before, saved: {}, problems: [] }));
      const found = await ask({});
      if (!found) return;
      if (!found.ok) {
        setPlans({ ...NOTHING_KNOWN, problems: found.issues.map(({ message }) => say(message)) });
        return;
      }
      const { value: plan } = found;
      setPlans({ plan, saved: {}, problems: [] });
      const options = withUsual(PRINT_OPTIONS, cutting);
      for (const name of SAVER_NAMES) {
        const { saving, other } = SAVERS[name];
        const isSaving = options[name] === saving;
        const turned = await ask({ [name]: isSaving ? other : saving });
        if (!turned?.ok) return;
        const pages = isSaving ? turned.value.pages - plan.pages : plan.pages - turned.value.pages;
        setPlans((before) => ({ ...before, saved: { ...before.saved, [name]: pages } }));
      }
    };
    void follow();
    return () => {
      isLeft = true;
    };
  }, [isReady, cutting, pieces, worker, say]);
  return plans;
}

function Page({ picture: { name, width, height, cut, join } }: { readonly picture: PagePicture }) {
  return (
    <figure>
      <svg viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
        <path d={pathOf(cut)} className="page-cut" />
        <path d={pathOf(join)} className="page-join" />
      </svg>
      <figcaption>{name}</figcaption>
    </figure>
  );
}

function pathOf(lines: readonly Float64Array[]): string {
  return lines
    .map((points) => {
      const pairs = Array.from(
        { length: points.length / 2 },
        (_, i) => `${points[2 * i].toFixed(1)} ${points[2 * i + 1].toFixed(1)}`,
      );
      return `M${pairs.join('L')}`;
    })
    .join('');
}
