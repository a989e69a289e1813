import type { Project } from './project.ts';

/** Order of keys in the file; keys not named here follow in alphabetical order. */
const keyOrder = [
  'format',
  'version',
  'name',
  'person',
  'displayUnits',
  'body',
  'seams',
  'cloth',
  'inside',
  'cutting',
  'laying',
  'making',
  'checking',
  'figure',
  'measures',
  'readings',
  'shape',
  'layout',
  'left',
  'right',
];

/**
 * The project as the text of a `*.loftseam.json` file: two-space indents, a newline at the end, keys always in the
 * same order, so that the same project gives the same bytes and two versions compare line by line.
 */
export function serializeProject(project: Project): string {
  return `${JSON.stringify(inOrder(project), null, 2)}\n`;
}

function inOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOrder);
  if (typeof value !== 'object' || value === null) return value;
  const keys = Object.keys(value).sort((a, b) => rank(a) - rank(b) || (a < b ? -1 : 1));
  return Object.fromEntries(keys.map((key) => [key, inOrder((value as Record<string, unknown>)[key])]));
}

function rank(key: string): number {
  const index = keyOrder.indexOf(key);
  return index < 0 ? keyOrder.length : index;
}
