export { type GlbContent, type GlbMesh, writeGlb } from './write-glb.ts';
export { writeSvg } from './write-svg.ts';
