interface LayoutWords {
  readonly name: string;
  readonly description: string;
}

const neck = 'Dazu kommt ein Halsbündchen, hinten geschlossen.';
const about8 = `Nähte in der vorderen und hinteren Mitte, an den Seiten und Schultern, und auf jeder Hälfte von Vorder- und Rückenteil eine Wiener Naht, die von der Unterkante am Brustpunkt oder Schulterblatt vorbei zur Mitte der Schulter läuft. ${neck}`;
const about12 = `${about8} Eine weitere Teilungsnaht auf jeder Hälfte von Vorder- und Rückenteil, zwischen dieser und der Seite, endet am Armloch.`;
const aboutBust =
  'Eine waagerechte Naht an der stärksten Stelle der Brust teilt die vorderen Schnittteile: dort weniger Verformung, und etwa vier Teile mehr zu nähen.';
const aboutWaist =
  'Eine waagerechte Naht an der Taille teilt jedes Schnittteil: kaum weniger Verformung, aber kürzere Teile, die auf schmalen Stoff passen.';

/** Seam layouts by id. */
export const layouts: Readonly<Record<string, LayoutWords>> = {
  upright8: { name: 'Acht senkrechte Teile', description: about8 },
  upright12: { name: 'Zwölf senkrechte Teile', description: about12 },
  upright8Bust: {
    name: 'Acht senkrechte Teile mit Brustnaht',
    description: `${about8} ${aboutBust}`,
  },
  upright12Bust: {
    name: 'Zwölf senkrechte Teile mit Brustnaht',
    description: `${about12} ${aboutBust}`,
  },
  upright8Waist: {
    name: 'Acht senkrechte Teile mit Taillennaht',
    description: `${about8} ${aboutWaist}`,
  },
  upright12BustWaist: {
    name: 'Zwölf senkrechte Teile mit Brust- und Taillennaht',
    description: `${about12} ${aboutBust} ${aboutWaist}`,
  },
  upright6: {
    name: 'Sechs senkrechte Teile',
    description: `Wie acht senkrechte Teile ohne die Seitennähte: die wenigsten Teile, für gerade Figuren und nachgiebigen Stoff. ${neck}`,
  },
  upright8Armhole: {
    name: 'Acht senkrechte Teile, Nähte zum Armloch',
    description: `Wie acht senkrechte Teile, aber die Nähte über Brustpunkt und Schulterblatt biegen zum Armloch ab, sodass die Schultern ganz bleiben. ${neck}`,
  },
  upright16: {
    name: 'Sechzehn senkrechte Teile',
    description: `Wie zwölf senkrechte Teile, mit einer weiteren Naht auf jeder Hälfte von Vorder- und Rückenteil zwischen der Mitte und dem Brustpunkt oder Schulterblatt: schmale Teile mit wenig Verformung, und viel zu nähen. ${neck}`,
  },
  upright8Yoke: {
    name: 'Acht senkrechte Teile mit Rückenpasse',
    description: `Wie acht senkrechte Teile, aber die hinteren Nähte enden an einer waagerechten Naht zwischen den Armlöchern; der Stoff darüber ist eine Passe. ${neck}`,
  },
  upright8Underbust: {
    name: 'Acht senkrechte Teile mit Unterbrustnaht',
    description: `${about8} Eine waagerechte Naht unter dem Busen teilt die vorderen Schnittteile, sodass der Busen getrennt vom Bauch geformt wird.`,
  },
  upright8Hip: {
    name: 'Acht senkrechte Teile mit Hüftnaht',
    description: `${about8} Eine waagerechte Naht an der Hüfte teilt jedes Schnittteil; der untere Teil der Form kann aus anderem Stoff sein.`,
  },
};
