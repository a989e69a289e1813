import { BufferAttribute, BufferGeometry, Color, SRGBColorSpace } from 'three';
import type { Form } from '../../core/form/index.ts';
import { greaterStrain, strainColour } from '../store/index.ts';
import { WEAVE_REPEAT } from './cloth-weave.ts';

/** About how much cloth lies round the body per radian of the chart, mm. */
const GIRTH_PER_RADIAN = 150;

/** Buffers of one panel on the body; normals come from the whole shell, so seams stay smooth. */
export interface PanelBuffers {
  readonly id: string;
  readonly geometry: BufferGeometry;
  /** Where in the weave each vertex lies, #V × 2 repeats. */
  readonly weave: Float32Array;
  /** Linear RGB per vertex. */
  readonly strainColours: Float32Array;
}

/** One geometry per panel. The caller disposes of them. */
export function panelBuffers(form: Form, normals: Float64Array): PanelBuffers[] {
  return form.shell.panels.map((panel, index) => {
    const geometry = new BufferGeometry();
    const vertexCount = panel.sourceVertex.length;
    const normal = new Float32Array(vertexCount * 3);
    for (let v = 0; v < vertexCount; v++) {
      const source = panel.sourceVertex[v]! * 3;
      normal.set(normals.subarray(source, source + 3), v * 3);
    }
    geometry.setAttribute('position', new BufferAttribute(new Float32Array(panel.mesh.positions), 3));
    geometry.setAttribute('normal', new BufferAttribute(normal, 3));
    geometry.setAttribute('color', new BufferAttribute(new Float32Array(vertexCount * 3).fill(1), 3));
    const weave = weavePlaces(panel.chart, form.flat[index]?.positions);
    geometry.setAttribute('uv', new BufferAttribute(weave.slice(), 2));
    geometry.setIndex(new BufferAttribute(new Uint32Array(panel.mesh.triangles), 1));
    const strain = form.flat[index]?.strain;
    const strainColours = strain
      ? vertexColours(panel.mesh.triangles, vertexCount, strain.major, strain.minor)
      : new Float32Array(vertexCount * 3).fill(1);
    return { id: panel.id, geometry, weave, strainColours };
  });
}

/**
 * Where in the weave each vertex lies, #V × 2 repeats: as on the flat piece, whose threads run as it was cut; by the
 * chart (#V × 2) while there is none yet.
 */
function weavePlaces(chart: Float64Array, flat: Float64Array | undefined): Float32Array {
  const places = new Float32Array(flat ?? chart);
  for (let i = 0; i < places.length; i++)
    places[i]! *= (flat || i % 2 === 1 ? 1 : GIRTH_PER_RADIAN) / WEAVE_REPEAT;
  return places;
}

/** Strain per face averaged to vertices, then coloured. */
function vertexColours(
  triangles: Uint32Array,
  vertexCount: number,
  major: Float64Array,
  minor: Float64Array,
): Float32Array {
  const sum = new Float64Array(vertexCount);
  const count = new Uint16Array(vertexCount);
  for (let f = 0; f < major.length; f++) {
    const strain = greaterStrain(major[f]!, minor[f]!);
    for (let k = 0; k < 3; k++) {
      const v = triangles[f * 3 + k]!;
      sum[v]! += strain;
      count[v]! += 1;
    }
  }
  const colours = new Float32Array(vertexCount * 3);
  const colour = new Color();
  for (let v = 0; v < vertexCount; v++) {
    colour.setRGB(...strainColour(sum[v]! / Math.max(1, count[v]!)), SRGBColorSpace).toArray(colours, v * 3);
  }
  return colours;
}

/** Triangles that close the shell (plates), as a flat-shaded geometry; null when there are none. */
export function plateGeometry(form: Form): BufferGeometry | null {
  const { positions, triangles } = form.closedMesh;
  const shellCount = form.shell.mesh.triangles.length;
  if (triangles.length <= shellCount) return null;
  const corners = new Float32Array((triangles.length - shellCount) * 3);
  for (let i = shellCount; i < triangles.length; i++) {
    const v = triangles[i]! * 3;
    corners.set(positions.subarray(v, v + 3), (i - shellCount) * 3);
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(corners, 3));
  geometry.computeVertexNormals();
  return geometry;
}

/** Points of shell vertices lifted a little off the cloth, n × 3, for lines that must not sink into it. */
export function liftedPath(
  vertices: Uint32Array,
  positions: Float64Array,
  normals: Float64Array,
  lift: number,
  isClosed = false,
): Float32Array {
  const count = vertices.length + (isClosed ? 1 : 0);
  const points = new Float32Array(count * 3);
  for (let i = 0; i < count; i++) {
    const v = vertices[i % vertices.length]! * 3;
    for (let k = 0; k < 3; k++) points[i * 3 + k] = positions[v + k]! + normals[v + k]! * lift;
  }
  return points;
}
