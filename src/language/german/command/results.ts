import type { results as english } from '../../english/command/results.ts';

export const results: typeof english = {
  range: (least, most) => `${least} bis ${most}`,
  stages: {
    tape: 'Maße',
    body: 'Körper',
    seams: 'Nähte',
    panels: 'Schnittteile',
    inside: 'Inneres',
    filling: 'Füllung',
    cutting: 'Zuschnitt',
    laying: 'Auslegen',
  },
  issues: { none: 'Nichts zu beanstanden.', error: 'FEHLER', warning: 'Warnung' },
  tapes: {
    tape: 'Maß',
    kind: 'Art',
    typed: 'Soll',
    body: 'Ist',
    off: 'daneben mm',
    result: 'Ergebnis',
    kinds: { girth: 'Umfang', length: 'Länge', width: 'Breite', depth: 'Tiefe', distance: 'Abstand' },
    met: 'stimmt',
    conflict: 'Widerspruch',
    estimated: 'geschätzt',
    estimatedWithin: (spread) => `geschätzt ±${spread}`,
  },
  knowledge: {
    waists: {
      narrowest: 'an der schmalsten Stelle',
      elastic: 'wo ein Gummiband sich hinlegt',
      navel: 'am Nabel',
    },
    known: (waist, spread) => `Taille ${waist} genommen; die Form ist auf ±${spread} mm bekannt.`,
    next: (name, id, after) =>
      `Als Nächstes messen: ${name} (${id}); die Form ist dann auf ±${after} mm bekannt.`,
  },
  report: {
    panel: 'Schnittteil',
    area: 'Fläche cm²',
    worst: (place) => `Am meisten hier: ${place}.`,
    strain: 'Verformung, 95 % darunter, %',
    shrink: 'einhalten',
    stretch: 'dehnen',
    grain: 'Fadenlauf °',
    bestGrain: 'bester °',
    level: 'Höhenlinie',
    onBody: 'am Körper',
    onPanels: 'auf dem Stoff',
    off: 'daneben mm',
    seams: (count, unequal, gap) =>
      `${count} Nähte; zusammengehörige Kanten unterscheiden sich um höchstens ${unequal} mm, ihre Passzeichen um höchstens ${gap} mm.`,
    made: (litres, times) => `${litres} Liter Inhalt. ${times}.`,
  },
  filled: {
    level: 'gefüllt, über dem Stoff',
    asked: (unit: string) => `verlangt, Umfang B × T ${unit}`,
    found: 'vorhergesagt',
    whole: (rms: string, percent: string, worst: string) =>
      `Die ganze Oberfläche liegt meist ${rms} mm vom Körper, ${percent} davon innerhalb von 8 mm; am schlechtesten ${worst}.`,
    place: (distance: string, where: string, over: string) => `${distance} mm: ${where}, über ${over}`,
    base: 'der Grundplatte',
    band: 'Umfang, halb oder doppelt so fest',
    range: (least: string, most: string) => `${least} bis ${most}`,
    load: (pressure: string, stiffness: string) =>
      `Vorhergesagt für ${pressure} kPa auf Stoff von ${stiffness} N/mm; füllen, bis die Taille stimmt.`,
    pull: (name: string, newtons: string) => `Am meisten trägt: ${name}, ${newtons} N.`,
  },
  inside: {
    filled: 'gefüllt',
    body: (unit) => `Körper B × T ${unit}`,
    free: 'ohne Inneres',
    held: 'mit Stegen',
    mostOff: 'Abstand höchstens mm',
    where: 'wo',
    girth: 'Umfang über dem Stoff',
    toBuy: 'einzukaufen',
    note: 'Anmerkung',
    units: { 'm²': 'm²', m: 'm', kg: 'kg', L: 'l', pieces: 'Stück' },
    websInSeams: (sleeve, pole) =>
      `Stege sind in die Nähte eingenäht. Tunnel flach gelegt ${sleeve} breit; ${pole} Rohr zwischen den Platten.`,
    websOnPanels: (sleeve, pole) =>
      `Stege sind an Linien genäht, die auf die Schnittteile gezeichnet sind. Tunnel flach gelegt ${sleeve} breit; ${pole} Rohr zwischen den Platten.`,
    stand: (angle, push, lean, ballast) =>
      `Ständer: kippt bei ${angle}° oder einem Stoß von ${push} N in Schulterhöhe; das Rohr neigt sich um ${lean} mm. Nötiger Ballast: ${ballast} kg.`,
    partIn: (name, hours) =>
      `Mit ${name}: ${hours} h Arbeit (von uns geschätzt), die es spart, sie wegzulassen.`,
    partOut: (name, hours) => `Ohne ${name}: ${hours} h Arbeit (von uns geschätzt), um sie zu ergänzen.`,
    takenOff: (list) => `An den Schnittteilen abgezogen für Nachgeben und Lagen darüber: ${list}.`,
    takeCare: 'Vorsicht',
  },
  stuffing: {
    level: 'Höhenlinie',
    girth: 'Umfang -0/+5',
    girthEmpty: 'Umfang, leer',
    width: 'Breite ±5',
    depth: 'Tiefe ±5',
    flat: 'leer, flach',
    order: 'in dieser Folge füllen',
    litres: 'Liter',
    front: 'vorn',
    firm: 'fest gestopft',
    standing: { good: 'gut', over: 'zu viel', under: 'zu wenig' },
    stop: 'Aufhören, wenn ein Umfang um mehr als 5 mm zu groß ist: Füllung herausnehmen, nicht die Naht enger nähen.',
    state: { empty: 'leer', filled: 'gefüllt' },
    fillMass: (mass) => `${mass} Füllung`,
    nothingToMend: 'Nichts zu ändern.',
    nothingMeasured: 'Noch nichts gemessen: Messwerte unter Prüfen eintragen, oder in der Datei.',
  },
  plan: {
    title: (name) => `Arbeitsfolge – ${name}`,
    print: (paper, pages, patternPages, joints) =>
      `Gedruckt auf ${paper}: ${pages} Seiten, davon ${patternPages} mit Schnitt, ${joints} ${joints === 1 ? 'Anschluss' : 'Anschlüsse'} zu kleben.`,
  },
  compare: {
    level: 'Höhenlinie',
    girth: 'Umfang',
    width: 'Breite',
    depth: 'Tiefe',
    height: 'Höhe über der Taille',
    change: 'Umfang ändert sich um',
    distances: (rms, outside, inside) =>
      `Über die ganze Oberfläche liegt der zweite Körper meist ${rms} mm vom ersten entfernt: höchstens ${outside} mm außerhalb und ${inside} mm innerhalb.`,
    picture: (file) => `Bild der Abstände: ${file}`,
  },
  refit: {
    zone: 'Zone',
    girth: 'Umfang',
    larger: 'größer mm',
    smaller: 'kleiner mm',
    what: 'was zu tun ist',
    standsInFront: (distance) => `Dafür steht der neue Körper ${distance} mm weiter vorn in der Form.`,
    standsBehind: (distance) => `Dafür steht der neue Körper ${distance} mm weiter hinten in der Form.`,
  },
  core: {
    measure: 'Maß',
    core: 'Kern',
    under: 'unter dem kleinsten mm',
  },
  advise: { nowhere: 'Nirgends wird vom Stoff mehr verlangt, als er hergibt.' },
  propose: {
    strain: 'Verformung, 95 % darunter, %',
    asItIs: 'wie es ist',
    afterStep: (number) => `nach Schritt ${number}`,
    reached: (wanted) =>
      `Die gewünschte Verformung, 95 % des Stoffs unter ${wanted} %, ist erreicht, an der groben Form, an der geprüft wurde.`,
    notReached: (wanted, least) =>
      `Die gewünschte Verformung, 95 % des Stoffs unter ${wanted} %, ist nicht erreicht: ${least} % ist die geringste, die gefunden wurde.`,
  },
  region: {
    title: 'Bereich',
    found: (area, strain, min, max) =>
      `Bereich von ${area} cm²: 95 % des Stoffs sind um weniger als ${strain} % verformt; von ${min} % bis ${max} %.`,
    round: (body, flat) => `Rundherum ${body} am Körper, ${flat} am flachen Teil.`,
  },
  printCorrect: {
    correction: (across, up) => `Korrektur: ${across} % quer zur Seite, ${up} % hoch.`,
    keep: (entry) => `Um sie zu behalten, ${entry} unter "cutting" in die Projektdatei schreiben.`,
  },
  demo: { demo: 'Beispiel', who: 'wer', unreadable: 'nicht lesbar' },
};
