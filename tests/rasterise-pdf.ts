import { execFileSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';

/** A grey picture, one byte a pixel, 0 black. */
export interface GreyImage {
  readonly width: number;
  readonly height: number;
  readonly pixels: Uint8Array;
}

/** Pages of a PDF as poppler's pdftoppm draws them. Fails when poppler-utils is not installed. */
export function rasterisePdf(bytes: Uint8Array, dpi: number): GreyImage[] {
  return withPdf(bytes, (file, folder) => {
    execFileSync('pdftoppm', ['-gray', '-r', String(dpi), file, path.join(folder, 'page')]);
    const names = readdirSync(folder).filter((name) => name.endsWith('.pgm'));
    return names.sort().map((name) => readPgm(readFileSync(path.join(folder, name))));
  });
}

/** What a poppler tool (pdfinfo, pdffonts, pdftotext) says about a PDF. */
export function askPoppler(tool: string, bytes: Uint8Array, args: readonly string[] = []): string {
  return withPdf(bytes, (file) =>
    execFileSync(tool, tool === 'pdftotext' ? [...args, file, '-'] : [...args, file], { encoding: 'utf8' }),
  );
}

function withPdf<T>(bytes: Uint8Array, use: (file: string, folder: string) => T): T {
  const folder = mkdtempSync(path.join(tmpdir(), 'pdf-'));
  try {
    const file = path.join(folder, 'pages.pdf');
    writeFileSync(file, bytes);
    return use(file, folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Binary portable greymap (netpbm format P5, 8 bits). */
function readPgm(bytes: Uint8Array): GreyImage {
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(new TextDecoder('latin1').decode(bytes.subarray(0, 60)));
  if (!head) throw new Error('not a greymap');
  return { width: Number(head[1]), height: Number(head[2]), pixels: bytes.subarray(head[0].length) };
}
