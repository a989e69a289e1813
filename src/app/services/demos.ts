/** A body that comes with the program. */
export interface Demo {
  readonly id: string;
  /** The project file. */
  readonly load: () => Promise<string>;
}

const texts = import.meta.glob<string>('../../../shared/demos/*.loftseam.json', {
  query: '?raw',
  import: 'default',
});
const FIRST = 'average';

export const demos: readonly Demo[] = Object.entries(texts)
  .map(([path, load]) => ({ id: path.replace(/^.*\/|\.loftseam\.json$/g, ''), load }))
  .sort((a, b) => Number(b.id === FIRST) - Number(a.id === FIRST));
