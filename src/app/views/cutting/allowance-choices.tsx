import { withUsual } from '../../../core/base/index.ts';
import {
  ALLOWANCE_KINDS,
  NOTCH_SHAPES,
  type NotchShape,
  nameOfAllowanceKind,
  PATTERN_OPTIONS,
  usualAllowance,
} from '../../../core/pattern/index.ts';
import type { Project } from '../../../core/project/index.ts';
import { LengthRow } from '../parts/length-row.tsx';
import { SeamAllowance } from '../parts/seam-allowance.tsx';
import { useSeamName } from '../parts/use-seam-name.ts';
import { useSay, useWords } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';

const MATERIALS = ['webs', 'arms'] as const;

/** Cloth beyond the seam lines: for all, and by edge, opening and material; the shape of notches. */
export function AllowanceChoices() {
  const { allowance } = useWords();
  return (
    <>
      <SeamAllowance />
      <NotchShapeChoice />
      <details className="printer">
        <summary>{allowance.others}</summary>
        <KindAllowances />
        <UsualAllowances />
        <EdgeAllowances />
      </details>
    </>
  );
}

function NotchShapeChoice() {
  const cloth = useCloth();
  const actions = useActions();
  const { allowance: words, steps } = useWords();
  return (
    <div className="field-row">
      <label className="measure-name" htmlFor="notch-shape">
        {words.notches}
      </label>
      <select
        id="notch-shape"
        value={withUsual(PATTERN_OPTIONS, cloth).notchShape}
        onChange={(event) =>
          actions.setCloth({ notchShape: event.target.value as NotchShape }, steps.things.notches)
        }
      >
        {NOTCH_SHAPES.map((shape) => (
          <option key={shape} value={shape}>
            {words.shapes[shape]}
          </option>
        ))}
      </select>
    </div>
  );
}

/** Openings, and materials other than the shell's. */
function KindAllowances() {
  const cloth = useCloth();
  const { allowance: usual } = withUsual(PATTERN_OPTIONS, cloth);
  const { allowanceByKind = {}, allowanceByMaterial = {} } = cloth;
  const actions = useActions();
  const { allowance: words, steps } = useWords();
  return (
    <>
      <LengthRow
        name={words.openings}
        fieldId="cloth.allowanceByKind.opening"
        value={allowanceByKind.opening}
        usual={usual}
        limits={PATTERN_OPTIONS.allowance}
        isExact
        onValue={(mm) =>
          actions.setCloth(
            { allowanceByKind: withEntry(allowanceByKind, 'opening', mm) },
            steps.things.openings,
          )
        }
      />
      {MATERIALS.map((id) => (
        <LengthRow
          key={id}
          name={words[id]}
          fieldId={`cloth.allowanceByMaterial.${id}`}
          value={allowanceByMaterial[id]}
          usual={usual}
          limits={PATTERN_OPTIONS.allowance}
          isExact
          onValue={(mm) =>
            actions.setCloth(
              { allowanceByMaterial: withEntry(allowanceByMaterial, id, mm) },
              steps.things.allowanceFor(words[id]),
            )
          }
        />
      ))}
    </>
  );
}

/** Kinds of edges that usually have more than the general allowance. */
function UsualAllowances() {
  const cloth = useCloth();
  const unit = useApp((state) => state.project?.displayUnits ?? 'cm');
  const { allowance } = withUsual(PATTERN_OPTIONS, cloth);
  const { allowanceByKind = {} } = cloth;
  const actions = useActions();
  const { steps } = useWords();
  const say = useSay();
  return ALLOWANCE_KINDS.map((kind) => {
    const name = say(nameOfAllowanceKind(kind));
    return (
      <LengthRow
        key={kind}
        name={name}
        fieldId={`cloth.allowanceByKind.${kind}`}
        value={allowanceByKind[kind]}
        usual={usualAllowance(kind, unit, kind === 'cover' ? 0 : allowance)}
        limits={PATTERN_OPTIONS.allowance}
        isExact
        onValue={(mm) =>
          actions.setCloth(
            { allowanceByKind: withEntry(allowanceByKind, kind, mm) },
            steps.things.allowanceFor(name),
          )
        }
      />
    );
  });
}

/** Single edges that have an allowance of their own, and one more. */
function EdgeAllowances() {
  const cloth = useCloth();
  const { allowance: usual } = withUsual(PATTERN_OPTIONS, cloth);
  const { allowanceByEdge = {} } = cloth;
  const actions = useActions();
  const { allowance: words, steps } = useWords();
  const edges = useEdges();
  const own = edges.filter(({ id }) => allowanceByEdge[id] !== undefined);
  return (
    <>
      {own.map(({ id, name }) => (
        <LengthRow
          key={id}
          name={name}
          fieldId={`cloth.allowanceByEdge.${id}`}
          value={allowanceByEdge[id]}
          usual={usual}
          limits={PATTERN_OPTIONS.allowance}
          isExact
          onValue={(mm) =>
            actions.setCloth(
              { allowanceByEdge: withEntry(allowanceByEdge, id, mm) },
              steps.things.allowanceOf(name),
            )
          }
        />
      ))}
      <div className="field-row">
        <label className="measure-name" htmlFor="own-allowance">
          {words.oneEdge}
        </label>
        <select
          id="own-allowance"
          value=""
          onChange={(event) =>
            actions.setCloth(
              { allowanceByEdge: withEntry(allowanceByEdge, event.target.value, usual) },
              steps.things.oneEdge,
            )
          }
        >
          <option value="">{words.choose}</option>
          {edges
            .filter(({ id }) => allowanceByEdge[id] === undefined)
            .map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
        </select>
      </div>
    </>
  );
}

function useCloth(): Partial<Project['cloth']> {
  return useApp((state) => state.project?.cloth) ?? {};
}

/** Every opening and seam of the form, with its name. */
function useEdges(): readonly { readonly id: string; readonly name: string }[] {
  const form = useApp((state) => state.form);
  const { allowance } = useWords();
  const nameOfSeam = useSeamName();
  const nameOpening = (id: string) => (allowance.opening as Readonly<Record<string, string>>)[id] ?? id;
  return [
    ...(form?.shell.openings ?? []).map(({ id }) => ({ id, name: nameOpening(id) })),
    ...(form?.shell.seams ?? []).map(({ id, letter, name }) => ({
      id,
      name: `${letter} ${nameOfSeam({ id, name })}`,
    })),
  ];
}

/** With the entry, or without it; undefined when none is left. */
function withEntry<T extends { readonly [id: string]: number | undefined }>(
  entries: T,
  id: string,
  mm: number | undefined,
): T | undefined {
  const left = Object.entries({ ...entries, [id]: mm }).filter(([, value]) => value !== undefined);
  return left.length === 0 ? undefined : (Object.fromEntries(left) as T);
}
