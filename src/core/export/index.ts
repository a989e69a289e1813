export { type GlbContent, type GlbMesh, writeGlb } from './write-glb.ts';
export { type PdfContent, writePdf } from './write-pdf.ts';
export { writeSvg } from './write-svg.ts';
