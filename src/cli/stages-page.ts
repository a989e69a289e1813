import {
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
import { drawLayPages } from '../core/laying/index.ts';
import type { Bounds } from '../core/math/index.ts';
import { pictureCurve, pictureMesh, type View } from '../core/mesh/index.ts';
import { STAGES, type StageId } from '../core/pipeline/index.ts';
import { pictureBend, pictureShell } from '../core/seams/index.ts';
import { englishCore, speakerFor } from '../language/index.ts';
import type { Reader } from './create-reader.ts';
import { describeFilled } from './describe-filled.ts';
import { describeIssues, describeReport, describeTapes } from './describe-form.ts';
import { describeInside } from './describe-inside.ts';

const gap = 30;
const views: readonly View[] = ['front', 'side', 'back'];

/** How a stage is shown. */
interface StageSection {
  readonly title: string;
  /** HTML. */
  readonly content: (form: Form, reader: Reader) => string;
}

const SECTIONS: Readonly<Record<StageId, StageSection>> = {
  tape: {
    title: 'Tape',
    content: (form, reader) => `${pictureViews('Tape', (view) => pictureTapes(form, view))}
<pre>${escapeHtml(describeTapes(form.body.tapes, form.project.displayUnits, reader))}\n\n${escapeHtml(describeIssues(form.report.issues, reader))}</pre>`,
  },
  body: {
    title: 'Body',
    content: ({ closedMesh, report }) => `${pictureViews('Body', (view) => pictureMesh(closedMesh, view))}
<p>${report.body.volumeL.toFixed(1)} litres inside, ${(report.body.area / 1e6).toFixed(2)} m² of shell.</p>`,
  },
  seams: {
    title: 'Seams',
    content: ({ shell }) => `${pictureViews('Seams', (view) => pictureShell(shell, view))}
<p>${shell.panels.length} panels, ${shell.seams.length} seams.</p>
${pictureViews('How the seams bend', (view) => pictureBend(shell, view))}
<p>Every tooth is as long as the seam turns sharply there on the cloth: 25 mm for a radius of 100 mm.</p>`,
  },
  panels: {
    title: 'Panels',
    content: ({ shell, flat, report, project }, reader) => `${picture(
      'Panels',
      shell.panels.map((panel, i) => pictureStrain(flat[i], panel.mesh)),
      shell.panels.map((panel) => reader.say(panel.name)),
    )}
<p>Indigo: cloth must shrink by 5 % or more; pale: true; rust: must stretch by 5 % or more.</p>
<pre>${escapeHtml(describeReport(report, project.displayUnits, reader))}</pre>`,
  },
  inside: {
    title: 'Inside',
    content: ({ report: { inside }, project }, reader) =>
      inside ? `<pre>${escapeHtml(describeInside(inside, project.displayUnits, reader))}</pre>` : '',
  },
  filling: {
    title: 'Filling',
    content: ({ filled, report, project }, reader) =>
      filled && report.filled && report.inside
        ? `${pictureViews('Filled', (view) => pictureMesh({ ...filled.shell.mesh, positions: filled.positions }, view))}
<pre>${escapeHtml(describeFilled(report.filled, report.inside, project.displayUnits, reader))}</pre>`
        : '',
  },
  cutting: {
    title: 'Cutting',
    content: ({ drawings }) => drawings.map(({ drawing }) => inline(drawing)).join('\n'),
  },
  laying: {
    title: 'Laying',
    content: ({ laid = [], pieces, inside, project }, { say }) =>
      drawLayPages(
        laid,
        [...pieces, ...(inside?.pieces ?? [])],
        project.laying ?? {},
        project.name,
        { pageWidth: 210, pageHeight: 297, margin: 10 },
        say,
      )
        .map(inline)
        .join('\n'),
  },
};

/** One page: every stage with its number, a picture and what was measured. Stands alone: no scripts, no links out. */
export function stagesPage(form: Form, reader: Reader): string {
  const sections = STAGES.map(({ id }, i) => {
    const { title, content } = SECTIONS[id];
    return section(i + 1, title, form.report.timingsMs[id], content(form, reader));
  });
  return htmlPage(form.project.name, sections.join('\n'));
}

/** The same from every side. */
function pictureViews(title: string, draw: (view: View) => readonly DrawingItem[]): string {
  return picture(title, views.map(draw), views);
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

/** The pages are for contributors. */
const WORDED = speakerFor(englishCore);

/** SVG inside the page: without the XML declaration, as wide as the page. */
function inline(drawing: Drawing): string {
  return writeSvg(drawing, WORDED)
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
