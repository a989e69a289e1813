import { memo } from 'react';
import type { Form } from '../../../core/form/index.ts';
import type { PieceLine, PieceText } from '../../../core/pattern/index.ts';
import { isMarkOf, seamColour } from '../../store/index.ts';
import { useSay } from '../parts/use-words.ts';
import { useActions, useApp } from '../parts/workroom-context.tsx';
import { PieceNotches } from './piece-notches.tsx';
import { pathOf } from './piece-path.ts';
import { placeBadges } from './place-badges.ts';
import type { StrainImage } from './use-strain-images.ts';

interface FlatPieceProps {
  readonly form: Form;
  readonly index: number;
  readonly dx: number;
  readonly dy: number;
  /** Pixels per mm, for lettering of constant size. */
  readonly scale: number;
  readonly image: StrainImage | undefined;
}

/** Below this many pixels, the piece's own lettering cannot be read and is left out. */
const READABLE_SCALE = 1.3;
/** From a line to the middle of its letter, and between two letters, pixels. */
const BADGE_INSET = 12;
const BADGES_APART = 17;

/** One piece: cloth with its strain, cut and sew lines, marks, and the letters of its seams. */
export function FlatPiece({ form, index, dx, dy, scale, image }: FlatPieceProps) {
  const piece = form.pieces[index];
  const highlight = useApp((state) => state.highlight);
  const actions = useActions();
  const say = useSay();
  const isLit = highlight?.kind === 'panel' && highlight.id === piece.id;
  const seamIndex = new Map(form.shell.seams.map((seam, i) => [seam.id, i]));
  const isReadable = scale > READABLE_SCALE;
  const sewn = piece.sewLines.filter(({ id }) => seamIndex.has(id));
  const badges = placeBadges(
    sewn.map(({ points }) => points),
    BADGE_INSET / scale,
    BADGES_APART / scale,
  );
  const [nameX, nameY] = lowestMiddle(piece.cutLine);
  return (
    <g
      className="flat-piece"
      data-piece={index}
      data-lit={isLit || undefined}
      transform={`translate(${dx} ${dy})`}
      onPointerMove={(event) => {
        if (event.buttons === 0 && event.target === event.currentTarget.firstElementChild) {
          actions.pointAt({ kind: 'panel', id: piece.id });
        }
      }}
    >
      <path className="piece-cloth" d={pathOf(piece.cutLine, true)} />
      {image && (
        <image
          className="piece-strain"
          href={image.url}
          x={image.x}
          y={image.y}
          width={image.width}
          height={image.height}
          preserveAspectRatio="none"
        />
      )}
      <PieceMarks levelLines={piece.levelLines} grainLine={piece.grainLine} />
      {piece.sewLines.map((line) => {
        const at = seamIndex.get(line.id);
        // A band closed on itself has both sides of one seam: only the place tells them apart.
        const key = `${line.id} ${line.points[0]} ${line.points[1]}`;
        return at === undefined ? (
          <path key={key} className="piece-opening" d={pathOf(line.points, false)} />
        ) : (
          <SewLine
            key={key}
            line={line}
            letter={form.shell.seams[at].letter}
            badge={badges[sewn.indexOf(line)]}
            colour={seamColour(at)}
            isLit={(highlight?.kind === 'seam' && highlight.id === line.id) || isMarkOf(highlight, line.id)}
            scale={scale}
            onPoint={() => actions.pointAt({ kind: 'seam', id: line.id })}
          />
        );
      })}
      <PieceNotches notches={piece.notches} seams={form.shell.seams} />
      {isReadable &&
        piece.texts.map((text) => <Lettering key={`${text.text} ${text.x} ${text.y}`} text={text} />)}
      {!isReadable && <PieceName name={say(piece.name)} x={nameX} y={nameY} scale={scale} />}
    </g>
  );
}

interface PieceNameProps {
  readonly name: string;
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}

/** Letters on one line of a name; pieces stand close together. */
const LONGEST_LINE = 13;

/** Under the piece, on as many lines as it takes. */
function PieceName({ name, x, y, scale }: PieceNameProps) {
  const lines = breakLines(name);
  // The longest that fit only just would touch those of the neighbours.
  const size = lines.some(({ length }) => length === LONGEST_LINE) ? 10 : 11;
  return (
    <text className="piece-name" y={y + 14 / scale} fontSize={size / scale}>
      {lines.map((line, i) => (
        <tspan key={line} x={x} dy={i === 0 ? undefined : '1.2em'}>
          {line}
        </tspan>
      ))}
    </text>
  );
}

function breakLines(name: string): string[] {
  const lines: string[] = [];
  for (const word of name.split(' ')) {
    const longer = `${lines.at(-1) ?? ''} ${word}`;
    if (lines.length > 0 && longer.length <= LONGEST_LINE) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

interface SewLineProps {
  readonly line: PieceLine;
  readonly letter: string;
  /** Where the letter stands, y up. */
  readonly badge: readonly [number, number];
  readonly colour: string;
  readonly isLit: boolean;
  readonly scale: number;
  readonly onPoint: () => void;
}

function SewLine({ line, letter, badge, colour, isLit, scale, onPoint }: SewLineProps) {
  const d = pathOf(line.points, false);
  const [x, y] = [badge[0], -badge[1]];
  const radius = (isLit ? 9.5 : 7.5) / scale;
  return (
    <g className="sew-line" data-lit={isLit || undefined} onPointerMove={onPoint} style={{ color: colour }}>
      <path className="sew-reach" d={d} />
      <path className="sew-stroke" d={d} />
      <circle cx={x} cy={y} r={radius} />
      <text x={x} y={y} fontSize={(isLit ? 11.5 : 9.5) / scale} dy="0.36em">
        {letter}
      </text>
    </g>
  );
}

interface PieceMarksProps {
  readonly levelLines: readonly Pick<PieceLine, 'id' | 'points'>[];
  readonly grainLine: Float64Array;
}

const PieceMarks = memo(function PieceMarks({ levelLines, grainLine }: PieceMarksProps) {
  return (
    <g className="piece-marks">
      {levelLines.map((line) => (
        <path key={line.id} className="piece-level" d={pathOf(line.points, false)} />
      ))}
      {grainLine.length > 0 && <path className="piece-grain" d={pathOf(grainLine, false)} />}
    </g>
  );
});

function Lettering({ text }: { readonly text: PieceText }) {
  const turn = (-text.angle * 180) / Math.PI;
  return (
    <text
      className="piece-text"
      x={text.x}
      y={-text.y}
      fontSize={text.size}
      textAnchor={text.anchor}
      transform={`rotate(${turn.toFixed(2)} ${text.x} ${-text.y})`}
    >
      {text.text}
    </text>
  );
}

function lowestMiddle(points: Float64Array): [number, number] {
  let [left, right, low] = [Infinity, -Infinity, Infinity];
  for (let i = 0; i < points.length; i += 2) {
    left = Math.min(left, points[i]);
    right = Math.max(right, points[i]);
    low = Math.min(low, points[i + 1]);
  }
  return [(left + right) / 2, -low];
}
