/** What a person reads on an edge that is not a seam. */
export function nameOfOpening(id: string): string {
  return id.startsWith('armhole') ? 'armhole' : id;
}
