/** Tables and sentences of what the commands find. Numbers come worded, with their units where the sentence names none. */
export const results = {
  range: (least: string, most: string) => `${least} to ${most}`,
  stages: {
    tape: 'tape',
    body: 'body',
    seams: 'seams',
    panels: 'panels',
    inside: 'inside',
    filling: 'filling',
    cutting: 'cutting',
    laying: 'laying',
  },
  issues: { none: 'No issues.', error: 'ERROR', warning: 'warning' },
  tapes: {
    tape: 'tape',
    kind: 'kind',
    typed: 'typed',
    body: 'body',
    off: 'off mm',
    result: 'result',
    kinds: { girth: 'girth', length: 'length', width: 'width', depth: 'depth', distance: 'distance' },
    met: 'met',
    conflict: 'conflict',
    estimated: 'estimated',
    estimatedWithin: (spread: string) => `estimated ±${spread}`,
  },
  knowledge: {
    waists: {
      narrowest: 'at the narrowest place',
      elastic: 'where an elastic settles',
      navel: 'at the navel',
    },
    known: (waist: string, spread: string) => `Waist taken ${waist}; shape known to ±${spread} mm.`,
    next: (name: string, id: string, after: string) =>
      `Measure next: ${name} (${id}); the shape is then known to ±${after} mm.`,
  },
  report: {
    panel: 'panel',
    area: 'area cm²',
    worst: (place: string) => `Most of all here: ${place}.`,
    strain: 'strain, 95 % below, %',
    shrink: 'shrink',
    stretch: 'stretch',
    grain: 'grain °',
    bestGrain: 'best °',
    level: 'level',
    onBody: 'on the body',
    onPanels: 'on the panels',
    off: 'off mm',
    seams: (count: number, unequal: string, gap: string) =>
      `${count} seams; partners differ by at most ${unequal} mm, their notches by at most ${gap} mm.`,
    made: (litres: string, times: string) => `${litres} litres inside. ${times}.`,
  },
  filled: {
    level: 'filled, over the cloth',
    asked: (unit: string) => `asked, girth w × d ${unit}`,
    found: 'foretold',
    whole: (rms: string, percent: string, worst: string) =>
      `The whole surface comes out typically ${rms} mm from the body, ${percent} of it within 8 mm; worst ${worst}.`,
    place: (distance: string, where: string, over: string) => `${distance} mm at ${where}, over ${over}`,
    base: 'the base',
    band: 'girth if half or twice as firm',
    range: (least: string, most: string) => `${least} to ${most}`,
    load: (pressure: string, stiffness: string) =>
      `Foretold for ${pressure} kPa on cloth of ${stiffness} N/mm; fill until the waist reads right.`,
    pull: (name: string, newtons: string) => `Most is carried by ${name}: ${newtons} N.`,
  },
  inside: {
    filled: 'filled',
    body: (unit: string) => `body w × d ${unit}`,
    free: 'nothing inside',
    held: 'with webs',
    mostOff: 'most off mm',
    where: 'where',
    girth: 'tape over cloth',
    toBuy: 'to buy',
    note: 'note',
    units: { 'm²': 'm²', m: 'm', kg: 'kg', L: 'L', pieces: 'pieces' },
    websInSeams: (sleeve: string, pole: string) =>
      `Webs sewn into the seams. Pole sleeve ${sleeve} wide laid flat; ${pole} of pole between the plates.`,
    websOnPanels: (sleeve: string, pole: string) =>
      `Webs sewn to lines drawn on the panels. Pole sleeve ${sleeve} wide laid flat; ${pole} of pole between the plates.`,
    stand: (angle: string, push: string, lean: string, ballast: string) =>
      `Stand: tips at ${angle}° or a push of ${push} N at shoulder height; the pole leans ${lean} mm. Ballast needed: ${ballast} kg.`,
    partIn: (name: string, hours: string) =>
      `With ${name}: ${hours} h of work (our estimate) that leaving them out would save.`,
    partOut: (name: string, hours: string) =>
      `Without ${name}: ${hours} h of work (our estimate) to add them.`,
    takenOff: (list: string) => `Taken off the panels for growth and layers: ${list}.`,
    takeCare: 'Take care',
  },
  stuffing: {
    level: 'level',
    girth: 'girth -0/+5',
    girthEmpty: 'girth, empty',
    width: 'width ±5',
    depth: 'depth ±5',
    flat: 'empty, flat',
    order: 'fill in this order',
    litres: 'litres',
    front: 'front',
    firm: 'firm',
    standing: { good: 'good', over: 'over', under: 'under' },
    stop: 'Stop when a girth is over by more than 5 mm: take filling out, do not tighten the seam.',
    state: { empty: 'empty', filled: 'filled' },
    fillMass: (mass: string) => `${mass} of filling`,
    nothingToMend: 'Nothing to mend.',
    nothingMeasured: 'Nothing measured yet: enter readings under Checking, or in the file.',
  },
  plan: {
    title: (name: string) => `Order of work – ${name}`,
    print: (paper: string, pages: number, patternPages: number, joints: number) =>
      `Printed on ${paper}: ${pages} pages, ${patternPages} of them pattern, with ${joints} ${joints === 1 ? 'joint' : 'joints'} to tape.`,
  },
  compare: {
    level: 'level',
    girth: 'girth',
    width: 'width',
    depth: 'depth',
    height: 'height over waist',
    change: 'girth changes by',
    distances: (rms: string, outside: string, inside: string) =>
      `Over the whole surface the second body typically lies ${rms} mm from the first: at most ${outside} mm outside and ${inside} mm inside it.`,
    picture: (file: string) => `Picture of the distances: ${file}`,
  },
  refit: {
    zone: 'zone',
    girth: 'girth',
    larger: 'larger mm',
    smaller: 'smaller mm',
    what: 'what to do',
    standsInFront: (distance: string) =>
      `For this the new body stands ${distance} mm farther to the front in the form.`,
    standsBehind: (distance: string) =>
      `For this the new body stands ${distance} mm farther to the back in the form.`,
  },
  core: {
    measure: 'measure',
    core: 'core',
    under: 'under the smallest mm',
  },
  advise: { nowhere: 'Nowhere is the cloth asked for more than it takes.' },
  propose: {
    strain: 'strain, 95 % below, %',
    asItIs: 'as it is',
    afterStep: (number: number) => `after step ${number}`,
    reached: (wanted: string) =>
      `The strain wanted, 95 % of the cloth below ${wanted} %, is reached on the rough form this was judged on.`,
    notReached: (wanted: string, least: string) =>
      `The strain wanted, 95 % of the cloth below ${wanted} %, is not reached: ${least} % is the least found.`,
  },
  region: {
    title: 'Region',
    found: (area: string, strain: string, min: string, max: string) =>
      `Region of ${area} cm²: 95 % of the cloth is strained less than ${strain} %; from ${min} % to ${max} %.`,
    round: (body: string, flat: string) => `Round it ${body} on the body, ${flat} on the flat piece.`,
  },
  printCorrect: {
    correction: (across: string, up: string) =>
      `Correction: ${across} % across the page, ${up} % up the page.`,
    keep: (entry: string) => `To keep it, put ${entry} under "cutting" in the project file.`,
  },
  demo: { demo: 'demo', who: 'who', unreadable: 'unreadable' },
};
