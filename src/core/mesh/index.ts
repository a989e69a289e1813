export type { ChartSurface } from './chart-surface.ts';
export type { Mesh } from './mesh.ts';
