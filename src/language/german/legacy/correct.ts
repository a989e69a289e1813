import type { DisplayUnit } from '../../../core/base/index.ts';
import { wordsOf } from '../../../core/base/index.ts';
import type { Correction, CorrectionWords } from '../../../core/simulate/index.ts';
import type { Numbers } from '../../numbers.ts';

type NameOf = (id: string) => string;

/** How names and numbers are said. */
interface Say {
  readonly nameOf: NameOf;
  length(mm: number): string;
  mass(kg: number): string;
  percent(share: number): string;
  /** Millimetres, or sixteenths of an inch; without sign. */
  small(mm: number): string;
}

/** A correction in plain words and the maker's units, as `wordCorrection` of the core says it in English. */
export function wordCorrection(
  correction: Correction,
  nameOf: NameOf,
  unit: DisplayUnit,
  numbers: Numbers,
): CorrectionWords {
  const say: Say = {
    nameOf,
    length: (mm) => numbers.length(mm, unit),
    mass: (kg) => numbers.mass(kg, unit),
    percent: (share) => numbers.percent(share, 1),
    small: (mm) => {
      const size = Math.abs(mm);
      if (unit === 'in') return numbers.length(size, 'in', { fraction: 16 });
      return `${numbers.fixed(size, size < 9.95 ? 1 : 0)} mm`;
    },
  };
  switch (correction.kind) {
    case 'misread': {
      const { levelId, girth, least, most } = correction;
      const again = girth < least ? 'Den Umfang' : 'Breite und Tiefe';
      return {
        title: `${say.nameOf(levelId)}: diese Werte können nicht zusammen stimmen`,
        text: `Was so breit und tief ist, misst rundherum mindestens ${say.length(least)} und höchstens ${say.length(most)}; eingetragen sind ${say.length(girth)}. ${again} noch einmal messen, mit Winkeln an der Form.`,
      };
    }
    case 'growth':
      return {
        title: `Der Stoff hat nachgegeben: Jeder Umfang ist um etwa ${say.percent(correction.share)} zu groß`,
        text: `Überall derselbe Anteil, das ist der Stoff, nicht die Füllung. Ein Probeschlauch davon würde um ${say.percent(correction.growth)} nachgeben: als gemessenes Nachgeben übernehmen, dann werden die Schnittteile kleiner zugeschnitten. An dieser Form Füllung herausnehmen, bis die Umfänge stimmen.`,
      };
    case 'scale':
      return {
        title: `Alles ist um ${say.percent(Math.abs(correction.share))} ${correction.share > 0 ? 'zu groß' : 'zu klein'}`,
        text: 'Überall derselbe Anteil, und mehr, als Stoff von selbst tut: vor allem anderen die Messstrecken des Ausdrucks und die Nahtzugaben nachmessen.',
      };
    case 'fill':
      return wordFill(correction, say);
    case 'shape':
      return wordShape(correction, say);
    case 'seam':
      return wordSeam(correction, say);
  }
}

function wordSeam(
  { levelId, off, each, letters, isPossible, isFilled }: Correction & { kind: 'seam' },
  say: Say,
): CorrectionWords {
  const first = isFilled
    ? 'Füllung allein dehnt Stoff nicht so weit, also sind die Nähte zu weit. Zuerst die Füllung herausnehmen: Über Füllung wird keine Naht genäht. Dann '
    : '';
  const which = `jede der ${letters.length} Nähte ${letters.join(', ')} dort um ${say.small(each)}`;
  const act =
    off > 0 ? `${which} enger nähen, bis zu den nächsten Höhenlinien auslaufend` : `${which} auslassen`;
  const limit = isPossible
    ? ''
    : ' Dafür ist die Zugabe zu schmal: stattdessen ein neues Schnittteil einsetzen.';
  return {
    title: `${say.nameOf(levelId)}: Die Hülle ist rundherum um ${say.small(off)} ${off > 0 ? 'zu weit' : 'zu eng'}`,
    text: `${capitalise(`${first}${act}.`)}${limit}`,
  };
}

function wordFill(
  { levelId, off, mass, zones, isAlone }: Correction & { kind: 'fill' },
  say: Say,
): CorrectionWords {
  const where = zones.map((id) => `„${say.nameOf(id)}“`).join(' und ');
  const amount = say.mass(Math.abs(mass));
  const again =
    isAlone && Math.abs(off) > 10
      ? ' Alle anderen gemessenen Umfänge stimmen: Bleibt es so, die Person hier noch einmal messen.'
      : '';
  return off > 0
    ? {
        title: `${say.nameOf(levelId)}: rundherum um ${say.small(off)} zu groß`,
        text: `Füllung herausnehmen, etwa ${amount} aus ${where}, und noch einmal messen. Nicht die Naht enger nähen.${again}`,
      }
    : {
        title: `${say.nameOf(levelId)}: rundherum um ${say.small(off)} zu klein`,
        text: `Füllung hineingeben, etwa ${amount} in ${where}, von der Oberfläche nach innen.${again}`,
      };
}

function wordShape(
  { levelId, widthOff, depthOff, change, ties }: Correction & { kind: 'shape' },
  say: Say,
): CorrectionWords {
  const part = (off: number, word: string): string[] =>
    Math.abs(off) < 0.5 ? [] : [`um ${say.small(off)} zu ${word}`];
  const offs = [
    ...part(depthOff, depthOff > 0 ? 'tief' : 'flach'),
    ...part(widthOff, widthOff > 0 ? 'breit' : 'schmal'),
  ];
  const title = `${say.nameOf(levelId)}: ${offs.join(' und ')}, bei richtigem Umfang`;
  if (!change || ties.length === 0) {
    const text =
      'Kein Band allein bringt das: Füllung von dort, wo es sich wölbt, dorthin schieben, wo es flach ist, und Breite und Tiefe noch einmal messen.';
    return { title, text };
  }
  const list = ties.map((tie) => `${say.nameOf(wordsOf(tie.name))} um ${say.small(tie.change)}`).join(', ');
  return {
    title,
    text: `An dieser Höhenlinie ${change.change < 0 ? 'kürzen' : 'verlängern'}: ${list}. Das macht die Form dort um ${say.small(change.depth)} ${change.depth < 0 ? 'flacher' : 'tiefer'} und um ${say.small(change.width)} ${change.width < 0 ? 'schmaler' : 'breiter'}. Vorher die Füllung aus der Zone nehmen.`,
  };
}

function capitalise(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
