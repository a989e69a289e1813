import { mmPerInch } from '../../../core/base/index.ts';
import type { ExportPhrases } from '../../../core/export/index.ts';
import type { Entries } from '../../catalogue.ts';

/** What drawings and their layers are called in files. */
export const exported: Entries<ExportPhrases> = {
  'drawing.size': ({ width, height }, { plain, fixed }) =>
    `Whole drawing ${plain(width, 3)} × ${plain(height, 3)} mm (${fixed(width / mmPerInch, 2)} × ${fixed(height / mmPerInch, 2)} in); 1 unit = 1 mm`,
  'layer.cut': 'Cut lines',
  'layer.sew': 'Sew lines',
  'layer.mark': 'Marks',
  'layer.text': 'Lettering',
  'layer.fill': 'Areas',
  'layer.join': 'Joining marks',
  'layer.page': 'Page names and checks',
  'layer.thin': 'Fine lines',
  'layer.seam': 'Seams',
  'layer.outline': 'Outlines',
  'layer.bold': 'What is sewn now',
};
