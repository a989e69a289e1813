import { wordsOf } from '../core/base/index.ts';
import {
  type Bounds,
  boundsOfItems,
  type Drawing,
  type DrawingItem,
  makeLayer,
  makeText,
  translateItem,
} from '../core/drawing/index.ts';
import { writeSvg } from '../core/export/index.ts';
import { pictureStrain } from '../core/flatten/index.ts';
import type { Form } from '../core/form/index.ts';
import { pictureCurve, pictureMesh, type View } from '../core/mesh/index.ts';
import { pictureBend, pictureShell } from '../core/seams/index.ts';
import { describeIssues, describeReport, describeTapes } from './describe-form.ts';
import { englishSpeaker } from './english-speaker.ts';

const gap = 30;
const views: readonly View[] = ['front', 'side', 'back'];

/** One page: every stage with its number, a picture and what was measured. Stands alone: no scripts, no links out. */
export function stagesPage(form: Form): string {
  const { report, project, body, shell } = form;
  const unit = project.displayUnits;
  const perStage = report.timingsMs;
  const stages = [
    section(
      1,
      'Tape',
      perStage.tape,
      `${picture(
        'Tape',
        views.map((view) => pictureTapes(form, view)),
        [...views],
      )}
<pre>${escapeHtml(describeTapes(body.tapes, unit))}\n\n${escapeHtml(describeIssues(report.issues))}</pre>`,
    ),
    section(
      2,
      'Body',
      perStage.body,
      `${picture(
        'Body',
        views.map((view) => pictureMesh(form.closedMesh, view)),
        [...views],
      )}
<p>${report.body.volumeL.toFixed(1)} litres inside, ${(report.body.area / 1e6).toFixed(2)} m² of shell.</p>`,
    ),
    section(
      3,
      'Seams',
      perStage.seams,
      `${picture(
        'Seams',
        views.map((view) => pictureShell(shell, view)),
        [...views],
      )}
<p>${shell.panels.length} panels, ${shell.seams.length} seams.</p>
${picture(
  'How the seams bend',
  views.map((view) => pictureBend(shell, view)),
  [...views],
)}
<p>Every tooth is as long as the seam turns sharply there on the cloth: 25 mm for a radius of 100 mm.</p>`,
    ),
    section(
      4,
      'Panels',
      perStage.panels,
      `${picture(
        'Panels',
        shell.panels.map((panel, i) => pictureStrain(form.flat[i], panel.mesh)),
        shell.panels.map((panel) => wordsOf(panel.name)),
      )}
<p>Indigo: cloth must shrink by 5 % or more; pale: true; rust: must stretch by 5 % or more.</p>
<pre>${escapeHtml(describeReport(report, unit))}</pre>`,
    ),
    section(5, 'Cutting', perStage.cutting, form.drawings.map(({ drawing }) => inline(drawing)).join('\n')),
  ];
  return htmlPage(project.name, stages.join('\n'));
}

/** Where every tape lies: asked for in red, estimated in grey. */
function pictureTapes({ body, closedMesh }: Form, view: View): DrawingItem[] {
  const tapes = body.tapes
    .filter(({ id }) => body.tapePaths[id] !== undefined)
    .map(({ id, status }) => {
      const stroke = status === 'estimated' ? '#8a8a8a' : '#9b2226';
      return pictureCurve(body.tapePaths[id], view, {
        stroke,
        strokeWidth: status === 'estimated' ? 0.8 : 1.4,
      });
    });
  return [...pictureMesh(closedMesh, view, () => '#efece6'), ...tapes];
}

/** Links to the pages. */
export function indexPage(pages: readonly { readonly name: string; readonly title: string }[]): string {
  const rows = pages.map(
    ({ name, title }) => `<li><a href="${escapeHtml(name)}.html">${escapeHtml(title)}</a></li>`,
  );
  return htmlPage('Stages', `<ul>${rows.join('\n')}</ul>`);
}

function section(number: number, name: string, ms: number | undefined, content: string): string {
  const time = ms === undefined ? '' : ` <small>${ms.toFixed(0)} ms</small>`;
  return `<section><h2>${number} ${name}${time}</h2>\n${content}</section>`;
}

/** Groups of items side by side with a title under each. */
function picture(
  title: string,
  groups: readonly (readonly DrawingItem[])[],
  names: readonly string[],
): string {
  let x = gap;
  const boxes = groups.map((items) => boundsOfItems(items) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 });
  const height = Math.max(...boxes.map((box: Bounds) => box.maxY - box.minY));
  const placed = groups.flatMap((items, i) => {
    const box = boxes[i];
    const moved = items.map((item) => translateItem(item, x - box.minX, gap + height - box.maxY));
    const text = makeText(x + (box.maxX - box.minX) / 2, height + 2 * gap, names[i], 14, {
      anchor: 'middle',
    });
    x += box.maxX - box.minX + gap;
    return [...moved, text];
  });
  return inline({ width: x, height: height + 3 * gap, title, layers: [makeLayer('picture', placed)] });
}

/** SVG inside the page: without the XML declaration, as wide as the page. */
function inline(drawing: Drawing): string {
  return writeSvg(drawing, englishSpeaker)
    .replace(/^<\?xml[^>]*\?>\s*/, '')
    .replace(/(<svg[^>]*?) width="[^"]*" height="[^"]*"/, '$1');
}

function htmlPage(title: string, content: string): string {
  return `<!doctype html>
<html lang="en"><meta charset="utf-8"><title>${escapeHtml(title)}</title>
<style>body{font:16px/1.45 Georgia,serif;margin:2rem auto;max-width:70rem;padding:0 1rem}svg{width:100%;height:auto;
border:1px solid #ccc}pre{font-size:13px;overflow-x:auto}small{color:#666;font-weight:normal}</style>
<h1>${escapeHtml(title)}</h1>
${content}
</html>
`;
}

function escapeHtml(text: string): string {
  return text.replace(/[&<>"]/g, (c) => `&#${c.charCodeAt(0)};`);
}
