/**
 * npm run pictures -- FILE FOLDER [--triangles N] [--language TAG]: every picture that can be drawn of a form, as SVG files and a
 * page to look at them together.
 */
import { Command } from 'commander';
import { writeSvg } from '../core/export/index.ts';
import { makeForm } from '../core/pipeline/index.ts';
import { LANGUAGES } from '../language/index.ts';
import { createReader } from './create-reader.ts';
import { describeIssues } from './describe-form.ts';
import { CommandFailure, exitCodes } from './exit-codes.ts';
import { formPictures } from './form-pictures.ts';
import { readProjectFile } from './read-project-file.ts';
import { writeFiles } from './write-files.ts';

const english = await createReader('en');
const program = new Command('pictures')
  .description('Write every picture that can be drawn of a form as SVG files, and a page with all of them.')
  .argument('<file>', 'a saved project')
  .argument('[folder]', 'where to write', 'out/pictures')
  .option('-t, --triangles <n>', 'fineness of the whole shell', '20000')
  .option('-l, --language <tag>', 'language of the words in them', 'en')
  .action(writePictures);

await program.parseAsync().catch((error: unknown) => {
  if (!(error instanceof CommandFailure)) throw error;
  process.stderr.write(`${error.tell(english.words)}\n`);
  process.exitCode = error.exitCode;
});

async function writePictures(
  file: string,
  folder: string,
  options: { triangles: string; language: string },
): Promise<void> {
  const reader = await createReader(LANGUAGES.find((tag) => tag === options.language) ?? 'en');
  const project = await readProjectFile(file);
  const targetTriangles = Number(options.triangles);
  const form = project.ok ? makeForm(project.value, { speaker: reader.speaker, targetTriangles }) : project;
  if (!form.ok) {
    process.stderr.write(`${describeIssues(form.issues, reader)}\n`);
    process.exitCode = exitCodes.errorsInProject;
    return;
  }
  const { say } = reader.speaker;
  const files = formPictures(form.value, say).map(({ name, drawing }) => {
    return { name: `${name}.svg`, content: writeSvg(drawing, { say, isCompact: true }) };
  });
  const figures = files.map(({ name, content }) => {
    const size = (content.length / 1000).toFixed(1);
    return `<figure><img src="${name}" alt=""><figcaption>${name}, ${size} kB</figcaption></figure>`;
  });
  const style = '<style>figure { display: inline-block; margin: 8px; font: 12px sans-serif }</style>';
  const page = { name: 'index.html', content: `<!doctype html>${style}${figures.join('\n')}\n` };
  const written = await writeFiles(folder, [...files, page]);
  process.stdout.write(`${written.join('\n')}\n`);
}
