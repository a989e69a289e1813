import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';

const root = path.resolve(import.meta.dirname, '../..');

/**
 * Writes the types of the library's entries (paths of sources) and of all they reach below `out`, as `core/body/index.d.ts`.
 * Leaves out what is marked `@internal`. Throws when a type would need a package: then a user's compiler could not read it.
 */
export function writeDeclarations(entries: readonly string[], out: string): void {
  const texts = emitDeclarations(entries);
  const reached = new Set(entries.map((entry) => path.relative(root, entry).replace(/\.ts$/, '.d.ts')));
  for (const file of reached) {
    const text = texts.get(file);
    if (text === undefined) throw new Error(`There are no types ${file}.`);
    for (const [, specifier] of text.matchAll(/(?:\bfrom |\bimport\(|^import )['"]([^'"]+)['"]/gm)) {
      if (!specifier.startsWith('.') || !specifier.endsWith('.ts'))
        throw new Error(`The types ${file} need ${specifier}, which the package does not hold.`);
      reached.add(path.join(path.dirname(file), specifier.replace(/\.ts$/, '.d.ts')));
    }
    const target = path.join(out, path.relative('src', file));
    mkdirSync(path.dirname(target), { recursive: true });
    writeFileSync(target, text);
  }
}

/** Texts of all declarations of the core and of what else is reached, by path from the top of the project. Types are not checked here. */
function emitDeclarations(entries: readonly string[]): Map<string, string> {
  const folder = path.join(root, 'src/core');
  const read = ts.readConfigFile(path.join(folder, 'tsconfig.json'), ts.sys.readFile);
  const { options, fileNames } = ts.parseJsonConfigFileContent(read.config, ts.sys, folder);
  const program = ts.createProgram([...new Set([...fileNames, ...entries])], {
    ...options,
    ...{ noEmit: false, declaration: true, emitDeclarationOnly: true, stripInternal: true, noCheck: true },
    ...{ rootDir: root, outDir: root },
  });
  const texts = new Map<string, string>();
  const { diagnostics } = program.emit(undefined, (file, text) => texts.set(path.relative(root, file), text));
  const faults = diagnostics.map(({ messageText }) => ts.flattenDiagnosticMessageText(messageText, ' '));
  if (faults.length > 0) throw new Error(faults.join('\n'));
  return texts;
}
