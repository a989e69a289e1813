import type { LayoutPhrases } from '../../../core/seams/index.ts';
import type { Entries } from '../../catalogue.ts';

const neck = 'Dazu kommt ein Halsbündchen, hinten geschlossen.';
const about8 = `Nähte in der vorderen und hinteren Mitte, an den Seiten und Schultern, und auf jeder Hälfte von Vorder- und Rückenteil eine Wiener Naht, die von der Unterkante am Brustpunkt oder Schulterblatt vorbei zur Mitte der Schulter läuft. ${neck}`;
const about12 = `${about8} Eine weitere Teilungsnaht auf jeder Hälfte von Vorder- und Rückenteil, zwischen dieser und der Seite, endet am Armloch.`;
const aboutBust =
  'Eine waagerechte Naht an der stärksten Stelle der Brust teilt die vorderen Schnittteile: dort weniger Verformung, und etwa vier Teile mehr zu nähen.';
const aboutWaist =
  'Eine waagerechte Naht an der Taille teilt jedes Schnittteil: kaum weniger Verformung, aber kürzere Teile, die auf schmalen Stoff passen.';

/** Seam layouts to choose from. */
export const layouts: Entries<LayoutPhrases> = {
  'layout.upright8.name': 'Acht senkrechte Teile',
  'layout.upright8.description': about8,
  'layout.upright12.name': 'Zwölf senkrechte Teile',
  'layout.upright12.description': about12,
  'layout.upright8Bust.name': 'Acht senkrechte Teile mit Brustnaht',
  'layout.upright8Bust.description': `${about8} ${aboutBust}`,
  'layout.upright12Bust.name': 'Zwölf senkrechte Teile mit Brustnaht',
  'layout.upright12Bust.description': `${about12} ${aboutBust}`,
  'layout.upright8Waist.name': 'Acht senkrechte Teile mit Taillennaht',
  'layout.upright8Waist.description': `${about8} ${aboutWaist}`,
  'layout.upright12BustWaist.name': 'Zwölf senkrechte Teile mit Brust- und Taillennaht',
  'layout.upright12BustWaist.description': `${about12} ${aboutBust} ${aboutWaist}`,
  'layout.upright6.name': 'Sechs senkrechte Teile',
  'layout.upright6.description': `Wie acht senkrechte Teile ohne die Seitennähte: die wenigsten Teile, für gerade Figuren und nachgiebigen Stoff. ${neck}`,
  'layout.upright8Armhole.name': 'Acht senkrechte Teile, Nähte zum Armloch',
  'layout.upright8Armhole.description': `Wie acht senkrechte Teile, aber die Nähte über Brustpunkt und Schulterblatt biegen zum Armloch ab, sodass die Schultern ganz bleiben. ${neck}`,
  'layout.upright16.name': 'Sechzehn senkrechte Teile',
  'layout.upright16.description': `Wie zwölf senkrechte Teile, mit einer weiteren Naht auf jeder Hälfte von Vorder- und Rückenteil zwischen der Mitte und dem Brustpunkt oder Schulterblatt: schmale Teile mit wenig Verformung, und viel zu nähen. ${neck}`,
  'layout.upright8Yoke.name': 'Acht senkrechte Teile mit Rückenpasse',
  'layout.upright8Yoke.description': `Wie acht senkrechte Teile, aber die hinteren Nähte enden an einer waagerechten Naht zwischen den Armlöchern; der Stoff darüber ist eine Passe. ${neck}`,
  'layout.upright8Underbust.name': 'Acht senkrechte Teile mit Unterbrustnaht',
  'layout.upright8Underbust.description': `${about8} Eine waagerechte Naht unter dem Busen teilt die vorderen Schnittteile, sodass der Busen getrennt vom Bauch geformt wird.`,
  'layout.upright8Hip.name': 'Acht senkrechte Teile mit Hüftnaht',
  'layout.upright8Hip.description': `${about8} Eine waagerechte Naht an der Hüfte teilt jedes Schnittteil; der untere Teil der Form kann aus anderem Stoff sein.`,
};
