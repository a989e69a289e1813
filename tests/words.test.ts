import path from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { parseModule, readModules, type SourceModule } from './read-imports.ts';

const top = path.resolve(import.meta.dirname, '..');

/** Three words in a row: a sentence, or a piece of one. */
const SENTENCE = /(?:^|[\s“(])\p{L}[\p{L}’'-]*[,;:.]? \p{L}[\p{L}’'-]*[,;:.]? \p{L}/u;
/** Files of open standards, whose readers are programs: their headers and fonts are nobody's to translate. */
const FOR_PROGRAMS = /^src\/core\/export\/write-(obj|stl|svg|dxf|pdf)\.ts$/;
/** A broken promise is told to contributors. */
const FOR_CONTRIBUTORS = /^(assertInvariant|InvariantError)$/;

/** `file:line text` of every sentence in a source file, said to whoever. */
function findSentences({ file, source }: SourceModule): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node)) return;
    const isTold = (ts.isCallExpression(node) || ts.isNewExpression(node)) && node.expression.getText();
    if (isTold && FOR_CONTRIBUTORS.test(isTold)) return;
    const text = ts.isStringLiteralLike(node)
      ? node.text
      : ts.isTemplateExpression(node)
        ? [node.head, ...node.templateSpans.map(({ literal }) => literal)]
            .map((part) => part.text)
            .join(' {} ')
        : '';
    if (SENTENCE.test(text)) {
      const line = source.getLineAndCharacterOfPosition(node.getStart()).line + 1;
      found.push(`${file}:${line} ${text.slice(0, 60)}`);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

describe('the core', () => {
  it('says nothing in any language: phrases by id, worded by the catalogues', () => {
    const core = readModules(top, 'src/core');
    expect(core.length).toBeGreaterThan(300);
    expect(core.filter(({ file }) => !FOR_PROGRAMS.test(file)).flatMap(findSentences)).toEqual([]);
  });

  it('joins the table of phrases of every room to those the catalogues must hold', () => {
    const blocks = readModules(top, 'src').flatMap(({ source }) => source.text.split(/^(?=export )/m));
    const textOf = new Map(
      blocks.flatMap((text) => {
        const [, name] = /^export (?:interface|type) (\w+Phrases)\b/.exec(text) ?? [];
        return name ? [[name, text] as const] : [];
      }),
    );
    const joined = new Set<string>();
    const join = (name: string): void => {
      if (joined.has(name)) return;
      joined.add(name);
      for (const part of textOf.get(name)?.match(/\b[A-Z]\w*Phrases\b/g) ?? []) join(part);
    };
    join('CorePhrases');
    expect(textOf.size).toBeGreaterThan(30);
    expect([...textOf.keys()].filter((name) => !joined.has(name))).toEqual([]);
  });

  it.each([
    ['a message', "const message = 'The neck is wide';"],
    ['a message with a number', `const message = \`\${n} mm are needed\`;`],
    ['a piece of a sentence', "const rest = 'is too large for';"],
  ])('is caught saying %s', (_, text) => {
    expect(findSentences(parseModule('src/core/a.ts', text))).toHaveLength(1);
  });

  it.each([
    ['an id', "const id = 'measure-out-of-range';"],
    ['a broken promise', "assertInvariant(ok, 'mesh', 'every edge has two faces', n);"],
    ['a type', "type Side = 'the right hand side';"],
    ['an import', "import x from './the right hand side.ts';"],
  ])('may hold %s', (_, text) => {
    expect(findSentences(parseModule('src/core/a.ts', text))).toEqual([]);
  });
});
