import type { Help } from '../english/help.ts';

/** Was die Hilfe sagt: Tasten und Gesten, und Wörter des Fachs. */
export const help: Help = {
  title: 'Tasten und Wörter',
  keys: 'Tasten und Gesten',
  words: 'Wörter des Fachs',
  toWords: 'Wörter des Fachs stehen weiter unten.',
  groups: [
    {
      name: 'Überall',
      keys: [
        ['Strg oder ⌘, Z', 'nimmt den letzten Schritt zurück und geht dorthin, wo er gemacht wurde'],
        ['Strg oder ⌘, Umschalt, Z', 'führt ihn wieder aus'],
        [
          'Strg oder ⌘, S',
          'speichert das Projekt; mit Umschalt in eine gewählte Datei, wo der Browser das kann',
        ],
        ['Alt, 1 bis 9', 'geht zu einer Station'],
        ['Eingabe, Esc', 'übernimmt das Eingetragene; verwirft, was nicht geht'],
        ['?', 'öffnet diese Liste'],
      ],
    },
    {
      name: 'Der Körper',
      keys: [
        ['Ziehen oder Pfeiltasten', 'dreht ihn'],
        ['Rad, zwei Finger, + und −', 'holt ihn näher oder rückt ihn weg'],
        ['Darauf zeigen', 'hebt Naht, Maßband oder Höhenlinie hervor, und ihre Zeile in der Liste'],
      ],
    },
    {
      name: 'Flache Teile, Stoff und Fotos',
      keys: [
        ['Ziehen oder Pfeiltasten', 'verschiebt das Bild, oder das gewählte Teil oder den gewählten Punkt'],
        ['+ und −, 0', 'holt näher oder rückt weg; zeigt alles'],
        ['Umschalt mit Pfeil', 'verschiebt zehnmal so weit'],
        ['Alt beim Ziehen', 'ein Punkt rastet dann nirgends ein'],
        ['R, L', 'dreht ein aufgelegtes Teil um eine halbe Drehung; steckt es fest'],
      ],
    },
    {
      name: 'Am Arbeitstisch',
      keys: [['Pfeiltasten oder Wischen', 'geht zum nächsten Schritt oder zurück']],
    },
  ],
  glossary: [
    ['Band, Gurt', 'Ein Stoffband innen, von der Hülle zur Rohrhülse, das sie zurückhält.'],
    ['Einlage', 'Ein zweiter Stoff, aufgebügelt oder aufgenäht, der den Oberstoff fest macht.'],
    ['Fadenlauf', 'Die Richtung der Kette, längs der Webkante.'],
    ['heften', 'Mit langen Handstichen nähen, die bis zur Naht halten und dann gezogen werden.'],
    ['Höhenlinie', 'Eine Linie rund um den Körper auf einer Höhe: Brust, Taille, Hüfte.'],
    ['Kette, Schuss', 'Die Fäden längs des Stoffs, und die quer dazu.'],
    ['Mehrweite', 'Was eine Seite einer Naht länger ist als die andere; es wird beim Nähen eingehalten.'],
    ['Nahtzugabe', 'Stoff außerhalb der Nahtlinie, an dem die Naht genäht wird.'],
    ['Passzeichen', 'Ein Zeichen an der Kante, das sein Gegenstück am anderen Teil trifft.'],
    ['Probehülle', 'Die Hülle, zuerst aus billigem Stoff genäht, zum Anprobieren.'],
    ['Schnittteil', 'Ein Teil des Oberstoffs zwischen seinen Nähten.'],
    ['schräger Fadenlauf', 'Die Richtung unter 45° zu den Fäden; dort dehnt sich Stoff am meisten.'],
    ['Steg', 'Eine Stoffwand innen, von vorn nach hinten, damit die Form nicht rund wird.'],
    ['Verformung', 'Wie sehr Stoff einlaufen oder sich dehnen muss, um auf dem Körper zu liegen.'],
    ['Webkante', 'Die feste gewebte Kante des Stoffs.'],
  ],
};
