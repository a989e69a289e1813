import type { FormFile } from '../core/files/index.ts';
import type { Reader } from './create-reader.ts';

/** How many pages and joints each printed pattern among the files has, a line each. */
export function tellPages(files: readonly FormFile[], { words, say }: Reader): string[] {
  return files.flatMap(({ printed }) => {
    if (!printed) return [];
    const { paper, pages, patternPages, joints } = printed;
    return [words.plan.print(say(paper), pages, patternPages, joints)];
  });
}
