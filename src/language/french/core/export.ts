import { mmPerInch } from '../../../core/base/index.ts';
import type { ExportPhrases } from '../../../core/export/index.ts';
import type { Entries } from '../../catalogue.ts';

/** What drawings and their layers are called in files. */
export const exported: Entries<ExportPhrases> = {
  'drawing.size': ({ width, height }, { plain, fixed }) =>
    `Dessin entier ${plain(width, 3)} × ${plain(height, 3)} mm (${fixed(width / mmPerInch, 2)} × ${fixed(height / mmPerInch, 2)} in) ; 1 unité = 1 mm`,
  'layer.cut': 'Lignes de coupe',
  'layer.sew': 'Lignes de couture',
  'layer.mark': 'Repères',
  'layer.text': 'Inscriptions',
  'layer.fill': 'Surfaces',
  'layer.join': 'Repères de jonction',
  'layer.page': 'Noms des pages et contrôles',
  'layer.thin': 'Lignes fines',
  'layer.seam': 'Coutures',
  'layer.outline': 'Contours',
  'layer.bold': 'Ce qui se coud maintenant',
};
