import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';

/** One source file and what the walls look at. Paths are relative to the top of the project, with forward slashes. */
export interface SourceModule {
  readonly file: string;
  readonly source: ts.SourceFile;
  readonly imports: readonly ModuleImport[];
}

export interface ModuleImport {
  /** As written. */
  readonly specifier: string;
  /** Project-relative file for relative imports, undefined for packages. */
  readonly target: string | undefined;
  readonly line: number;
  /** Erased when compiled. */
  readonly isTypeOnly: boolean;
}

/** Every .ts and .tsx file under `folder`, parsed. */
export function readModules(top: string, folder: string): SourceModule[] {
  return listSources(path.join(top, folder)).map((full) => {
    const file = path.relative(top, full).replaceAll(path.sep, '/');
    return parseModule(file, readFileSync(full, 'utf8'));
  });
}

/** Static and dynamic imports, re-exports, `import x = require()`, `import('…')` types, worker URLs: type imports count. */
export function parseModule(file: string, text: string): SourceModule {
  const kind = file.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ESNext, true, kind);
  const imports: ModuleImport[] = [];
  const add = (node: ts.Node, specifier: string) => {
    const line = source.getLineAndCharacterOfPosition(node.getStart()).line + 1;
    const target = specifier.startsWith('.')
      ? path.posix.join(path.posix.dirname(file), specifier)
      : undefined;
    imports.push({ specifier, target: target?.split('?')[0], line, isTypeOnly: isErased(node) });
  };
  const visit = (node: ts.Node): void => {
    const specifier = specifierOf(node);
    if (specifier !== undefined) add(node, specifier);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return { file, source, imports };
}

function specifierOf(node: ts.Node): string | undefined {
  if ((ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier) {
    return textOf(node.moduleSpecifier);
  }
  if (ts.isExternalModuleReference(node)) return textOf(node.expression);
  if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) return textOf(node.argument.literal);
  if (ts.isCallExpression(node) && node.arguments.length > 0) {
    const isImport = node.expression.kind === ts.SyntaxKind.ImportKeyword;
    const isRequire = ts.isIdentifier(node.expression) && node.expression.text === 'require';
    if (isImport || isRequire) return textOf(node.arguments[0]) ?? 'computed import';
  }
  const isUrl =
    ts.isNewExpression(node) && ts.isIdentifier(node.expression) && node.expression.text === 'URL';
  const first = isUrl ? node.arguments?.[0] : undefined;
  const second = isUrl ? node.arguments?.[1] : undefined;
  if (first && second?.getText().includes('import.meta.url')) return textOf(first);
  return undefined;
}

function isErased(node: ts.Node): boolean {
  if (ts.isImportTypeNode(node)) return true;
  if (ts.isExportDeclaration(node)) return node.isTypeOnly;
  if (!ts.isImportDeclaration(node) || !node.importClause) return false;
  const { phaseModifier, namedBindings, name } = node.importClause;
  if (phaseModifier === ts.SyntaxKind.TypeKeyword) return true;
  const named = namedBindings && ts.isNamedImports(namedBindings) ? namedBindings.elements : undefined;
  return name === undefined && named !== undefined && named.every((element) => element.isTypeOnly);
}

function textOf(node: ts.Node): string | undefined {
  return ts.isStringLiteralLike(node) ? node.text : undefined;
}

function listSources(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name) && !entry.name.endsWith('.d.ts'))
    .map((entry) => path.join(entry.parentPath, entry.name))
    .sort();
}
