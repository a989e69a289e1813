import path from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { parseModule, readModules, type SourceModule } from '../read-imports.ts';

/** Commands for contributors: they speak English only. */
const FOR_CONTRIBUTORS = [
  ...[
    'filled-table',
    'form-pictures',
    'landmark-columns',
    'landmarks',
    'nest-table',
    'pictures',
    'places-of-body',
    'stages',
    'stages-page',
    'strain-table',
    'summarise-survey',
    'survey',
    'survey-columns',
  ],
].map((name) => `src/cli/${name}.ts`);

const modules = readModules(path.resolve(import.meta.dirname, '../..'), 'src/cli').filter(
  ({ file }) => !FOR_CONTRIBUTORS.includes(file),
);

/** Texts of three words or more, whole or between what is put in, as `file:line text`. */
function findSentences({ file, source }: SourceModule): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) return;
    const isText =
      ts.isStringLiteralLike(node) ||
      ts.isTemplateHead(node) ||
      ts.isTemplateMiddle(node) ||
      ts.isTemplateTail(node);
    if (isText && (node.text.match(/\p{L}{2,}/gu) ?? []).length >= 3 && !isPlace(node))
      found.push(`${file}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1} ${node.text}`);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** A file's path or an address, not words. */
function isPlace(node: ts.LiteralLikeNode): boolean {
  return /^[\w@.-]*(\/[\w@.-]+)+\/?$/.test(node.text);
}

describe('the sources of the command line', () => {
  it('hold no sentence that somebody would read', () => {
    expect(modules.length).toBeGreaterThan(20);
    expect(modules.flatMap(findSentences)).toEqual([]);
  });

  it.each([
    ["write('Nothing was measured yet.');"],
    [`write(\`\${count} parts are missing there\`);`],
    [`write(\`There are two of \${name}\`);`],
    ['command.option("--map", "also draw the distances");'],
  ])('would be found out by %s', (text) => {
    expect(findSentences(parseModule('src/cli/a.ts', text))).toHaveLength(1);
  });

  it.each([
    ["import { readFile } from 'node:fs/promises';"],
    ["resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf');"],
    ["write('\\r\\u001b[2K');"],
    ["command.option('--blade-offset');"],
  ])('may hold %s', (text) => {
    expect(findSentences(parseModule('src/cli/a.ts', text))).toEqual([]);
  });
});
