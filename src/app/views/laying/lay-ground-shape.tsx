import type { LayRules } from '../../../core/laying/index.ts';
import { useWords } from '../parts/use-words.ts';
import { pathOnSheet, type SheetPlace } from './lay-sheets.ts';

interface LayGroundShapeProps {
  readonly rules: LayRules;
  readonly sheet: SheetPlace;
  readonly print: string | null;
  /** Of a roll: where the last piece ends, mm. */
  readonly end: number | null;
  readonly scale: number;
  readonly isNumbered: boolean;
}

/** The cloth or board itself: print, selvedges, flaws, folds, and where it may be cut off. */
export function LayGroundShape({ rules, sheet, print, end, scale, isNumbered }: LayGroundShapeProps) {
  const { plan: words } = useWords().laying;
  const { ground } = rules;
  const { bottom, length, width } = sheet;
  const outline = pathOnSheet(sheet.outline, bottom);
  const isRoll = ground.kind === 'roll';
  const selvedges = isRoll ? [ground.usableFrom, ground.usableFrom + ground.usableWidth] : [];
  const size = 11 / scale;
  return (
    <g className="lay-ground">
      <path className="lay-cloth" d={outline} />
      {print && <path d={outline} fill={print} className="lay-cloth-print" />}
      {isRoll && end !== null && (
        <rect className="lay-beyond" x={end} y={0} width={Math.max(0, length - end)} height={width} />
      )}
      {selvedges
        .filter((y) => y > 0 && y < width)
        .map((y) => (
          <path key={y} className="lay-selvedge" d={`M0 ${bottom - y}H${length}`} />
        ))}
      {sheet.flaws.map((flaw) => (
        <path key={flaw.join(' ')} className="lay-flaw" d={pathOnSheet(flaw, bottom)} />
      ))}
      {sheet.folds.map((fold) => (
        <path key={fold.join(' ')} className="lay-fold" d={pathOnSheet(fold, bottom, false)} />
      ))}
      <path className="lay-edge" d={outline} />
      {end !== null && <path className="lay-end" d={`M${end} ${-12 / scale}V${bottom + 12 / scale}`} />}
      {isNumbered && (
        <text className="lay-sheet-name" x={0} y={bottom - width - size * 0.5} fontSize={size}>
          {words.sheet(sheet.sheet + 1)}
        </text>
      )}
    </g>
  );
}
