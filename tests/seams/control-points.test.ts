import { describe, expect, it } from 'vitest';
import {
  addControlPoint,
  cutIntoPanels,
  findLayout,
  listControlPoints,
  moveControlPoint,
  placeOnShell,
  removeControlPoint,
  type SeamedShell,
  type SeamLayout,
  snapPoint,
} from '../../src/core/seams/index.ts';
import { inEnglish } from '../in-english.ts';
import { CYLINDER_RADIUS, cylinder, torso } from './sample-forms.ts';

const upright8 = findLayout('upright8')!;
const { surface, form } = cylinder;

function cut(layout: SeamLayout): SeamedShell {
  const result = cutIntoPanels(surface, form, layout, { targetTriangles: 3000 });
  if (!result.ok) throw new Error(inEnglish(result.issues[0].message));
  return result.value;
}

describe('a place picked on the mesh', () => {
  it('reads as the mean of its corners, across the seam of the chart as well', () => {
    const shell = {
      mesh: { positions: new Float64Array(9), triangles: Uint32Array.of(0, 1, 2) },
      chart: Float64Array.of(-Math.PI / 2, 10, 1.5 * Math.PI + 0.1, 10, -Math.PI / 2, 40),
    };
    const { u, v } = placeOnShell(shell, 0, [0.25, 0.5, 0.25]);
    expect(u).toBeCloseTo(-Math.PI / 2 + 0.05, 12);
    expect(v).toBeCloseTo(17.5, 12);
  });
});

describe('snapping on a cylinder, where distances are chords', () => {
  // Chord of an angle a: 2 R sin(a / 2).
  const bust = form.landmarks.bustPointRight;
  it('goes to a landmark within reach and to nothing beyond it', () => {
    const near = snapPoint(surface, form, { u: bust.u + 0.04, v: bust.v }, { within: 8 });
    expect(near).toMatchObject({ kind: 'landmark', id: 'bustPointRight', u: bust.u, v: bust.v });
    expect(near.distance).toBeCloseTo(2 * CYLINDER_RADIUS * Math.sin(0.02), 9);
    const far = snapPoint(surface, form, { u: bust.u + 0.1, v: bust.v + 20 }, { within: 8 });
    expect(far).toMatchObject({ kind: 'none', distance: 0, u: bust.u + 0.1, v: bust.v + 20 });
    expect(far.anchor).toMatchObject({ landmark: 'bustPointRight', v: 20 });
  });

  it('goes to levels up or down, to centres sideways', () => {
    const level = snapPoint(surface, form, { u: 0.5, v: 305 });
    expect(level).toMatchObject({ kind: 'level', id: 'waist', v: 300, u: 0.5 });
    expect(level.distance).toBeCloseTo(5, 9);
    const centre = snapPoint(surface, form, { u: Math.PI / 2 - 0.03, v: 250 });
    expect(centre).toMatchObject({ kind: 'centre', id: 'front', v: 250 });
    expect(centre.u).toBeCloseTo(Math.PI / 2, 12);
  });

  it('goes to the armhole, and says where round it', () => {
    // Front break: the oval's middle height on the front side, u = 0.3, v = 565.
    const front = snapPoint(surface, form, { u: 0.32, v: 566 }, { kinds: ['armhole'] });
    expect(front.kind).toBe('armhole');
    expect(front.u).toBeCloseTo(0.3, 2);
    const layout: SeamLayout = {
      ...upright8,
      lines: upright8.lines.map((line) =>
        line.id === 'princessFront'
          ? { ...line, through: [...line.through.slice(0, -1), front.anchor] }
          : line,
      ),
    };
    const shell = cut(layout);
    const points = listControlPoints(surface, form, layout);
    if (!points.ok) throw new Error(inEnglish(points.issues[0].message));
    const end = points.value.filter((point) => point.lineId === 'princessFront').at(-1)!;
    expect(end.u).toBeCloseTo(front.u, 4);
    expect(end.v).toBeCloseTo(front.v, 1);
    expect(shell.seams.some((seam) => seam.lineId === 'princessFront')).toBe(true);
  });

  it('goes to other lines, never to its own', () => {
    const shell = cut(upright8);
    // The side line stands at u = 0.
    const at = { u: 0.03, v: 250 };
    const side = snapPoint(surface, form, at, { shell, kinds: ['line'] });
    expect(side).toMatchObject({ kind: 'line', id: 'side' });
    expect(side.u).toBeCloseTo(0, 6);
    expect(snapPoint(surface, form, at, { shell, kinds: ['line'], lineId: 'side' }).kind).toBe('none');
  });

  it('mirrors a place picked on the left', () => {
    const left = snapPoint(surface, form, { u: Math.PI - bust.u - 0.02, v: bust.v });
    expect(left).toMatchObject({ id: 'bustPointRight', isMirrored: true });
  });
});

describe('pulling a line', () => {
  it('moves one point, on both halves, and the rest stays fair', () => {
    const { landmarks } = form;
    const before = cut(upright8);
    const to = { u: landmarks.bustPointRight.u - 0.2, v: landmarks.bustPointRight.v };
    const moved = moveControlPoint(
      surface,
      form,
      upright8,
      { lineId: 'princessFront', anchor: 4, to },
      before,
    );
    if (!moved.ok) throw new Error(inEnglish(moved.issues[0].message));
    expect(moved.value.snapped).toMatchObject({ kind: 'level', id: 'bust' });
    const after = cut(moved.value.layout);
    for (const [id, sign] of [
      ['princessFrontRight', 1],
      ['princessFrontLeft', -1],
    ] as const) {
      const seam = after.seams.find((one) => one.id === id)!;
      const point = seam.points.find((p) => Math.abs(after.chart[2 * p + 1] - to.v) < 1e-9)!;
      const u = after.chart[2 * point];
      expect(sign > 0 ? u : Math.PI - u).toBeCloseTo(to.u, 9);
    }
    // The same layout on another body still passes beside that body's bust point.
    expect(cutIntoPanels(torso.surface, torso.form, moved.value.layout, { targetTriangles: 3000 }).ok).toBe(
      true,
    );
  });

  it('keeps an end at the base on the base and one on the shoulder on the shoulder', () => {
    const base = moveControlPoint(surface, form, upright8, {
      lineId: 'princessFront',
      anchor: 0,
      to: { u: 0.8, v: 60 },
    });
    if (!base.ok) throw new Error(inEnglish(base.issues[0].message));
    const points = listControlPoints(surface, form, base.value.layout);
    if (!points.ok) throw new Error(inEnglish(points.issues[0].message));
    expect(points.value.find((point) => point.lineId === 'princessFront')).toMatchObject({ v: 0 });
    const last = upright8.lines.find((line) => line.id === 'princessFront')!.through.length - 1;
    const shoulder = moveControlPoint(torso.surface, torso.form, upright8, {
      lineId: 'princessFront',
      anchor: last,
      to: { u: 0.05, v: 625 },
    });
    if (!shoulder.ok) throw new Error(inEnglish(shoulder.issues[0].message));
    const line = shoulder.value.layout.lines.find((one) => one.id === 'princessFront')!;
    expect(line.through.at(-1)).toMatchObject({ onLine: 'shoulder' });
  });

  it('adds a point where the line runs without moving it much, and takes it away again', () => {
    const points = listControlPoints(surface, form, upright8);
    if (!points.ok) throw new Error(inEnglish(points.issues[0].message));
    const [a, b] = points.value.filter((point) => point.lineId === 'princessFront');
    const at = { u: (a.u + b.u) / 2, v: (a.v + b.v) / 2 };
    const more = addControlPoint(surface, form, upright8, 'princessFront', at);
    if (!more.ok) throw new Error(inEnglish(more.issues[0].message));
    const now = listControlPoints(surface, form, more.value);
    if (!now.ok) throw new Error(inEnglish(now.issues[0].message));
    expect(now.value.filter((point) => point.lineId === 'princessFront')[1].u).toBeCloseTo(at.u, 9);
    const less = removeControlPoint(more.value, 'princessFront', 1);
    expect(less.ok && less.value).toEqual(upright8);
  });

  it('refuses what cannot be pulled, by name', () => {
    const to = { u: 1, v: 200 };
    for (const edit of [
      { lineId: 'hem', anchor: 0, to },
      { lineId: 'centreFront', anchor: 0, to },
      { lineId: 'princessFront', anchor: 9, to },
    ])
      expect(moveControlPoint(surface, form, upright8, edit).issues).toMatchObject([
        { code: 'point-unknown' },
      ]);
    expect(removeControlPoint(upright8, 'princessFront', 0).issues).toMatchObject([
      { code: 'point-unknown' },
    ]);
  });
});
