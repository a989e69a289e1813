import type { LayoutPhrases } from '../../../core/seams/index.ts';
import type { Entries } from '../../catalogue.ts';

const neck = 'S’y ajoute une bande d’encolure, fermée dans le dos.';
const about8 = `Coutures au milieu devant, au milieu dos, aux côtés et aux épaules, et, sur chaque moitié du devant et du dos, une couture princesse qui va de la base au milieu de l’épaule en passant par la pointe de sein ou l’omoplate. ${neck}`;
const about12 = `${about8} Une couture de plus sur chaque moitié du devant et du dos, entre celle-ci et le côté, finit à l’emmanchure.`;
const aboutBust =
  'Une couture horizontale au plus fort de la poitrine partage les panneaux du devant : moins de déformation à cet endroit, et environ quatre panneaux de plus à coudre.';
const aboutWaist =
  'Une couture horizontale à la taille partage tous les panneaux : guère moins de déformation, mais des pièces plus courtes qui tiennent sur un tissu étroit.';

/** Seam layouts to choose from. */
export const layouts: Entries<LayoutPhrases> = {
  'layout.upright8.name': 'Huit panneaux verticaux',
  'layout.upright8.description': about8,
  'layout.upright12.name': 'Douze panneaux verticaux',
  'layout.upright12.description': about12,
  'layout.upright8Bust.name': 'Huit panneaux verticaux, couture de poitrine',
  'layout.upright8Bust.description': `${about8} ${aboutBust}`,
  'layout.upright12Bust.name': 'Douze panneaux verticaux, couture de poitrine',
  'layout.upright12Bust.description': `${about12} ${aboutBust}`,
  'layout.upright8Waist.name': 'Huit panneaux verticaux, couture de taille',
  'layout.upright8Waist.description': `${about8} ${aboutWaist}`,
  'layout.upright12BustWaist.name': 'Douze panneaux verticaux, coutures de poitrine et de taille',
  'layout.upright12BustWaist.description': `${about12} ${aboutBust} ${aboutWaist}`,
  'layout.upright6.name': 'Six panneaux verticaux',
  'layout.upright6.description': `Comme huit panneaux verticaux, sans les coutures de côté : le moins de pièces possible, pour les silhouettes droites et les tissus qui se prêtent. ${neck}`,
  'layout.upright8Armhole.name': 'Huit panneaux verticaux, coutures à l’emmanchure',
  'layout.upright8Armhole.description': `Comme huit panneaux verticaux, mais les coutures qui passent par la pointe de sein et l’omoplate tournent vers l’emmanchure, si bien que les épaules restent entières. ${neck}`,
  'layout.upright16.name': 'Seize panneaux verticaux',
  'layout.upright16.description': `Comme douze panneaux verticaux, avec une couture de plus sur chaque moitié du devant et du dos, entre le milieu et la pointe de sein ou l’omoplate : des pièces étroites qui se déforment peu, et beaucoup à coudre. ${neck}`,
  'layout.upright8Yoke.name': 'Huit panneaux verticaux, empiècement dos',
  'layout.upright8Yoke.description': `Comme huit panneaux verticaux, mais les coutures du dos s’arrêtent à une couture horizontale entre les emmanchures ; le tissu au-dessus forme un empiècement. ${neck}`,
  'layout.upright8Underbust.name': 'Huit panneaux verticaux, couture sous la poitrine',
  'layout.upright8Underbust.description': `${about8} Une couture horizontale sous la poitrine partage les panneaux du devant : les seins prennent leur forme à part du ventre.`,
  'layout.upright8Hip.name': 'Huit panneaux verticaux, couture de hanches',
  'layout.upright8Hip.description': `${about8} Une couture horizontale aux hanches partage tous les panneaux ; le bas du mannequin peut être d’un autre tissu.`,
};
