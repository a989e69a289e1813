import ts from 'typescript';
import type { ModuleImport, SourceModule } from './read-imports.ts';

/** Rooms of the core from the bottom up: a room imports only rooms before it, through their index.ts. */
export const coreRooms = [
  'base',
  'math',
  'drawing',
  'nesting',
  'mesh',
  'statics',
  'body',
  'seams',
  'sewing',
  'flatten',
  'pattern',
  'inside',
  'simulate',
  'filled',
  'picture',
  'sheet',
  'laying',
  'export',
  'project',
  'gauge',
  'form',
  'assembly',
  'making',
  'booklet',
  'files',
  'advice',
  'refit',
  'pipeline',
] as const;

/** Packages the core may use: pure computing only. */
const corePackages = new Map([
  ['robust-predicates', ['math']],
  ['earcut', ['mesh', 'seams']],
  ['delaunator', ['mesh', 'seams']],
  ['@kninnug/constrainautor', ['mesh', 'seams']],
  ['clipper2-ts', ['nesting', 'pattern', 'inside', 'sheet']],
  ['@gltf-transform/core', ['export']],
  ['@cantoo/pdf-lib', ['export']],
  ['fontkit', ['export']],
  ['fflate', ['export']],
  ['dejavu-fonts-ttf', ['export']],
  ['zod', ['project']],
]);

/** Names that would tie the core to a place, a clock or chance. */
const forbiddenInCore = new Set([
  ...['window', 'document', 'self', 'navigator', 'location', 'localStorage', 'sessionStorage', 'indexedDB'],
  ...['alert', 'fetch', 'XMLHttpRequest', 'WebSocket', 'Worker', 'postMessage', 'importScripts'],
  ...['requestAnimationFrame', 'setTimeout', 'setInterval', 'setImmediate', 'queueMicrotask'],
  ...['process', 'Buffer', 'global', 'globalThis', '__dirname', '__filename', 'require', 'module', 'fs'],
  ...['console', 'performance', 'Date', 'crypto', 'eval', 'Function', 'Intl'],
]);

/** `file:line what` for every breach of the walls. An empty list is a house in order. */
export function findBreaches(modules: readonly SourceModule[]): string[] {
  return [...modules.flatMap(breachesOfModule), ...findCircles(modules)];
}

function breachesOfModule(module: SourceModule): string[] {
  return [
    ...module.imports.flatMap((imported) => {
      const breach = breachOfImport(module.file, imported);
      return breach === undefined ? [] : [`${module.file}:${imported.line} ${breach}`];
    }),
    ...(module.file.startsWith('src/core/') ? findImpurities(module) : []),
  ];
}

/**
 * Files that import each other in a circle, through types only or not, each circle as `a imports b imports a`. Every knot of
 * circles shows at least one of its own; a file reached on two ways is no circle.
 */
export function findCircles(modules: readonly SourceModule[]): string[] {
  const targetsOf = new Map(modules.map(({ file, imports }) => [file, imports.map(({ target }) => target)]));
  const found: string[] = [];
  const isDone = new Set<string>();
  const visit = (file: string, way: readonly string[]): void => {
    if (isDone.has(file)) return;
    const here = [...way, file];
    for (const target of new Set(targetsOf.get(file))) {
      if (target === undefined || !targetsOf.has(target)) continue;
      const start = here.indexOf(target);
      if (start < 0) visit(target, here);
      else found.push(`${[...here.slice(start), target].join(' imports ')}: a circle`);
    }
    isDone.add(file);
  };
  for (const { file } of modules) visit(file, []);
  return found;
}

/** Room of a core file, door or app side: `core/mesh`, `core` for the library's index, `cli`, `language`, `app` for main.tsx and those beside it. */
export function placeOf(file: string): string {
  const [, door, room, rest] = file.split('/');
  if (door === 'cli' || door === 'language') return door;
  return rest === undefined ? door : `${door}/${room}`;
}

function breachOfImport(file: string, imported: ModuleImport): string | undefined {
  const from = placeOf(file);
  if (imported.target === undefined) return breachOfPackage(from, imported.specifier);
  const target = imported.target;
  if (target.startsWith('shared/')) return undefined;
  if (!/\.[a-z]+$/.test(target)) return `imports ${imported.specifier} without its extension`;
  if (target.startsWith('..')) return `reaches outside the project: ${imported.specifier}`;
  if (!target.startsWith('src/')) return `imports ${target}, which is not source`;
  const to = placeOf(target);
  if (from === to) return undefined;
  if (from === 'build') return `imports ${to}: the build reads the others, it calls none`;
  return to.startsWith('core/')
    ? breachIntoCore(from, to, imported)
    : breachIntoApp(from, to, imported.isTypeOnly);
}

function breachIntoCore(from: string, to: string, imported: ModuleImport): string | undefined {
  if (!imported.target?.endsWith('/index.ts')) return `enters ${to} other than through its index.ts`;
  const isOfPage = from === 'language' || (from.startsWith('app') && from !== 'app/worker');
  if (isOfPage && !imported.isTypeOnly && isHeavy(to)) {
    return `runs ${to} outside the worker`;
  }
  if (!from.startsWith('core/')) return undefined;
  const fromRank = rankOf(from);
  const toRank = rankOf(to);
  if (fromRank < 0 || toRank < 0) return `${fromRank < 0 ? from : to} is not a known room`;
  return toRank < fromRank
    ? undefined
    : `${from} (${fromRank}) imports ${to} (${toRank}), which is not below it`;
}

/** Rooms that make a form or work on one: the page's own thread names their types only. */
function isHeavy(place: string): boolean {
  return rankOf(place) >= rankOf('core/form');
}

function rankOf(place: string): number {
  return (coreRooms as readonly string[]).indexOf(place.replace('core/', ''));
}

/** Who in the app may see whom; main.tsx and those beside it see all. */
const appSight: Readonly<Record<string, readonly string[]>> = {
  'app/calls': [],
  'app/store': ['app/calls'],
  'app/worker': ['app/calls'],
  'app/services': ['app/store', 'app/calls'],
  'app/scene': ['app/store'],
  'app/views': ['app/store', 'app/calls', 'app/services'],
};

function breachIntoApp(from: string, to: string, isTypeOnly: boolean): string | undefined {
  // Words stand below command line and app; the core knows none.
  if (to === 'language' && !from.startsWith('core/')) return undefined;
  if (!to.startsWith('app') || from === 'language') return `${from} imports ${to}: doors are strangers`;
  if (from === 'app') return undefined;
  // The services are handed to the views: they know their types only.
  if (to === 'app/services' && !isTypeOnly) return `${from} runs ${to}`;
  return appSight[from]?.includes(to) ? undefined : `${from} imports ${to}`;
}

function breachOfPackage(from: string, specifier: string): string | undefined {
  const name = specifier.startsWith('@')
    ? specifier.split('/').slice(0, 2).join('/')
    : specifier.split('/')[0];
  const isThree = name === 'three' || name.startsWith('@react-three');
  const isReact = name === 'react' || name === 'react-dom';
  if (from === 'core' || from.startsWith('core/')) {
    const rooms = corePackages.get(name);
    if (rooms === undefined) return `core imports the package ${name}`;
    return rooms.includes(from.replace('core/', ''))
      ? undefined
      : `${from} imports ${name}, which is for ${rooms}`;
  }
  if (isThree && from !== 'app/scene') return `${from} imports ${name}: only the scene does`;
  if (isReact && !['app', 'app/scene', 'app/views'].includes(from)) return `${from} imports ${name}`;
  if (specifier.startsWith('node:') && from !== 'cli' && from !== 'build')
    return `${from} imports ${specifier}`;
  return undefined;
}

/** Forbidden names used as values, Math.random, module-level `let`, and module-level mutable scratch. */
function findImpurities(module: SourceModule): string[] {
  const found: string[] = [];
  const { source } = module;
  const say = (node: ts.Node, what: string) => {
    found.push(`${module.file}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1} ${what}`);
  };
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node) && forbiddenInCore.has(node.text) && isGlobalUse(node))
      say(node, `uses ${node.text}`);
    if (ts.isPropertyAccessExpression(node) && node.getText() === 'Math.random')
      say(node, 'uses Math.random');
    if (ts.isMetaProperty(node)) say(node, `uses ${node.getText()}`);
    ts.forEachChild(node, visit);
  };
  visit(source);
  for (const statement of source.statements) {
    if (!ts.isVariableStatement(statement)) continue;
    if (!(statement.declarationList.flags & ts.NodeFlags.Const)) say(statement, 'keeps a mutable variable');
    for (const declaration of statement.declarationList.declarations) {
      if (isScratch(declaration)) say(declaration, `keeps mutable scratch: ${declaration.name.getText()}`);
    }
  }
  return found;
}

/** A bare name that reads a global: not a property, a key, or something this file declares. */
function isGlobalUse(node: ts.Identifier): boolean {
  const parent = node.parent;
  if (ts.isPropertyAccessExpression(parent) && parent.name === node) return false;
  if (ts.isQualifiedName(parent) && parent.right === node) return false;
  const isKey =
    ts.isPropertyAssignment(parent) ||
    ts.isPropertySignature(parent) ||
    ts.isPropertyDeclaration(parent) ||
    ts.isMethodDeclaration(parent) ||
    ts.isMethodSignature(parent) ||
    ts.isBindingElement(parent) ||
    ts.isParameter(parent) ||
    ts.isVariableDeclaration(parent);
  if (isKey && parent.name === node) return false;
  return !isDeclaredAround(node);
}

/** True when a parameter or variable of an enclosing scope carries the name. */
function isDeclaredAround(node: ts.Identifier): boolean {
  for (let scope: ts.Node = node.parent; scope; scope = scope.parent) {
    if (ts.isFunctionLike(scope) && scope.parameters.some((p) => p.name.getText() === node.text)) return true;
    if (ts.isBlock(scope) || ts.isForOfStatement(scope) || ts.isForStatement(scope)) {
      let declares = false;
      ts.forEachChild(scope, (child) => {
        const list = ts.isVariableStatement(child) ? child.declarationList : child;
        if (!ts.isVariableDeclarationList(list)) return;
        declares ||= list.declarations.some((d) => d.name.getText() === node.text);
      });
      if (declares) return true;
    }
  }
  return false;
}

/** `const scratch = new Float64Array(3)`, `const cache = new Map()`, `const seen = []`: state kept between calls. */
function isScratch(declaration: ts.VariableDeclaration): boolean {
  const value = declaration.initializer;
  if (
    !value ||
    declaration.type?.getText().startsWith('Readonly') ||
    /^readonly /.test(declaration.type?.getText() ?? '')
  )
    return false;
  if (ts.isArrayLiteralExpression(value)) return value.elements.length === 0;
  if (ts.isNewExpression(value)) {
    const isContainer = /^(Map|Set|WeakMap|WeakSet|Array|\w+Array)$/.test(value.expression.getText());
    const first = value.arguments?.[0];
    return isContainer && (first === undefined || ts.isNumericLiteral(first));
  }
  return false;
}

/** Functions longer than `limit` lines, as `file:line name lines`. */
export function findLongFunctions(modules: readonly SourceModule[], limit: number): string[] {
  const found: string[] = [];
  for (const { file, source } of modules) {
    const visit = (node: ts.Node): void => {
      if (ts.isFunctionLike(node) && 'body' in node && node.body) {
        const first = source.getLineAndCharacterOfPosition(node.getStart()).line;
        const last = source.getLineAndCharacterOfPosition(node.getEnd()).line;
        if (last - first + 1 > limit) {
          const name = node.name?.getText() ?? 'unnamed';
          found.push(`${file}:${first + 1} ${name} ${last - first + 1} lines`);
        }
      }
      ts.forEachChild(node, visit);
    };
    visit(source);
  }
  return found;
}
