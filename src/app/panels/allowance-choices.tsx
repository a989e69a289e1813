import { NOTCH_SHAPES, type NotchShape } from '../../core/pattern/index.ts';
import { LengthRow } from './length-row.tsx';
import { SeamAllowance } from './seam-allowance.tsx';
import { useActions, useApp } from './workroom-context.tsx';

const LIMITS = { min: 0, max: 50 };
const USUAL = 10;
const SHAPES: Readonly<Record<NotchShape, string>> = {
  slit: 'short cuts',
  t: 'short cuts with a bar (T)',
  outward: 'points outwards',
};
const MATERIALS = [
  ['webs', 'Webs inside'],
  ['arms', 'Arms'],
] as const;

/** Cloth beyond the seam lines: for all, and by edge, opening and material; the shape of notches. */
export function AllowanceChoices() {
  const cloth = useApp((state) => state.project?.cloth);
  const form = useApp((state) => state.form);
  const actions = useActions();
  const usual = cloth?.allowance ?? USUAL;
  const { allowanceByKind = {}, allowanceByMaterial = {}, allowanceByEdge = {} } = cloth ?? {};
  const edges = [
    ...(form?.shell.openings ?? []).map(({ id }) => ({ id, name: nameOpening(id) })),
    ...(form?.shell.seams ?? []).map(({ id, letter, name }) => ({ id, name: `${letter} ${name}` })),
  ];
  const own = edges.filter(({ id }) => allowanceByEdge[id] !== undefined);
  return (
    <>
      <SeamAllowance />
      <div className="field-row">
        <label className="measure-name" htmlFor="notch-shape">
          Notches
        </label>
        <select
          id="notch-shape"
          value={cloth?.notchShape ?? 'slit'}
          onChange={(event) =>
            actions.setCloth({ notchShape: event.target.value as NotchShape }, 'shape of notches')
          }
        >
          {NOTCH_SHAPES.map((shape) => (
            <option key={shape} value={shape}>
              {SHAPES[shape]}
            </option>
          ))}
        </select>
      </div>
      <details className="printer">
        <summary>Other allowances</summary>
        <LengthRow
          name="Openings"
          fieldId="cloth.allowanceByKind.opening"
          value={allowanceByKind.opening}
          usual={usual}
          limits={LIMITS}
          onValue={(mm) =>
            actions.setCloth(
              { allowanceByKind: withEntry(allowanceByKind, 'opening', mm) },
              'allowance of openings',
            )
          }
        />
        {MATERIALS.map(([id, name]) => (
          <LengthRow
            key={id}
            name={name}
            fieldId={`cloth.allowanceByMaterial.${id}`}
            value={allowanceByMaterial[id]}
            usual={usual}
            limits={LIMITS}
            onValue={(mm) =>
              actions.setCloth(
                { allowanceByMaterial: withEntry(allowanceByMaterial, id, mm) },
                `allowance: ${name.toLowerCase()}`,
              )
            }
          />
        ))}
        {own.map(({ id, name }) => (
          <LengthRow
            key={id}
            name={name}
            fieldId={`cloth.allowanceByEdge.${id}`}
            value={allowanceByEdge[id]}
            usual={usual}
            limits={LIMITS}
            onValue={(mm) =>
              actions.setCloth(
                { allowanceByEdge: withEntry(allowanceByEdge, id, mm) },
                `allowance of ${name}`,
              )
            }
          />
        ))}
        <div className="field-row">
          <label className="measure-name" htmlFor="own-allowance">
            One edge
          </label>
          <select
            id="own-allowance"
            value=""
            onChange={(event) =>
              actions.setCloth(
                { allowanceByEdge: withEntry(allowanceByEdge, event.target.value, usual) },
                'allowance of one edge',
              )
            }
          >
            <option value="">choose…</option>
            {edges
              .filter(({ id }) => allowanceByEdge[id] === undefined)
              .map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
          </select>
        </div>
      </details>
    </>
  );
}

/** With the entry, or without it; undefined when none is left. */
function withEntry<T extends Readonly<Record<string, number>> | { readonly opening?: number }>(
  entries: T,
  id: string,
  mm: number | undefined,
): T | undefined {
  const left = Object.entries({ ...entries, [id]: mm }).filter(([, value]) => value !== undefined);
  return left.length === 0 ? undefined : (Object.fromEntries(left) as T);
}

function nameOpening(id: string): string {
  const words = id.replace(/([A-Z])/g, ' $1').toLowerCase();
  return `${words.charAt(0).toUpperCase()}${words.slice(1)} opening`;
}
