import type { tape as english } from '../../english/app/tape.ts';

export const tape: typeof english = {
  tape: {
    about: 'Fünf Maße ergeben einen Körper. Jedes weitere ersetzt eine Schätzung, die grau erscheint.',
    printEmpty: 'Leere Liste drucken',
    figure: 'Figur',
    withBust: 'Mit Busen',
    withFlatChest: 'Mit flacher Brust',
    firstFive: 'Die ersten fünf',
    further: 'Weitere Maße',
    waist: {
      which: 'Wo saß das Taillenband?',
      kinds: {
        narrowest: 'An der schmalsten Stelle',
        elastic: 'Wo ein Gummiband sich hinlegt',
        navel: 'Am Nabel',
      },
      why: 'Alle Längen zur Taille oder von ihr aus an derselben Stelle nehmen.',
    },
    armsHeld: {
      which: 'Wie waren die Arme gehalten?',
      states: { relaxed: 'Hängend, locker', flexed: 'Gebeugt, mit Faust' },
      why: 'Über einem lockeren Arm passen Ärmel in Ruhe, über einem gebeugten lassen sie ihn arbeiten. Es steht auf den Teilen und im Arbeitsablauf.',
    },
    next: {
      measure: 'Diese würden am meisten über die Form sagen, die erste am meisten:',
      gain: (after, before) => `(die Form ist dann auf ±${after} statt ±${before} bekannt)`,
    },
    groups: {
      girths: { name: 'Weitere Umfänge', why: 'Sie formen den Körper zwischen den ersten dreien.' },
      lengths: { name: 'Längen', why: 'Sie bestimmen, wie hoch Brust, Hüfte und Unterkante liegen.' },
      shoulders: {
        name: 'Schultern und Armlöcher',
        why: 'Sie bestimmen Neigung und Breite, links und rechts getrennt, wo beide verschieden sind.',
      },
      widths: {
        name: 'Breiten und Tiefen',
        why: 'Ein Umfang unterscheidet breit nicht von tief; diese hier schon.',
      },
      arms: { name: 'Arme', why: 'Alle fünf zusammen ergeben ein Paar abnehmbarer Arme.' },
      heights: {
        name: 'Höhen',
        why: 'Vom Boden aus. Nacken und Taille sagen, wie hoch der Ständer sein muss, die anderen, wie hoch jede Stelle liegt.',
      },
      wall: {
        name: 'Von der Wand',
        why: 'Wie die Person steht: Das sagt kein Maßband. Barfuß, die Fersen eine Handbreit vor einer Wand, so stehen wie immer; jeden Abstand waagrecht ablesen. Mindestens drei nehmen, hinten und vorn: einer allein sagt nichts.',
      },
    },
    countOf: (count, all) => `${count} von ${all}`,
    howToType:
      'Zentimeter oder Zoll, wie es gerade passt: 92,5 oder 92.5 cm, 36 3/8 in. Jedes Maß zweimal nehmen, und ein drittes Mal, wenn beide mehr als 1 cm auseinanderliegen (0,5 cm bei Längen und kleinen Umfängen).',
  },
  measure: {
    left: 'links',
    right: 'rechts',
    apart: 'Links und rechts getrennt',
    apartOf: (name) => `${name}: links und rechts getrennt`,
    together: 'Ein Wert für beide Seiten',
    again: 'noch einmal messen',
    againOf: (name) => `${name}: noch einmal messen`,
    difference: (length) => `Unterschied ${length}`,
    guide: 'wozu, und was leicht schiefgeht',
    guideOf: (name) => `${name}: wozu, und was leicht schiefgeht`,
    why: 'Wozu',
    takeCare: 'Aufgepasst',
    drawing: {
      front: 'So liegt das Maßband, vorn',
      back: 'So liegt das Maßband, hinten',
      side: 'Was abgelesen wird, von der rechten Seite',
    },
    met: (side, got) => `${side}stimmt, am Körper ${got}`,
    conflict: (side, got, off) => `${side}Widerspruch: am Körper ${got}, ${off}`,
    estimated: (side) => `${side}geschätzt`,
    ordinals: ['erste', 'zweite', 'dritte', 'vierte', 'fünfte'],
    shortOrdinals: ['1.', '2.', '3.', '4.', '5.'],
    reading: (name, ordinal) => `${name}, ${ordinal} Messung`,
    apartOnceMore: (length) => `${length} auseinander: noch einmal messen.`,
    apartMean: (length, mean) => `${length} auseinander, es gilt das Mittel ${mean}`,
  },
  length: {
    needed: (label) => `${label} fehlt und ist durch nichts zu ersetzen.`,
    notALength: (typed, example) =>
      `${typed === '' ? 'Hier steht nichts' : `„${typed}“ ist keine Länge`}; zum Beispiel ${example} eingeben, oder mit Einheit: 92,5 cm, 925 mm, 36 3/8 in.`,
    outside: (label, value, low, high) =>
      `${label} ist ${value}; möglich ist alles zwischen ${low} und ${high}.`,
    meant: (unit, typed) => ` Falls ${unit} gemeint sind: ${typed} eingeben.`,
    units: { mm: 'Millimeter', cm: 'Zentimeter', in: 'Zoll' },
  },
  printList: {
    title: 'Maße von ____________________ \u00a0 am ____________ \u00a0 durch ____________',
    how: (unit) =>
      `In ${unit}. Anliegend, nicht stramm; in der Wäsche, die getragen wird. Jedes zweimal nehmen, und ein drittes Mal, wenn beide mehr als 1 cm oder 3/8 in auseinanderliegen (0,5 cm oder 3/16 in bei Längen und kleinen Umfängen). Die ersten fünf sind nötig, die übrigen helfen.`,
    measure: 'Maß',
    where: 'So liegt das Maßband',
    first: '1.',
    second: '2.',
    sides: 'li          re',
    ask: 'Vor dem Berühren fragen; Nadeln und Scheren aus dem Weg legen.',
  },
};
