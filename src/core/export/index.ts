export { CUTTER_COLOURS } from './cutter-colours.ts';
export { type CsvCell, writeCsv } from './write-csv.ts';
export { type DxfBlock, type DxfContent, writeDxf } from './write-dxf.ts';
export { type GlbContent, type GlbMesh, writeGlb } from './write-glb.ts';
export { type ObjMesh, writeObj } from './write-obj.ts';
export { type PdfContent, writePdf } from './write-pdf.ts';
export { type StlOptions, writeStl } from './write-stl.ts';
export { type SvgOptions, writeSvg } from './write-svg.ts';
export { writeZip, type ZipEntry } from './write-zip.ts';
