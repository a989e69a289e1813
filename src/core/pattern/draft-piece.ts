import { failure, type Result, success, withUsual } from '../base/index.ts';
import { checkAllowance, checkOutline, checkSharedCloth, readAllowances } from './check-piece.ts';
import { foldCorners } from './fold-corners.ts';
import { labelPiece } from './label-piece.ts';
import { offsetOutline } from './offset-outline.ts';
import { type DraftOptions, PATTERN_OPTIONS } from './pattern-options.ts';
import { outlineOfPiece, verticesOfPiece } from './piece-outline.ts';
import { placeClips } from './place-clips.ts';
import { drawNotchPoints, placeNotches, pointOutwards } from './place-notches.ts';
import type { LabelInfo, Piece, PieceInput } from './types.ts';

/**
 * Drafts one piece: the sew lines as given, a cut line one allowance outside them, notches with the names of
 * their marks, level lines, grain line and lettering. Everything in the piece's own coordinates, mm, y up.
 * Fails with every issue found when the outline bounds no piece of cloth or the allowance cannot be cut;
 * succeeds with warnings when lettering found no room. Throws when the edges do not chain.
 * Cost: O(n²) in outline points plus a grid search for the label.
 */
export function draftPiece(input: PieceInput, info: LabelInfo, options: DraftOptions = {}): Result<Piece> {
  // 1. Outline and allowances.
  const ring = outlineOfPiece(input);
  const { allowances, issues: allowanceIssues } = readAllowances(input, options);
  const outlineIssues = checkOutline(input, ring);
  const refusals = [...allowanceIssues, ...outlineIssues];
  if (refusals.length > 0) return failure(refusals);

  // 2. Cut line.
  const vertices = verticesOfPiece(input.edges, allowances);
  const { outer: mitred, holes } = offsetOutline(vertices);
  const cutIssues = checkAllowance(input, ring, allowances, holes);
  if (cutIssues.length > 0) return failure(cutIssues);
  const outer = foldCorners(mitred, input.edges, allowances);

  // 3. Notches and the names along the edges.
  const { notchShape } = withUsual(PATTERN_OPTIONS, options);
  const notches = input.edges.flatMap((edge, i) => placeNotches(edge, allowances[i], outer, notchShape));
  const cutLine = pointOutwards(outer, notches);
  const slits = notches.flatMap((notch) => notch.slits);
  const notchPoints = notches.flatMap(drawNotchPoints);
  const clips = [
    ...input.edges.flatMap((edge, i) => placeClips(edge, allowances[i], notches)),
    ...(input.clipLines ?? []).map((line) => ({ ...line, points: line.points.slice() })),
  ];
  const lettering = labelPiece({ input, info, allowances, ring, cutLine, notches, clips });

  return success(
    {
      id: input.id,
      name: input.name,
      side: input.side,
      material: input.material,
      cutLine,
      sewLines: [
        ...input.edges.map(({ id, letter, points }) => ({ id, name: letter || id, points: points.slice() })),
        ...(input.stitchLines ?? []).map(({ id, name, points }) => ({
          id,
          name: info.say(name),
          points: points.slice(),
        })),
      ],
      ...(input.cutouts === undefined
        ? {}
        : { cutouts: input.cutouts.map((line) => ({ ...line, points: line.points.slice() })) }),
      notches: slits,
      ...(notchPoints.length === 0 ? {} : { notchPoints }),
      ...(clips.length === 0 ? {} : { clips }),
      levelLines: input.levelLines.map((line) => ({ ...line, points: line.points.slice() })),
      grainLine: lettering.grainLine,
      texts: lettering.texts,
      ...(input.follows && { follows: input.follows }),
      ...(input.twins && { twins: input.twins }),
      draft: { input, options },
    },
    [...checkSharedCloth(input, vertices, outer), ...lettering.issues],
  );
}
