/**
 * npm run stages -- [FILE…] [--out DIR] [--triangles N]: a page per project with a numbered picture and the numbers
 * of every stage, and an index over them. Without a file, every demo project.
 */
import { readdirSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { Command } from 'commander';
import { makeForm } from '../core/pipeline/index.ts';
import { createReader } from './create-reader.ts';
import { describeIssues } from './describe-form.ts';
import { CommandFailure, exitCodes } from './exit-codes.ts';
import { readProjectFile } from './read-project-file.ts';
import { indexPage, stagesPage } from './stages-page.ts';
import { type OutputFile, writeFiles } from './write-files.ts';

const demoFolder = fileURLToPath(new URL('../../shared/demos/', import.meta.url));

const reader = await createReader('en');
const program = new Command('stages')
  .description('Write a picture and the numbers of every stage of one or more projects, as pages to look at.')
  .argument('[files...]', 'saved projects; default: every demo')
  .option('-o, --out <folder>', 'where to write', 'out/stages')
  .option('-t, --triangles <n>', 'fineness of the whole shell', '6000')
  .action(writeStages);

await program.parseAsync().catch((error: unknown) => {
  if (!(error instanceof CommandFailure)) throw error;
  process.stderr.write(`${error.tell(reader.words)}\n`);
  process.exitCode = error.exitCode;
});

async function writeStages(files: string[], options: { out: string; triangles: string }): Promise<void> {
  const projects = files.length > 0 ? files : demoFiles();
  const pages: { name: string; title: string; page: OutputFile }[] = [];
  for (const file of projects) {
    const name = path.basename(file).replace(/(\.loftseam)?\.json$/, '');
    process.stderr.write(`${name}\n`);
    const project = await readProjectFile(file);
    const form = project.ok
      ? makeForm(project.value, {
          speaker: reader.speaker,
          targetTriangles: Number(options.triangles),
          lays: true,
          now: () => performance.now(),
          date: new Date().toISOString().slice(0, 10),
        })
      : project;
    if (!form.ok) {
      process.stderr.write(`${describeIssues(form.issues, reader)}\n`);
      process.exitCode = exitCodes.errorsInProject;
      continue;
    }
    const title = form.value.project.name;
    pages.push({ name, title, page: { name: `${name}.html`, content: stagesPage(form.value, reader) } });
  }
  const index = { name: 'index.html', content: indexPage(pages) };
  const written = await writeFiles(options.out, [...pages.map((entry) => entry.page), index]);
  process.stdout.write(`${written.join('\n')}\n`);
}

function demoFiles(): string[] {
  return readdirSync(demoFolder)
    .filter((file) => file.endsWith('.loftseam.json'))
    .sort()
    .map((file) => path.join(demoFolder, file));
}
