import type { ClothStiffness, RigidBody, ShellProblem } from '../../src/core/statics/index.ts';

/** The usual case: 3 kPa and cotton of 40 N/mm, 8 across. */
export const PRESSURE = 0.003;
export const CLOTH: ClothStiffness = { warp: 40, weft: 40, shear: 8, poisson: 0 };
/** Rest edges of triangles that lie flat somewhere: `flat` gives each corner its place, #F × 3 × 2 (warp, weft). */
function edgesOfFlat(flat: readonly (readonly [number, number])[]): Float64Array {
  const edges: number[] = [];
  for (let k = 0; k < flat.length; k += 3) {
    const [a, b, c] = flat.slice(k, k + 3);
    edges.push(b[0] - a[0], b[1] - a[1], c[0] - a[0], c[1] - a[1]);
  }
  return Float64Array.from(edges);
}

/** Rest edges of triangles that are at rest as they lie in space, each in axes of its own; good for cloth alike in all directions. */
function edgesInSpace(positions: Float64Array, triangles: Uint32Array): Float64Array {
  const edges = new Float64Array((4 * triangles.length) / 3);
  for (let t = 0; t < triangles.length / 3; t++) {
    const [a, b, c] = [0, 1, 2].map((k) => 3 * triangles[3 * t + k]);
    const u = [0, 1, 2].map((k) => positions[b + k] - positions[a + k]);
    const v = [0, 1, 2].map((k) => positions[c + k] - positions[a + k]);
    const length = Math.hypot(...u);
    const along = (u[0] * v[0] + u[1] * v[1] + u[2] * v[2]) / length;
    const across = Math.sqrt(Math.max(0, v[0] ** 2 + v[1] ** 2 + v[2] ** 2 - along * along));
    edges.set([length, 0, along, across], 4 * t);
  }
  return edges;
}

/**
 * A tube along z of `around` × `along` places, its rest warp along z. Its two rims are on rigid boards, the lower fixed, the upper
 * sliding along z or free, closed by fans round a point in the middle. Chords, not arcs, are cut to size: the girth at rest is
 * `around` chords of the circle.
 */
export function makeTube(
  radius: number,
  height: number,
  around: number,
  along: number,
  cloth: ClothStiffness = CLOTH,
  motion: RigidBody['motion'] = { kind: 'slide', axis: [0, 0, 1] },
): ShellProblem {
  const start: number[] = [];
  const chord = 2 * radius * Math.sin(Math.PI / around);
  const shift = (j: number): number => (j % 2) / 2;
  for (let j = 0; j <= along; j++) {
    for (let i = 0; i < around; i++) {
      const angle = (2 * Math.PI * (i + shift(j))) / around;
      start.push(radius * Math.cos(angle), radius * Math.sin(angle), (height * j) / along);
    }
  }
  const at = (i: number, j: number): number => (i % around) + j * around;
  const triangles: number[] = [];
  const flat: [number, number][] = [];
  // Rows are staggered, so triangles lean: corners over the middle of chords.
  const row = Math.hypot(height / along, radius - Math.sqrt(radius ** 2 - chord ** 2 / 4));
  const place = (i: number, j: number): [number, number] => [-row * j, (i + shift(j)) * chord];
  const add = (...corners: [number, number][]): void => {
    for (const [i, j] of corners) {
      triangles.push(at(i, j));
      flat.push(place(i, j));
    }
  };
  for (let j = 0; j < along; j++) {
    for (let i = 0; i < around; i++) {
      if (j % 2 === 0) {
        add([i, j], [i + 1, j], [i, j + 1]);
        add([i + 1, j], [i + 1, j + 1], [i, j + 1]);
      } else {
        add([i, j], [i + 1, j], [i + 1, j + 1]);
        add([i, j], [i + 1, j + 1], [i, j + 1]);
      }
    }
  }
  const bottom = start.length / 3;
  start.push(0, 0, 0, 0, 0, height);
  const closing: number[] = [];
  for (let i = 0; i < around; i++) {
    closing.push(at(i + 1, 0), at(i, 0), bottom);
    closing.push(at(i, along), at(i + 1, along), bottom + 1);
  }
  const ring = (j: number): number[] => Array.from({ length: around }, (_, i) => at(i, j));
  return {
    start: Float64Array.from(start),
    membrane: {
      triangles: Uint32Array.from(triangles),
      // Warp runs along z: turned by a right angle, so that outside stays up.
      restEdges: edgesOfFlat(flat),
      cloths: [cloth],
    },
    closing: Uint32Array.from(closing),
    pressure: PRESSURE,
    bodies: [
      { points: Uint32Array.from([...ring(0), bottom]), motion: { kind: 'fixed' } },
      { points: Uint32Array.from([...ring(along), bottom + 1]), motion },
    ],
  };
}

/**
 * Two flat discs sewn at the rim, cut along `around` meridians and `rings` rings, started as a lens. Along meridians, as pull runs
 * there: across them discs wrinkle. `rim` are its points, `poles` the two middles.
 */
export function makeDiscs(radius: number, around: number, rings: number, cloth: ClothStiffness) {
  const start: number[] = [];
  const flat: number[] = [];
  const add = (r: number, angle: number, side: number): number => {
    const [x, y] = [r * Math.cos(angle), r * Math.sin(angle)];
    start.push(x, y, side * 0.3 * radius * (1 - (r / radius) ** 2));
    flat.push(x, y, 0);
    return flat.length / 3 - 1;
  };
  const poles = [add(0, 0, 1), add(0, 0, -1)];
  const ringOf = (ring: number, side: number): number[] =>
    Array.from({ length: around }, (_, i) => add((radius * ring) / rings, (2 * Math.PI * i) / around, side));
  const rim = ringOf(rings, 1);
  const triangles: number[] = [];
  for (const side of [1, -1]) {
    const face = (a: number, b: number, c: number): void => {
      triangles.push(a, ...(side > 0 ? [b, c] : [c, b]));
    };
    let inner = ringOf(1, side);
    inner.forEach((p, i) => {
      face(poles[side > 0 ? 0 : 1], p, inner[(i + 1) % around]);
    });
    for (let ring = 2; ring <= rings; ring++) {
      const outer = ring === rings ? rim : ringOf(ring, side);
      for (let i = 0; i < around; i++) {
        const next = (i + 1) % around;
        if ((i + ring) % 2 === 0) {
          face(inner[i], outer[i], outer[next]);
          face(inner[i], outer[next], inner[next]);
        } else {
          face(inner[i], outer[i], inner[next]);
          face(outer[i], outer[next], inner[next]);
        }
      }
      inner = outer;
    }
  }
  const faces = Uint32Array.from(triangles);
  const problem: ShellProblem = {
    start: Float64Array.from(start),
    membrane: {
      triangles: faces,
      restEdges: edgesInSpace(Float64Array.from(flat), faces),
      cloths: [cloth],
    },
    pressure: PRESSURE,
  };
  return { problem, rim, poles };
}

/** A square sheet of `parts` × `parts` in the plane, its border held in simple shear along x, its inside started where it was at rest. */
export function makeSquare(side: number, parts: number, shear: number, cloth: ClothStiffness): ShellProblem {
  const rest: [number, number][] = [];
  const border: number[] = [];
  for (let j = 0; j <= parts; j++) {
    for (let i = 0; i <= parts; i++) {
      if (i === 0 || j === 0 || i === parts || j === parts) border.push(rest.length);
      rest.push([(side * i) / parts, (side * j) / parts]);
    }
  }
  const held = new Set(border);
  const start = rest.flatMap(([x, y], p) => [held.has(p) ? x + shear * y : x, y, 0]);
  const triangles: number[] = [];
  for (let j = 0; j < parts; j++) {
    for (let i = 0; i < parts; i++) {
      const p = i + j * (parts + 1);
      triangles.push(p, p + 1, p + parts + 2, p, p + parts + 2, p + parts + 1);
    }
  }
  return {
    start: Float64Array.from(start),
    membrane: {
      triangles: Uint32Array.from(triangles),
      restEdges: edgesOfFlat(triangles.map((p) => rest[p])),
      cloths: [cloth],
    },
    pressure: 0,
    bodies: [{ points: Uint32Array.from(border), motion: { kind: 'fixed' } }],
  };
}

/**
 * A prism of rows of the section of two arcs over a tie along x, each arc of `sides`; its first and last row held where the closed
 * form has them, those between started on a circle. Cut so that the closed form is stretched by what it pulls; so is the tie.
 */
export function makeSections(radius: number, half: number, sides: number, stiffness: number) {
  const [rows, spacing, tieStiffness] = [6, 12, 5];
  // λ · E · (λ² − 1) / 2 = p r, without change of height.
  let stretch = 1;
  for (let k = 0; k < 50; k++) stretch = Math.sqrt(1 + (2 * PRESSURE * radius) / (stiffness * stretch));
  const outline: [number, number][] = [];
  const rise = -radius * Math.cos(half);
  for (const sign of [1, -1]) {
    for (let i = 0; i < sides; i++) {
      const angle = -half + (2 * half * i) / sides;
      // From the right end of the tie over the back arc to the left, and back over the front.
      outline.push([-sign * radius * Math.sin(angle), sign * (rise + radius * Math.cos(angle))]);
    }
  }
  const around = outline.length;
  const girth = 4 * half * radius;
  const start: number[] = [];
  const flat: [number, number][] = [];
  const triangles: number[] = [];
  for (let j = 0; j <= rows; j++) {
    outline.forEach(([x, y], i) => {
      const isHeld = j === 0 || j === rows;
      const angle = (2 * Math.PI * i) / around;
      const r = 0.9 * (girth / (2 * Math.PI));
      start.push(...(isHeld ? [x, y] : [r * Math.cos(angle), r * Math.sin(angle)]), j * spacing);
    });
  }
  const side = (2 * radius * Math.sin(half / sides)) / stretch;
  for (let j = 0; j < rows; j++) {
    for (let i = 0; i < around; i++) {
      const corners = [
        [i, j],
        [i + 1, j],
        [i + 1, j + 1],
        [i, j],
        [i + 1, j + 1],
        [i, j + 1],
      ];
      for (const [u, v] of corners) {
        triangles.push((u % around) + v * around);
        flat.push([-v * spacing, u * side]);
      }
    }
  }
  const force = -2 * PRESSURE * radius * Math.cos(half) * spacing;
  const width = 2 * radius * Math.sin(half);
  const ends: number[] = [];
  for (let j = 1; j < rows; j++) ends.push(j * around, j * around + sides);
  const lengths = new Float64Array(ends.length / 2).fill(width - force / tieStiffness);
  const held = outline.flatMap((_, i) => [i, i + rows * around]);
  const problem: ShellProblem = {
    start: Float64Array.from(start),
    membrane: {
      triangles: Uint32Array.from(triangles),
      restEdges: edgesOfFlat(flat),
      cloths: [{ warp: stiffness, weft: stiffness, shear: stiffness / 5, poisson: 0 }],
    },
    pressure: PRESSURE,
    strands: { ends: Uint32Array.from(ends), lengths, stiffness: lengths.map(() => tieStiffness) },
    bodies: [{ points: Uint32Array.from(held), motion: { kind: 'fixed' } }],
  };
  const arcs = outline.map(([x, y], i) => ({ point: i + (rows / 2) * around, x, y }));
  return { problem, arcs, tie: { force, width } };
}

/** An octahedron, its faces parted into `parts`² and blown on a sphere. 8 parts² triangles. */
export function makeSphere(radius: number, parts: number) {
  const index = new Map<string, number>();
  const positions: number[] = [];
  const at = (x: number, y: number, z: number): number => {
    const key = `${x},${y},${z}`;
    if (!index.has(key)) {
      index.set(key, positions.length / 3);
      const size = Math.hypot(x, y, z) / radius;
      positions.push(x / size, y / size, z / size);
    }
    return index.get(key)!;
  };
  const triangles: number[] = [];
  for (const [sx, sy, sz] of [1, -1].flatMap((x) => [1, -1].flatMap((y) => [1, -1].map((z) => [x, y, z])))) {
    const corner = (i: number, j: number): number => at(sx * i, sy * j, sz * (parts - i - j));
    const face = (a: number, b: number, c: number): void => {
      triangles.push(a, ...(sx * sy * sz > 0 ? [b, c] : [c, b]));
    };
    for (let i = 0; i < parts; i++) {
      for (let j = 0; i + j < parts; j++) {
        face(corner(i, j), corner(i + 1, j), corner(i, j + 1));
        if (i + j + 1 < parts) face(corner(i + 1, j), corner(i + 1, j + 1), corner(i, j + 1));
      }
    }
  }
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
}

/** A ring of radius `large` of a tube of radius `small`, round z. 2 · around · along triangles. */
export function makeTorus(large: number, small: number, around: number, along: number) {
  const positions: number[] = [];
  for (let j = 0; j < along; j++) {
    for (let i = 0; i < around; i++) {
      const [u, v] = [(2 * Math.PI * i) / around, (2 * Math.PI * (j + (i % 2) / 2)) / along];
      const r = large + small * Math.cos(u);
      positions.push(r * Math.cos(v), r * Math.sin(v), small * Math.sin(u));
    }
  }
  const at = (i: number, j: number): number => (i % around) + (j % along) * around;
  const triangles: number[] = [];
  for (let j = 0; j < along; j++) {
    for (let i = 0; i < around; i++) {
      if (i % 2 === 0) {
        triangles.push(at(i, j), at(i, j + 1), at(i + 1, j));
        triangles.push(at(i + 1, j), at(i, j + 1), at(i + 1, j + 1));
      } else {
        triangles.push(at(i, j), at(i, j + 1), at(i + 1, j + 1));
        triangles.push(at(i, j), at(i + 1, j + 1), at(i + 1, j));
      }
    }
  }
  return { positions: Float64Array.from(positions), triangles: Uint32Array.from(triangles) };
}

/** Cloth at rest where it is. */
export function restHere(
  mesh: { positions: Float64Array; triangles: Uint32Array },
  cloth: ClothStiffness,
): ShellProblem {
  const { positions, triangles } = mesh;
  return {
    start: positions,
    membrane: { triangles, restEdges: edgesInSpace(positions, triangles), cloths: [cloth] },
    pressure: PRESSURE,
  };
}

/** Rest edges of triangles that are at rest as they lie in space times `scale`, warp as near to upright as it gets. */
function edgesUpright(positions: Float64Array, triangles: Uint32Array, scale = 1): Float64Array {
  const edges = new Float64Array((4 * triangles.length) / 3);
  for (let t = 0; t < triangles.length / 3; t++) {
    const [a, b, c] = [0, 1, 2].map((k) => 3 * triangles[3 * t + k]);
    const u = [0, 1, 2].map((k) => positions[b + k] - positions[a + k]);
    const v = [0, 1, 2].map((k) => positions[c + k] - positions[a + k]);
    const n = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    const size = Math.hypot(...n);
    const normal = n.map((x) => x / size);
    const rise = Math.hypot(normal[0], normal[1]);
    const warp =
      rise > 1e-9 ? [(-normal[0] * normal[2]) / rise, (-normal[1] * normal[2]) / rise, rise] : [1, 0, 0];
    const weft = [
      normal[1] * warp[2] - normal[2] * warp[1],
      normal[2] * warp[0] - normal[0] * warp[2],
      normal[0] * warp[1] - normal[1] * warp[0],
    ];
    const along = (w: readonly number[], axis: readonly number[]): number =>
      scale * (w[0] * axis[0] + w[1] * axis[1] + w[2] * axis[2]);
    edges.set([along(u, warp), along(u, weft), along(v, warp), along(v, weft)], 4 * t);
  }
  return edges;
}

/**
 * A waisted trunk: level ovals of 150 × 105 mm at the hip, narrower by a quarter at the waist, 600 mm high, on a fixed base, its top on a
 * sliding board; tied along front, back and sides to a fixed pole. Cut `scale` of its size. 2 · around · along triangles.
 */
export function makeTrunk(around: number, along: number, scale = 0.987): ShellProblem {
  const tube = makeTube(1, 1, around, along);
  const start = tube.start.slice();
  const waist = (z: number): number => 1 - 0.25 * Math.exp(-(((z - 330) / 110) ** 2)) - 0.35 * (z / 600) ** 8;
  for (let p = 0; p < start.length; p += 3) {
    const z = 600 * start[p + 2];
    start[p] *= 150 * waist(z);
    start[p + 1] *= 105 * waist(z);
    start[p + 2] = z;
  }
  const first = start.length / 3;
  const points = [...start];
  const pole: number[] = [];
  const ends: number[] = [];
  const lengths: number[] = [];
  for (let j = 1; j < along; j++) {
    const z = (600 * j) / along;
    pole.push(points.length / 3);
    points.push(0, 0, z);
    for (const quarter of [0, 1, 2, 3]) {
      const p = j * around + Math.round((quarter * around) / 4);
      ends.push(p, first + pole.length - 1);
      lengths.push(Math.hypot(start[3 * p], start[3 * p + 1]));
    }
  }
  const positions = Float64Array.from(points);
  const { triangles } = tube.membrane;
  const spacing = 600 / along;
  return {
    ...tube,
    start: positions,
    membrane: { triangles, restEdges: edgesUpright(positions, triangles, scale), cloths: [CLOTH] },
    // A strip of cloth as high as its rows are apart.
    strands: {
      ends: Uint32Array.from(ends),
      lengths: Float64Array.from(lengths),
      stiffness: Float64Array.from(lengths, (length) => (CLOTH.warp * spacing) / length),
    },
    bodies: [...tube.bodies!, { points: Uint32Array.from(pole), motion: { kind: 'fixed' } }],
  };
}
