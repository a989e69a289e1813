import type { InsidePhrases } from '../../../core/inside/index.ts';
import type { Entries } from '../../catalogue.ts';

type Cautions = {
  readonly [Id in keyof InsidePhrases as Id extends `caution.${string}` ? Id : never]: InsidePhrases[Id];
};

/** Where work can hurt. */
export const cautions: Entries<Cautions> = {
  'caution.blades.title': 'Lames',
  'caution.blades.text':
    'Refermer le couteau rotatif et le cutter après chaque coupe, couper en s’éloignant du corps, porter un gant anticoupure à la main qui tient, et compter aiguilles et épingles avant de rembourrer. Une aiguille peut casser dans de nombreuses épaisseurs\u00a0: se protéger les yeux.',
  'caution.iron.title': 'Fer chaud',
  'caution.iron.text':
    'Le thermocollage demande de 130 à 160 °C\u00a0: cela brûle la peau, et écrase et lustre le polyester, qui fond vers 255 °C. Laisser refroidir à plat le tissu thermocollé, et ne jamais repasser sur des aimants ni sur de la colle thermofusible.',
  'caution.glue.title': 'Colle',
  'caution.glue.text':
    'Les colles à solvant et en bombe sont inflammables et nocives à respirer\u00a0: fenêtres ouvertes, pas de flamme, un masque contre les vapeurs organiques. Colle à bois, voile thermocollant et points de couture s’en passent.',
  'caution.dust.title': 'Fibre et poussière',
  'caution.dust.text':
    'Effilocher la fibre et couper la mousse dehors ou avec un masque, et passer ensuite l’aspirateur. Ne jamais couper au laser du PVC ni du vinyle\u00a0: il s’en dégage du chlorure d’hydrogène, qui brûle les poumons et les yeux.',
  'caution.magnets.title': 'Aimants',
  'caution.magnets.text':
    'Deux aimants avalés peuvent perforer l’intestin et tuer\u00a0: les coudre à l’intérieur, les compter, les tenir loin des enfants et des animaux. Les garder à 15 cm des stimulateurs cardiaques et autres implants, et ne pas les manipuler si vous en portez un. Ils ne font que repérer la place d’un bras\u202f; une cheville ou une sangle le porte.',
  'caution.tipping.title': 'Basculement',
  'caution.tipping.text':
    'Essayer le mannequin chargé sur une pente de 10° avec quelqu’un prêt à le retenir (notre propre critère, pas une norme). Bloquer les roulettes, et ne pas laisser une lourde traîne tirer d’un côté.',
  'caution.lifting.title': 'Soulever',
  'caution.lifting.text':
    'Un mannequin rembourré avec vêtement et lest peut peser plus de 20 kg\u00a0: le soulever à deux, par le tube et le pied.',
  'caution.fire.title': 'Feu',
  'caution.fire.text':
    'La fibre polyester fond, goutte et brûle\u00a0: tenir le mannequin loin des lampes, radiateurs et bougies. Pour une exposition, suivre le règlement local et demander au lieu d’accueil\u202f; ce programme ne certifie rien.',
  'caution.rigging.title': 'Suspension et scène',
  'caution.rigging.text':
    'Ce qui est suspendu au-dessus de personnes, ou fait partie d’un décor de scène, demande une personne habilitée.',
};
