import type { ShellNumber, StaticsPhrases } from '../../../core/statics/index.ts';
import type { Entries } from '../../catalogue.ts';

const NUMBERS: Readonly<Record<ShellNumber, string>> = {
  pressure: 'la pression du rembourrage, en N/mm²,',
  warp: 'la raideur du tissu en chaîne, en N/mm,',
  weft: 'la raideur du tissu en trame, en N/mm,',
  shear: 'la raideur du tissu en biais, en N/mm,',
  poisson: 'la part dont le tissu se resserre quand on le tire',
  pushed: 'la part de raideur que garde le tissu qu’on pousse',
  'strand-stiffness': 'la raideur d’un brin de cloison ou de lien, en N/mm,',
  'strip-stiffness': 'la raideur d’une couture, en N/mm,',
  'strand-length': 'la longueur d’un brin de cloison ou de lien, en mm,',
  'strip-length': 'la longueur d’un tronçon de couture, en mm,',
  tolerance: 'la force qui peut rester',
};

/** A filled shell in balance. */
export const statics: Entries<StaticsPhrases> = {
  'statics.number': ({ name, value, least, most, place }, { exact }) =>
    `La forme rembourrée ne peut pas être prévue\u00a0: ${NUMBERS[name]} vaut ${exact(value)} à la place ${place}\u202f; il faut de ${exact(least)} à ${exact(most)}.`,
  'statics.flat-rest': ({ triangle }) =>
    `La forme rembourrée ne peut pas être prévue\u00a0: le triangle ${triangle} des panneaux coupés n’a pas de surface ou est posé à l’envers.`,
  'statics.not-closed': ({ edges }) =>
    `La forme rembourrée ne peut pas être prévue\u00a0: l’enveloppe est ouverte, ou cousue à l’envers, ${edges === 1 ? 'à 1 bord' : `à ${edges} bords`}.`,
  'statics.no-volume': ({ volume }, { plain }) =>
    `La forme rembourrée ne peut pas être prévue\u00a0: l’enveloppe commence avec un volume de ${plain(volume / 1e6, 3)} l, plate ou retournée.`,
  'statics.idle-link': ({ link }) =>
    `Le brin ${link} ne peut jamais se tendre\u00a0: ses bouts ne peuvent pas s’écarter. Le supprimer, ou l’attacher ailleurs.`,
  'statics.slack-cloth': ({ share, most }, { percent }) =>
    `${percent(share, 0)} du tissu reste lâche, plus que ${percent(most, 0)}\u00a0: le rembourrage ne le tend pas, et sa forme n’est pas prévue à ces endroits.`,
  'statics.slack-strands': ({ loose, of }) =>
    `${loose} des ${of} brins de cloisons et de liens ${loose < 2 ? 'pend, lâche, et ne retient' : 'pendent, lâches, et ne retiennent'} rien.`,
  'statics.stalled': ({ steps, force }, { exact }) =>
    `La forme rembourrée n’a pas trouvé d’équilibre en ${steps} pas\u00a0: il reste une force de ${exact(Number(force.toPrecision(2)))} N. La dernière forme valable est gardée.`,
  'statics.everted': 'L’enveloppe se retournerait au rembourrage. La dernière forme valable est gardée.',
  'statics.stopped':
    'La prévision de la forme rembourrée a été arrêtée. La dernière forme valable est gardée.',
};
