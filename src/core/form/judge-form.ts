import type { Issue, Phrase } from '../base/index.ts';
import type { ChartPlace, SeamedShell } from '../seams/index.ts';
import { phrase } from './phrases.ts';
import type { Report, ReportPanel } from './types.ts';
import type { Verdict, VerdictPlace } from './verdict.ts';

/** mm: notches further apart are felt in sewing (common practice, no source: a thread or two). */
const NOTCHES_APART = 0.5;
/** No order of work was found: it cannot be built, though every piece can be cut. */
const NO_ORDER = 'order-of-work';

/**
 * Judges a form by all that is known of it: what was found while it was made and ordered, seams whose partners differ, pieces that fold
 * over, and at last what its cloth is asked for where it will be seen (`ReportCloth.seen`). Undefined while nothing is unrolled.
 */
export function judgeForm(report: Report, shell: SeamedShell): Verdict | undefined {
  const { strain, issues, panels, seams } = report;
  if (strain === undefined) return undefined;
  const stopped = verdictOfIssues(issues);
  if (stopped) return stopped;
  const folded = panels.findIndex(({ flipped }) => flipped > 0);
  if (folded >= 0) {
    const { name, id } = panels[folded];
    const reason = phrase('verdict.folds');
    const place = placeOn(shell, folded, 0);
    const worst = { panelId: id, name, message: reason, place };
    return { kind: 'cannot', message: cannot(reason), worst, path: 'seams' };
  }
  const apart = seams.find(({ maxMarkGap }) => maxMarkGap > NOTCHES_APART);
  if (apart) {
    const reason = phrase('verdict.partners', { letter: apart.letter, gap: apart.maxMarkGap });
    return { kind: 'cannot', message: cannot(reason), path: 'seams' };
  }
  const seen = listSeen(panels, shell);
  if (seen.length === 0) return { kind: 'sound', message: phrase('verdict.sound', { strain }), path: '' };
  const told = { places: seen.length };
  const { isPull, ...worst } = seen[0];
  const message = isPull ? phrase('verdict.pulls', told) : phrase('verdict.wrinkles', told);
  return { kind: 'wrinkles', message, worst, path: 'seams' };
}

/** What cannot be made at all, by the first issue that says so; undefined when none does. */
function verdictOfIssues(issues: readonly Issue[]): Verdict | undefined {
  const reason =
    issues.find(({ severity }) => severity === 'error') ?? issues.find(({ code }) => code === NO_ORDER);
  if (!reason) return undefined;
  const { message, path, code } = reason;
  return { kind: 'cannot', message: cannot(message), path, code };
}

const cannot = (reason: Phrase): Phrase => phrase('verdict.cannot', { reason });

type SeenPlace = VerdictPlace & { readonly isPull: boolean };

/** Largest first: it is seen first. Mirror images are left out. */
function listSeen(panels: readonly ReportPanel[], shell: SeamedShell): readonly SeenPlace[] {
  return panels
    .flatMap(({ id, name, cloth }, index) =>
      shell.panels[index].mirrorOf === undefined ? cloth.seen.map((zone) => ({ zone, id, name, index })) : [],
    )
    .toSorted((a, b) => b.zone.area - a.zone.area)
    .map(({ zone, id, name, index }) => ({
      panelId: id,
      name: phrase('verdict.at', { panel: name, place: zone.place }),
      message: zone.message,
      place: placeOn(shell, index, zone.vertex),
      isPull: zone.strain > 0,
    }));
}

function placeOn({ panels }: SeamedShell, panel: number, vertex: number): ChartPlace {
  const { chart } = panels[panel];
  return { u: chart[2 * vertex], v: chart[2 * vertex + 1] };
}
