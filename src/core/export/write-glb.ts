import { Document, WebIO } from '@gltf-transform/core';
import { assertInvariant } from '../base/index.ts';
import type { Mesh } from '../mesh/index.ts';

export interface GlbMesh {
  readonly name: string;
  readonly mesh: Mesh;
  /** `#rrggbb`, default a light grey. */
  readonly colour?: string;
}

export interface GlbContent {
  readonly meshes: readonly GlbMesh[];
  /** Written into the file's asset record. */
  readonly generator: string;
}

const MM_PER_METRE = 1000;
const DEFAULT_COLOUR = '#c9c4ba';

/**
 * Binary glTF 2.0: metres, +Y up, the front towards +Z and the wearer's right towards −X, as the standard asks of
 * an asset (§3.4). One node, mesh and matt two-sided material each; smooth normals, weighted by area. Positions
 * and normals are single precision: a rounding of at most 0.0001 mm at this size. Same input, same bytes.
 * Throws on an empty mesh, a position that is not finite or a colour not in `#rrggbb`.
 */
export async function writeGlb(content: GlbContent): Promise<Uint8Array> {
  const document = new Document();
  document.getRoot().getAsset().generator = content.generator;
  const buffer = document.createBuffer();
  const scene = document.createScene();
  document.getRoot().setDefaultScene(scene);
  for (const { name, mesh, colour = DEFAULT_COLOUR } of content.meshes) {
    checkMesh(name, mesh);
    const accessor = (type: 'VEC3' | 'SCALAR', array: Float32Array<ArrayBuffer> | Uint32Array<ArrayBuffer>) =>
      document.createAccessor().setType(type).setArray(array).setBuffer(buffer);
    const material = document
      .createMaterial(name)
      .setBaseColorFactor([...linearFromHex(colour), 1])
      .setMetallicFactor(0)
      .setRoughnessFactor(0.9)
      .setDoubleSided(true);
    const primitive = document
      .createPrimitive()
      .setAttribute('POSITION', accessor('VEC3', turnUp(mesh.positions, 1 / MM_PER_METRE)))
      .setAttribute('NORMAL', accessor('VEC3', turnUp(smoothNormals(mesh), 1)))
      .setIndices(accessor('SCALAR', Uint32Array.from(mesh.triangles)))
      .setMaterial(material);
    scene.addChild(document.createNode(name).setMesh(document.createMesh(name).addPrimitive(primitive)));
  }
  return new WebIO().writeBinary(document);
}

function checkMesh(name: string, mesh: Mesh): void {
  const vertexCount = mesh.positions.length / 3;
  assertInvariant(mesh.triangles.length > 0, 'export', `mesh ${name} has triangles`, mesh.triangles.length);
  assertInvariant(
    mesh.positions.every(Number.isFinite),
    'export',
    `mesh ${name} has finite positions`,
    'not finite',
  );
  const last = mesh.triangles.reduce((most, index) => Math.max(most, index), 0);
  assertInvariant(last < vertexCount, 'export', `mesh ${name} uses vertices below ${vertexCount}`, last);
}

/** (right, front, up) to (−X, Z, Y) of glTF: a rotation, so triangles keep their winding. */
function turnUp(vectors: Float64Array, scale: number): Float32Array<ArrayBuffer> {
  const turned = new Float32Array(vectors.length);
  for (let i = 0; i < vectors.length; i += 3) {
    turned[i] = -vectors[i] * scale;
    turned[i + 1] = vectors[i + 2] * scale;
    turned[i + 2] = vectors[i + 1] * scale;
  }
  return turned;
}

/** #V × 3 unit normals: mean of the touching triangles' normals weighted by area; straight up where there is none. */
function smoothNormals(mesh: Mesh): Float64Array {
  const { positions, triangles } = mesh;
  const normals = new Float64Array(positions.length);
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [3 * triangles[t], 3 * triangles[t + 1], 3 * triangles[t + 2]];
    const ux = positions[b] - positions[a];
    const uy = positions[b + 1] - positions[a + 1];
    const uz = positions[b + 2] - positions[a + 2];
    const vx = positions[c] - positions[a];
    const vy = positions[c + 1] - positions[a + 1];
    const vz = positions[c + 2] - positions[a + 2];
    for (const corner of [a, b, c]) {
      normals[corner] += uy * vz - uz * vy;
      normals[corner + 1] += uz * vx - ux * vz;
      normals[corner + 2] += ux * vy - uy * vx;
    }
  }
  for (let i = 0; i < normals.length; i += 3) {
    const length = Math.hypot(normals[i], normals[i + 1], normals[i + 2]);
    if (length > 1e-12) for (let k = 0; k < 3; k++) normals[i + k] /= length;
    else normals.set([0, 0, 1], i);
  }
  return normals;
}

/** sRGB bytes to the linear factors glTF wants (IEC 61966-2-1 transfer function). */
function linearFromHex(colour: string): [number, number, number] {
  assertInvariant(/^#[0-9a-f]{6}$/i.test(colour), 'export', 'a colour is #rrggbb', colour);
  const channel = (at: number): number => {
    const value = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [channel(1), channel(3), channel(5)];
}
