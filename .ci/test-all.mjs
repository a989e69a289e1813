// Browser tests beside checks and unit tests: alone, the browser leaves a core idle about half of the time, waiting for its
// page. Checks and unit tests give way to it, so that the page stays as quick as when it is alone. Their lines come as they
// are written, those of the browser tests at its end. Everything runs to its end; any failure fails. Unit tests have all cores,
// though tests of one process share forms: one fewer would idle from the end of the browser tests on, a third of the whole time.
import { spawn } from 'node:child_process';
import { setPriority } from 'node:os';

const GIVING_WAY = 10;
const browser = run(['e2e'], 'pipe');
const others = runInTurn([['check'], ['unit']]);
const codes = [await browser.done, ...(await others)];
console.log(browser.said());
process.exitCode = codes.every((code) => code === 0) ? 0 : 1;

async function runInTurn(scripts) {
  const codes = [];
  for (const script of scripts) {
    const { child, done } = run(script, 'inherit');
    setPriority(child.pid, GIVING_WAY);
    codes.push(await done);
  }
  return codes;
}

/** One script of package.json, with its exit code, and what it said where it was not written through. */
function run([script, ...args], output) {
  const began = performance.now();
  const child = spawn('npm', ['run', script, ...args], {
    stdio: ['ignore', output, output],
    shell: process.platform === 'win32',
  });
  const said = [];
  for (const stream of [child.stdout, child.stderr]) stream?.on('data', (part) => said.push(part));
  const done = new Promise((end) => {
    child.on('close', (code) => {
      console.log(`${script}: ${Math.round((performance.now() - began) / 1000)} s, exit code ${code}`);
      end(code ?? 1);
    });
  });
  return { child, done, said: () => Buffer.concat(said).toString() };
}
