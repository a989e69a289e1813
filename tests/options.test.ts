import { readFileSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import type { OptionTable } from '../src/core/base/index.ts';
import { GAUGE_OPTIONS } from '../src/core/gauge/index.ts';
import { INSIDE_OPTIONS } from '../src/core/inside/index.ts';
import { LAYING_OPTIONS } from '../src/core/laying/index.ts';
import { ALLOWANCE_LIMITS, PATTERN_OPTIONS } from '../src/core/pattern/index.ts';
import { CUTTER_OPTIONS, PRINT_OPTIONS } from '../src/core/sheet/index.ts';
import { parseModule, readModules, type SourceModule } from './read-imports.ts';

const top = path.resolve(import.meta.dirname, '..');
const modules = readModules(top, 'src');
const tables: Readonly<Record<string, OptionTable>> = {
  'src/core/gauge/gauge-options.ts': GAUGE_OPTIONS,
  'src/core/inside/inside-options.ts': INSIDE_OPTIONS,
  'src/core/laying/laying-options.ts': LAYING_OPTIONS,
  'src/core/pattern/pattern-options.ts': PATTERN_OPTIONS,
  'src/core/sheet/sheet-options.ts': { ...PRINT_OPTIONS, ...CUTTER_OPTIONS },
};
const keys = Object.values(tables).flatMap((table) => Object.keys(table));

describe('an option', () => {
  it('has its usual value in its table alone', () => {
    expect(modules.flatMap(findTypedAgain)).toEqual([]);
  });

  it.each(Object.entries(tables))('says in %s who reads it, and those do', (file, table) => {
    const source = modules.find((module) => module.file === file);
    if (!source) throw new Error(file);
    const readers = readersOf(source);
    for (const key of Object.keys(table)) {
      expect(readers.get(key) ?? [], key).not.toEqual([]);
      for (const reader of readers.get(key) ?? []) {
        const found = modules.filter((module) => module.file.endsWith(`/${reader}.ts`));
        expect(found.map(mentions(key)), `${reader} reads ${key}`).toEqual([true]);
      }
    }
  });

  it('is told in README.md as it is', () => {
    const readme = readFileSync(path.join(top, 'README.md'), 'utf8');
    const row = (name: string) => {
      const cells = readme
        .split('\n')
        .find((line) => line.startsWith(`| \`--${name}`))
        ?.split('|');
      return { what: cells?.[2].trim(), usual: cells?.[3].trim() };
    };
    const { smallest, largest } = ALLOWANCE_LIMITS;
    expect(row('allowance LENGTH').what).toContain(`${smallest} to ${largest} mm`);
    expect(row('allowance LENGTH').usual).toBe(`as saved, else ${PATTERN_OPTIONS.allowance.usual} mm`);
    expect(row('notches').usual).toBe(`as saved, else \`${PATTERN_OPTIONS.notchShape.usual}\``);
    for (const shape of PATTERN_OPTIONS.notchShape.choices)
      expect(row('notches').what).toContain(`\`${shape}\``);
    expect(row('paper').usual).toBe(`\`${PRINT_OPTIONS.paper.usual}\``);
    expect(row('margin').usual).toBe(`${PRINT_OPTIONS.margin.usual} mm`);
    expect(row('butt').usual).toBe(`${PRINT_OPTIONS.overlap.usual} mm overlap`);
    expect(row('kerf').usual).toBe(`${CUTTER_OPTIONS.kerf.usual}`);
    expect(row('blade-offset').usual).toBe(`${CUTTER_OPTIONS.bladeOffset.usual}`);
    expect(row('overcut').usual).toBe(`${CUTTER_OPTIONS.overcut.usual}`);
  });
});

describe('the search for values typed again', () => {
  it.each([
    ['a fallback', 'const d = options.tubeDiameter ?? 25;'],
    ['a fallback behind a question mark', 'const d = project?.inside?.straps ?? true;'],
    ['a fallback of a name', "const p = paper ?? 'a4';"],
    ['a default when taken apart', 'const { clothThickness = 0.6 } = options;'],
    ['a default under another name', "const { paper: id = 'a4' } = options;"],
    ['a default of a parameter', 'function f(clothThickness = 0.6) {}'],
    ['a usual value of a field', 'const field = <LengthRow usual={10} />;'],
    ['limits of a field', 'const field = <LengthRow limits={{ min: 0, max: 50 }} />;'],
    ['a row of fields', "const rows = [{ id: 'tubeDiameter', usual: 25 }];"],
  ])('sees %s', (_, text) => {
    expect(findTypedAgain(parseModule('src/app/views/inside/a.tsx', text))).toHaveLength(1);
  });

  it.each([
    ['a value of the table', 'const d = options.tubeDiameter ?? INSIDE_OPTIONS.tubeDiameter.usual;'],
    ['another name', 'const d = options.somethingElse ?? 25;'],
    ['limits of the table', 'const field = <LengthRow usual={OPTIONS.kerf.usual} limits={OPTIONS.kerf} />;'],
  ])('allows %s', (_, text) => {
    expect(findTypedAgain(parseModule('src/app/views/inside/a.tsx', text))).toEqual([]);
  });
});

/** `file:line text` wherever a default of an option's key, or limits of a field, are typed as such. */
function findTypedAgain({ file, source }: SourceModule): string[] {
  if (file in tables) return [];
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (isDefaultOfKey(node) || isNumberOfField(node)) {
      const line = source.getLineAndCharacterOfPosition(node.getStart()).line + 1;
      found.push(`${file}:${line} ${node.getText()}`);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function isDefaultOfKey(node: ts.Node): boolean {
  if (ts.isBinaryExpression(node) && node.operatorToken.kind === ts.SyntaxKind.QuestionQuestionToken)
    return keys.includes(lastNameOf(node.left)) && isTyped(node.right);
  if (ts.isBindingElement(node)) return isKey(node.propertyName ?? node.name) && isTyped(node.initializer);
  return ts.isParameter(node) && isKey(node.name) && isTyped(node.initializer);
}

/** In the app: `usual` or `limits` of a field as numbers. */
function isNumberOfField(node: ts.Node): boolean {
  if (!ts.isJsxAttribute(node) && !ts.isPropertyAssignment(node)) return false;
  if (!node.getSourceFile().fileName.startsWith('src/app/views/')) return false;
  const { initializer } = node;
  const value = initializer && ts.isJsxExpression(initializer) ? initializer.expression : initializer;
  const name = node.name.getText();
  if (name === 'usual') return value !== undefined && ts.isNumericLiteral(value);
  return name === 'limits' && value !== undefined && ts.isObjectLiteralExpression(value);
}

function isKey(name: ts.Node): boolean {
  return keys.includes(name.getText());
}

function lastNameOf(node: ts.Expression): string {
  return ts.isPropertyAccessExpression(node) ? node.name.text : node.getText();
}

function isTyped(value: ts.Expression | undefined): boolean {
  if (value === undefined) return false;
  if (ts.isPrefixUnaryExpression(value)) return isTyped(value.operand);
  if (ts.isArrayLiteralExpression(value)) return value.elements.some(isTyped);
  const words = [ts.SyntaxKind.TrueKeyword, ts.SyntaxKind.FalseKeyword];
  return ts.isNumericLiteral(value) || ts.isStringLiteralLike(value) || words.includes(value.kind);
}

/** Names of the files told in “Read in `a`, `b`.” of every entry, by key. */
function readersOf({ source }: SourceModule): Map<string, string[]> {
  const readers = new Map<string, string[]>();
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAssignment(node)) {
      const comment = ts.getJSDocCommentsAndTags(node).map((one) => one.getText().replace(/\n *\*/g, ' '));
      const told = /Read in\s+((?:`[a-z-]+`[,\s]*)+)\./.exec(comment.join())?.[1] ?? '';
      readers.set(
        node.name.getText(),
        [...told.matchAll(/`([a-z-]+)`/g)].map(([, name]) => name),
      );
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return readers;
}

/** Whether the name stands in a module, outside comments. */
function mentions(key: string): (module: SourceModule) => boolean {
  return ({ source }) => {
    const has = (node: ts.Node): boolean =>
      (ts.isIdentifier(node) && node.text === key) || (ts.forEachChild(node, has) ?? false);
    return has(source);
  };
}
