import { bodyInWords, type CuttingOptions } from '../assembly/index.ts';
import { failure, type Issue, type Result, type Say, success } from '../base/index.ts';
import type { Drawing } from '../drawing/index.ts';
import {
  CUTTER_COLOURS,
  findLackingLetters,
  hollowMesh,
  thickenFlat,
  writeCsv,
  writeDxf,
  writeGlb,
  writeObj,
  writePdf,
  writeStl,
  writeSvg,
  writeZip,
} from '../export/index.ts';
import { type Form, nameRevision, reportOf } from '../form/index.ts';
import { cautionsFor } from '../inside/index.ts';
import { boundsOfPoints } from '../math/index.ts';
import { capBoundaryLoops, type Mesh, mergeMeshes } from '../mesh/index.ts';
import {
  arrangePieces,
  drawPieces,
  materialInShort,
  type Piece,
  sideInShort,
  titleOfSheet,
} from '../pattern/index.ts';
import {
  drawLabels,
  findPaper,
  layOutForCutter,
  PRINT_OPTIONS,
  planTiles,
  printPieces,
} from '../sheet/index.ts';
import { type FormFile, filesOfForm } from './files-of-form.ts';
import { phrase } from './phrases.ts';
import { seamRows, tapeRows } from './table-rows.ts';

const PLAIN_FORMATS = ['svg', 'pdf', 'labels', 'cutter', 'dxf', 'glb', 'stl', 'obj', 'csv', 'json'] as const;
type PlainFormat = (typeof PLAIN_FORMATS)[number];
/** What a form can be written as; `zip` holds all others asked for, or all there are when it is asked for alone. */
export const EXPORT_FORMATS = [...PLAIN_FORMATS, 'zip'] as const;
export type ExportFormat = (typeof EXPORT_FORMATS)[number];

const PROGRAM = 'Loftseam';
/** Scale of the model for a 3D printer, one to this: 700 mm of trunk become 140 mm, which any printer's bed takes. */
const MODEL_SCALE = 5;
const MODEL_SCALES = { least: 2, most: 20 } as const;
/** Wall of the hollow model, mm: four lines of a usual nozzle of 0.4 (common practice). */
const MODEL_WALL = 1.6;
const THINNEST_WALL = 0.4;
/** The wall in full size must stay well under the neck's radius, or the inner surface folds. mm. */
const THICKEST_WALL = 20;
/** Thickness of a flat panel as a solid, mm. */
const PANEL_THICKNESS = 1;
/** mm; what laser drivers take as a line to cut: 0.001 in (common practice). */
const HAIRLINE = 0.025;

export interface ExportOptions extends CuttingOptions {
  /** Words of everything written but of pieces, which have their letters already. */
  readonly say: Say;
  readonly formats: readonly string[];
  /** The model for a 3D printer: one to `scale` (2 to 20, default 5), its hollow one with walls of `wall` mm (default 1.6). */
  readonly model?: { readonly scale?: number; readonly wall?: number };
  /** Ids of the pieces wanted, default all. */
  readonly only?: readonly string[];
  readonly date?: string;
  /** Letters of the PDF; passed in because the core reads no files. */
  readonly font: { readonly name: string; readonly bytes: Uint8Array };
}

/**
 * The files of a form in the formats asked for, in the order of `EXPORT_FORMATS`. Same form and options, same bytes (but
 * `report.json` tells how long each stage took, except inside the archive). Fails with every unknown format, piece or paper.
 */
export async function exportForm(form: Form, options: ExportOptions): Promise<Result<FormFile[]>> {
  const { formats, only, say } = options;
  const allPieces = [...form.pieces, ...(form.inside?.pieces ?? [])];
  const issues = [
    ...findUnknown(formats, EXPORT_FORMATS, 'unknown-format', 'formats'),
    ...findUnknown(
      only ?? [],
      allPieces.map(({ id }) => id),
      'unknown-piece',
      'only',
    ),
  ];
  if (issues.length > 0) return failure(issues);
  const pieces = only ? allPieces.filter(({ id }) => only.includes(id)) : allPieces;
  const isAlone = formats.length === 1 && formats[0] === 'zip';
  const wanted = PLAIN_FORMATS.filter((format) => isAlone || formats.includes(format));

  const files: FormFile[] = [];
  const warnings: Issue[] = [];
  for (const format of wanted) {
    const made = await writeFormat(format, form, pieces, options);
    if (!made.ok) issues.push(...made.issues);
    else {
      files.push(...made.value);
      warnings.push(...made.issues);
    }
  }
  if (issues.length > 0) return failure(issues);
  if (!formats.includes('zip')) return success(files, warnings);
  const timeless = reportOf({ ...form, report: { ...form.report, timingsMs: {} } }, say);
  const inside = files.map((file) => (file.name === 'report.json' ? { ...file, content: timeless } : file));
  const zip = { name: 'form.zip', type: 'application/zip', content: writeZip(inside, PROGRAM) };
  return success(isAlone ? [zip] : [...files, zip], warnings);
}

function findUnknown(
  asked: readonly string[],
  known: readonly string[],
  code: 'unknown-format' | 'unknown-piece',
  path: string,
): Issue[] {
  return asked
    .filter((name) => !known.includes(name))
    .map((name) => ({ code, path, message: phrase(`file.${code}`, { name, known }), severity: 'error' }));
}

type FormatWriter = (
  form: Form,
  pieces: readonly Piece[],
  options: ExportOptions,
) => Result<FormFile[]> | Promise<Result<FormFile[]>>;

function writeFormat(
  format: PlainFormat,
  form: Form,
  pieces: readonly Piece[],
  options: ExportOptions,
): Result<FormFile[]> | Promise<Result<FormFile[]>> {
  const { say } = options;
  const writers: Record<PlainFormat, FormatWriter> = {
    svg: writeSvgFiles,
    pdf: writePdfFiles,
    labels: writeLabelFiles,
    cutter: writeCutterFiles,
    dxf: writeDxfFiles,
    glb: writeGlbFiles,
    stl: writeStlFiles,
    obj: () => success(writeObjFiles(form)),
    csv: () =>
      success([
        { name: 'seams.csv', type: 'text/csv', content: writeCsv(seamRows(form.report, say)) },
        { name: 'tapes.csv', type: 'text/csv', content: writeCsv(tapeRows(form.report, say)) },
      ]),
    json: () => success([{ name: 'report.json', type: 'application/json', content: reportOf(form, say) }]),
  };
  return writers[format](form, pieces, options);
}

/** The body with its arms, and every flat panel as a thin plate. */
async function writeGlbFiles(
  form: Form,
  _pieces: readonly Piece[],
  { say }: ExportOptions,
): Promise<Result<FormFile[]>> {
  const body = (await filesOfForm(form, say)).filter(({ name }) => name.endsWith('.glb'));
  const meshes = flatPanels(form).map(({ name, mesh }) => ({ name, mesh }));
  const content = await writeGlb({ meshes, generator: PROGRAM });
  return success([...body, { name: 'panels.glb', type: 'model/gltf-binary', content }]);
}

/** The body in full size, a solid and a hollow model of it, and the flat panels as plates. */
function writeStlFiles(form: Form, _pieces: readonly Piece[], { model }: ExportOptions): Result<FormFile[]> {
  const { scale = MODEL_SCALE, wall = MODEL_WALL } = model ?? {};
  const issues = checkModel(scale, wall);
  if (issues.length > 0) return failure(issues);
  const { shell, closedMesh } = form;
  // Open at the base alone, which is level: no material is shut in, and it stands flat.
  const others = shell.openings.filter(({ id }) => id !== 'base').map(({ vertices }) => vertices);
  const hollow = hollowMesh(capBoundaryLoops(shell.mesh, others), wall * scale);
  const options = { scale: 1 / scale, standsOnZero: true };
  return success([
    stlFile('body.stl', writeStl(closedMesh)),
    stlFile(`model-1-to-${scale}.stl`, writeStl(closedMesh, options)),
    stlFile(`model-1-to-${scale}-hollow.stl`, writeStl(hollow, options)),
    stlFile('panels.stl', writeStl(mergeMeshes(flatPanels(form).map(({ mesh }) => mesh)))),
  ]);
}

function checkModel(scale: number, wall: number): Issue[] {
  const issues: Issue[] = [];
  const { least, most } = MODEL_SCALES;
  if (!(scale >= least && scale <= most)) {
    const message = phrase('file.model-scale', { scale, least, most });
    const limit = scale > most ? most : least;
    issues.push({
      code: 'model-scale',
      path: 'model.scale',
      message,
      severity: 'error',
      measured: scale,
      limit,
    });
  }
  if (issues.length > 0) return issues;
  const thickest = THICKEST_WALL / scale;
  if (!(wall >= THINNEST_WALL && wall <= thickest)) {
    const message = phrase('file.model-wall', { wall, scale, least: THINNEST_WALL, most: thickest });
    const limit = wall < THINNEST_WALL ? THINNEST_WALL : thickest;
    issues.push({
      code: 'model-wall',
      path: 'model.wall',
      message,
      severity: 'error',
      measured: wall,
      limit,
    });
  }
  return issues;
}

/** The flat panels, seam to seam without allowance, side by side as plates. */
function flatPanels(form: Form): { readonly name: string; readonly mesh: Mesh }[] {
  const gap = 20;
  let x = 0;
  return form.shell.panels.map(({ id, mesh: { triangles } }, i) => {
    const { positions } = form.flat[i];
    const { minX = 0, minY = 0, maxX = 0 } = boundsOfPoints([positions]) ?? {};
    const mesh = thickenFlat(positions, triangles, PANEL_THICKNESS, x - minX, -minY);
    x += maxX - minX + gap;
    return { name: id, mesh };
  });
}

function stlFile(name: string, content: Uint8Array): FormFile {
  return { name, type: 'model/stl', content };
}

function writeSvgFiles(form: Form, pieces: readonly Piece[], options: ExportOptions): Result<FormFile[]> {
  const drawings = options.only ? arrangeAnew(form, pieces, options.say) : success(form.drawings);
  if (!drawings.ok) return drawings;
  return success(
    drawings.value.map(({ material, drawing }) => ({
      name: material === 'shell' ? 'panels.svg' : `${material}.svg`,
      type: 'image/svg+xml',
      content: writeSvg(drawing, { say: options.say }),
    })),
  );
}

function arrangeAnew(form: Form, pieces: readonly Piece[], say: Say): Result<Form['drawings']> {
  const drawings: { material: string; drawing: Drawing }[] = [];
  for (const material of new Set(pieces.map((piece) => piece.material))) {
    const own = pieces.filter((piece) => piece.material === material);
    const sheet = arrangePieces(own, { title: say(titleOfSheet(form.project.name, material)), say });
    if (!sheet.ok) return sheet;
    drawings.push({ material, drawing: sheet.value });
  }
  return success(drawings);
}

async function writePdfFiles(
  form: Form,
  pieces: readonly Piece[],
  { papers = [PRINT_OPTIONS.paper.usual], print = {}, date = '', font, say }: ExportOptions,
): Promise<Result<FormFile[]>> {
  const issues: Issue[] = [];
  const files: FormFile[] = [];
  const info = printInfo(form, date, say);
  for (const paper of papers) {
    const job = printPieces(pieces, { ...info, cautions: cautionsFor(pieces) }, { ...print, paper });
    issues.push(...job.issues);
    const name = findPaper(paper)?.name;
    if (!job.ok || !name) continue;
    const content = await writePdf({
      pages: job.value.pages,
      title: say(phrase('file.print-title', { project: form.project.name, paper: { id: paper, name } })),
      say,
      font: font.bytes,
      fontName: font.name,
      creator: PROGRAM,
    });
    const suffix = print.correction ? '-corrected' : '';
    files.push({ name: `print-${paper}${suffix}.pdf`, type: 'application/pdf', content });
    if (files.length === 1) issues.push(...(await checkLetters(job.value.pages, font)));
  }
  return issues.some(({ severity }) => severity === 'error') ? failure(issues) : success(files, issues);
}

/** Letters that the font of the print has no shape for. */
async function checkLetters(pages: readonly Drawing[], font: ExportOptions['font']): Promise<Issue[]> {
  const lacking = await findLackingLetters(pages, font.bytes);
  if (lacking.length === 0) return [];
  const message = phrase('file.letters-lacking', { letters: lacking });
  return [{ code: 'letters-lacking', path: 'name', message, severity: 'warning' }];
}

/** Labels to sew in, a file per paper. */
async function writeLabelFiles(
  form: Form,
  pieces: readonly Piece[],
  { papers = [PRINT_OPTIONS.paper.usual], print = {}, date = '', font, say }: ExportOptions,
): Promise<Result<FormFile[]>> {
  const files: FormFile[] = [];
  for (const paper of papers) {
    const grid = planTiles({ ...print, paper });
    if (!grid.ok) return grid;
    const content = await writePdf({
      pages: drawLabels(pieces, printInfo(form, date, say), grid.value),
      title: say(phrase('file.labels-title', { project: form.project.name })),
      say,
      font: font.bytes,
      fontName: font.name,
      creator: PROGRAM,
    });
    files.push({ name: `labels-${paper}.pdf`, type: 'application/pdf', content });
  }
  return success(files);
}

function printInfo({ project }: Form, date: string, say: Say) {
  const revision = say(phrase('file.revision', { revision: nameRevision(project) }));
  const stand = [date, revision].filter((part) => part !== '').join(' · ');
  return { say, project: project.name, body: say(bodyInWords(project)), date: stand };
}

/** One file per material, or per mat; hairlines, colours by layer. */
function writeCutterFiles(
  form: Form,
  pieces: readonly Piece[],
  { cutter = {}, only, say }: ExportOptions,
): Result<FormFile[]> {
  const { colours, ...layout } = cutter;
  const files: FormFile[] = [];
  const warnings: Issue[] = [];
  for (const material of new Set(pieces.map((piece) => piece.material))) {
    const own = pieces.filter((piece) => piece.material === material);
    const laid = only ? undefined : form.drawings.find((sheet) => sheet.material === material)?.drawing;
    const title = say(titleOfSheet(form.project.name, material));
    const sheets = layOutForCutter(own, { ...layout, title, say, ...(laid ? { laid } : {}) });
    if (!sheets.ok) return sheets;
    warnings.push(...sheets.issues);
    for (const { name, drawing } of sheets.value) {
      const content = writeSvg(drawing, {
        say,
        colours: { ...CUTTER_COLOURS, ...colours },
        hairline: HAIRLINE,
      });
      const parts = ['cutter', material, name].filter((part) => part !== '');
      files.push({ name: `${parts.join('-')}.svg`, type: 'image/svg+xml', content });
    }
  }
  return success(files, warnings);
}

/** All pieces side by side, each a block; the keys of its notes stay as readers of the exchange format know them. */
function writeDxfFiles(_form: Form, pieces: readonly Piece[], { say }: ExportOptions): Result<FormFile[]> {
  const gap = 20;
  let x = 0;
  const blocks = pieces.map((piece) => {
    const { minX = 0, minY = 0, maxX = 0, maxY = 0 } = boundsOfPoints([piece.cutLine]) ?? {};
    const [width, height] = [maxX - minX, maxY - minY];
    const layers = drawPieces([piece], [{ dx: -minX, dy: maxY }]);
    const block = {
      name: piece.id,
      drawing: { width, height, title: say(piece.name), layers },
      x,
      y: 0,
      notes: [
        `Piece Name: ${say(piece.name)}`,
        'Quantity: 1',
        `Material: ${say(materialInShort(piece.material))}`,
        `Side: ${say(sideInShort(piece.side))}`,
      ],
    };
    x += width + gap;
    return block;
  });
  const sheetHeight = Math.max(0, ...blocks.map(({ drawing }) => drawing.height));
  return success([{ name: 'panels.dxf', type: 'image/vnd.dxf', content: writeDxf({ blocks, sheetHeight }) }]);
}

/** The closed body, and the panels as they lie on it with their places on the flat. */
function writeObjFiles(form: Form): FormFile[] {
  const panels = form.shell.panels.map((panel, i) => ({
    name: panel.id,
    mesh: panel.mesh,
    flat: form.flat[i].positions,
  }));
  const type = 'model/obj';
  return [
    { name: 'body.obj', type, content: writeObj([{ name: 'body', mesh: form.closedMesh }]) },
    { name: 'panels.obj', type, content: writeObj(panels) },
  ];
}
