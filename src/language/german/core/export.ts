import { mmPerInch } from '../../../core/base/index.ts';
import type { ExportPhrases } from '../../../core/export/index.ts';
import type { Entries } from '../../catalogue.ts';

/** What drawings and their layers are called in files. */
export const exported: Entries<ExportPhrases> = {
  'drawing.size': ({ width, height }, { plain, fixed }) =>
    `Ganze Zeichnung ${plain(width, 3)} × ${plain(height, 3)} mm (${fixed(width / mmPerInch, 2)} × ${fixed(height / mmPerInch, 2)} in); 1 Einheit = 1 mm`,
  'layer.cut': 'Schnittlinien',
  'layer.sew': 'Nahtlinien',
  'layer.mark': 'Zeichen',
  'layer.text': 'Schrift',
  'layer.fill': 'Flächen',
  'layer.join': 'Anschlüsse',
  'layer.page': 'Seitennamen und Messstrecken',
  'layer.thin': 'Feine Linien',
  'layer.seam': 'Nähte',
  'layer.outline': 'Umrisse',
  'layer.bold': 'Was jetzt genäht wird',
};
