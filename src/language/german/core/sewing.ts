import type { SewingPhrases } from '../../../core/sewing/index.ts';
import type { Entries } from '../../catalogue.ts';

/** Warum eine Folge der Arbeiten nicht geht. */
export const sewing: Entries<SewingPhrases> = {
  'sewing.fault': ({ step, reason }, { say }) =>
    `Das Gewählte lässt sich in keiner Folge bauen, die wir kennen. Schritt „${say(step)}“ geht nicht: ${say(reason)}`,
  'sewing.part-missing': ({ part }, { say }) => `„${say(part)}“ ist noch nicht gemacht.`,
  'sewing.fact-missing': ({ fact }, { say }) => `„${say(fact)}“: noch nicht bekannt.`,
  'sewing.cut-for-filling': ({ part }, { say }) =>
    `„${say(part)}“ wird an einer Person anprobiert und ist für die Füllung kleiner geschnitten.`,
  'sewing.packed-untold': ({ seam }, { say }) =>
    `Naht „${say(seam)}“ schließt einen Ring, in dem Innenteile sind: Sie ist nur zu nähen, wenn alles Übrige in den Schlauch daneben gepackt ist, und das ist nicht gesagt.`,
  'sewing.pack-too-tight': ({ seam, mouth, pack, least }, { say, length, plain }) =>
    `An Naht „${say(seam)}“ ist der Schlauch an der engsten Stelle ${length(mouth)} rund und alles Übrige, aufgerollt, ${length(pack)}: das ${plain(least, 1)}fache ist nötig.`,
  'sewing.pack-is-stiff': ({ seam, part }, { say }) =>
    `An Naht „${say(seam)}“ wird alles Übrige aufgerollt, und „${say(part)}“ biegt sich nicht.`,
  'sewing.no-free-edge': ({ seam, most }, { say, length }) =>
    `Von „${say(seam)}“ bis zu einer freien Kante ist es überall weiter als ${length(most)}: Keine Maschine kommt hin.`,
  'sewing.head-does-not-pass': ({ girth, least }, { length }) =>
    `Durch eine Öffnung von ${length(girth)} geht kein Kopf: ${length(least)} sind nötig.`,
  'sewing.insert-blocked': ({ part, gate, girth, least }, { say, length }) =>
    `„${say(part)}“ geht nicht durch „${say(gate)}“: Dann sind dort ${length(girth)} offen, und ${length(least)} sind nötig.`,
  'sewing.enclosed-unfixed': ({ part }, { say }) =>
    `„${say(part)}“ ist eingeschlossen, und nichts hält es: Keine Hand kommt mehr hin.`,
  'sewing.no-hole': ({ part, other }, { say }) => `„${say(part)}“ hat kein Loch für „${say(other)}“.`,
  'sewing.end-not-free': ({ part, other }, { say }) =>
    `„${say(part)}“ lässt sich nicht aufschieben: „${say(other)}“ ist im Weg.`,
  'sewing.open-neighbour': ({ level }, { say }) =>
    `„${say(level)}“ wird gemessen, während eine Zone daneben nicht voll oder nicht geschlossen ist.`,
  'sewing.pulled-though-joined': ({ part }, { say }) =>
    `„${say(part)}“ ist an beiden Enden angenäht: Da ist nichts zu ziehen.`,
  'sewing.measured-limp': ({ fact }, { say }) =>
    `„${say(fact)}“ wird an hängendem Stoff gemessen: Er muss flach liegen oder voll sein.`,
  'sewing.threaded-late': ({ part }, { say }) =>
    `„${say(part)}“ muss durch seinen Schlitz, bevor sein Ende angenäht und sein Steg geschlossen ist.`,
  'sewing.piece-unused': ({ part }, { say }) => `Teil „${say(part)}“ kommt in keinem Schritt vor.`,
  'sewing.same-name': ({ seam, letter }, { say }) => `Zwei Nähte heißen „${say(seam)}“ (${letter}).`,
  'sewing.other-order': 'Die Nähte stehen in einer anderen Folge, als sie genäht werden.',
  'sewing.load-chain': 'Nichts trägt das Kleidungsstück lückenlos bis zum Boden.',
  'sewing.beyond-reach': ({ part, depth, reach }, { say, length }) =>
    `Zone „${say(part)}“ endet ${length(depth)} von der Öffnung, durch die sie gefüllt wird, und ${length(reach)} weit reicht man.`,
  'sewing.hand-does-not-pass': ({ part, gate, girth, least }, { say, length }) =>
    `Zone „${say(part)}“ wird durch „${say(gate)}“ gefüllt: Dort sind ${length(girth)} offen, und ${length(least)} sind nötig.`,
  'sewing.caution-twice': ({ caution }, { say }) => `Die Warnung „${say(caution)}“ steht zweimal da.`,
  'sewing.caution-late': ({ caution }, { say }) =>
    `Die Warnung „${say(caution)}“ steht nicht da, bevor sie nötig ist.`,
  'sewing.allowance-too-small': ({ seam, allowance, least }, { say, length }) =>
    `„${say(seam)}“ hat eine Zugabe von ${length(allowance)}; so genäht, braucht sie ${length(least)}.`,
  'sewing.not-joined': ({ seam }, { say }) => `„${say(seam)}“ wird in keinem Schritt genäht.`,
  'sewing.joined-twice': ({ seam }, { say }) => `„${say(seam)}“ wird in mehr als einem Schritt genäht.`,
};
