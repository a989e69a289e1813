interface ShapeWords {
  readonly name: string;
  readonly why: string;
  readonly choices: Readonly<Record<string, string>>;
}

function section(name: string, at: string): ShapeWords {
  return {
    name,
    why: `Bei gleichem Umfang kann der Körper ${at} breit und flach oder schmal und tief sein; kein Maßband sagt es.`,
    choices: {
      shallow: 'Flach',
      fairlyShallow: 'Eher flach',
      middling: 'Mittel',
      fairlyDeep: 'Eher tief',
      deep: 'Tief',
    },
  };
}

/** Questions of shape and their choices, by id. */
export const shapes: Readonly<Record<string, ShapeWords>> = {
  bustSection: section('Brust von oben', 'an der Brust'),
  waistSection: section('Taille von oben', 'an der Taille'),
  highHipSection: section('Hohe Hüfte von oben', 'an der hohen Hüfte'),
  hipSection: section('Hüfte von oben', 'an der Hüfte'),
  upperBack: {
    name: 'Oberer Rücken',
    why: 'Wie weit sich der Rücken zwischen den Schulterblättern nach außen rundet, von der Seite gesehen.',
    choices: {
      straight: 'Gerade',
      gentle: 'Sanft gerundet',
      rounded: 'Rund',
      strong: 'Stark gerundet',
    },
  },
  belly: {
    name: 'Bauch',
    why: 'Wie weit der Bauch vor den Hüftknochen steht, von der Seite gesehen.',
    choices: { flat: 'Flach', soft: 'Weich', rounded: 'Rund', full: 'Voll' },
  },
  lean: {
    name: 'Haltung',
    why: 'Wie weit der Hals vor oder hinter der Taille steht, über das Übliche hinaus, von der Seite gesehen.',
    choices: { back: 'Zurückgelehnt', upright: 'Aufrecht', forward: 'Vorgebeugt' },
  },
  sway: {
    name: 'Kreuz',
    why: 'Wie hohl der Rücken an der Taille ist, von der Seite gesehen.',
    choices: { flat: 'Flach', soft: 'Sanft', hollow: 'Hohl' },
  },
  shoulderForm: {
    name: 'Form der Schultern',
    why: 'Ob die Linie vom Hals zum Schulterpunkt durchhängt, gerade läuft oder sich wölbt.',
    choices: { hollow: 'Hohl', straight: 'Gerade', muscular: 'Muskulös' },
  },
  bustFullness: {
    name: 'Fülle des Busens',
    why: 'Ob der Busen über der Brusthöhe voller ist oder darunter.',
    choices: { low: 'Unten voller', even: 'Gleichmäßig', high: 'Oben voller' },
  },
  bustSpread: {
    name: 'Richtung des Busens',
    why: 'Ob der Busen gerade nach vorn oder auseinander zeigt.',
    choices: { forward: 'Nach vorn', usual: 'Üblich', apart: 'Auseinander' },
  },
  collarBone: {
    name: 'Schlüsselbeine',
    why: 'Wie weit die Schlüsselbeine unter dem Hals vorstehen.',
    choices: { soft: 'Bedeckt', plain: 'Leicht', clear: 'Deutlich' },
  },
  seat: {
    name: 'Gesäß',
    why: 'Wie weit das Gesäß hinten vorsteht, von der Seite gesehen.',
    choices: { flat: 'Flach', soft: 'Weich', full: 'Voll' },
  },
  blade: {
    name: 'Schulterblätter',
    why: 'Wie weit die Schulterblätter vorstehen.',
    choices: { flat: 'Flach', soft: 'Weich', sharp: 'Deutlich' },
  },
};
