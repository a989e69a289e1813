import type { PrintTile } from '../../store/index.ts';
import type { SheetPlace } from './lay-sheets.ts';

interface PlanFillsProps {
  /** The print of a sheet is filled with `<id>-<sheet>`, a fault with `<id>-fault`. */
  readonly id: string;
  readonly tile: (PrintTile & { readonly url: string }) | null;
  readonly sheets: readonly SheetPlace[];
  /** How far the print is dragged: along and across, mm. */
  readonly shift: readonly [number, number];
  /** Pixels per mm. */
  readonly scale: number;
}

/** What the plan is filled with: the print where it lies on each sheet, and hatching of the same breadth at every size. */
export function PlanFills({ id, tile, sheets, shift: [along, across], scale }: PlanFillsProps) {
  return (
    <defs>
      {tile &&
        sheets.map(({ sheet, bottom }) => (
          <pattern
            key={sheet}
            id={`${id}-${sheet}`}
            patternUnits="userSpaceOnUse"
            width={tile.along}
            height={tile.across}
            x={tile.firstAlong + along - tile.along / 2}
            y={bottom - tile.firstAcross - across - tile.across / 2}
          >
            <image href={tile.url} width={tile.along} height={tile.across} preserveAspectRatio="none" />
          </pattern>
        ))}
      <pattern
        id={`${id}-fault`}
        patternUnits="userSpaceOnUse"
        width={9 / scale}
        height={9 / scale}
        patternTransform="rotate(45)"
      >
        <rect className="lay-hatch" width={3 / scale} height={9 / scale} />
      </pattern>
    </defs>
  );
}
