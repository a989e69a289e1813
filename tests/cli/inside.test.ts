import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { loftseam } from './run-loftseam.ts';

const demo = (id: string) => path.join(import.meta.dirname, `../../shared/demos/${id}.loftseam.json`);

let folder = '';
beforeEach(async () => {
  folder = await mkdtemp(path.join(tmpdir(), 'loftseam-'));
});
afterEach(() => rm(folder, { recursive: true }));

/** Not cut for the filling, which comes after what is judged here. */
const make = (id: string, inside: string) =>
  loftseam(
    'make',
    demo(id),
    '--inside',
    `${inside},recut=false`,
    '--triangles',
    '2000',
    '--formats',
    'json',
    '--out',
    path.join(folder, 'out'),
  );

describe('loftseam make --inside', () => {
  it('takes other values than the saved ones, lengths with units among them', async () => {
    const { code } = await make('straight', 'tubeDiameter=1 in,straps=false,webPlaces=panels');
    expect(code).toBe(0);
    const report = JSON.parse(await readFile(path.join(folder, 'out/report.json'), 'utf8'));
    const tube = report.inside.materials.find(({ id }: { id: string }) => id === 'tube');
    expect(tube.name).toContain('2.54 cm (1 in)');
    const braces: { id: string }[] = report.inside.braces;
    expect(braces.some(({ id }) => id.startsWith('strap'))).toBe(false);
  });

  // Field, number, limit and remedy, each in the message a maker reads.
  it.each([
    [
      'petite',
      'tubeDiameter=80',
      'inside.tubeDiameter',
      /pole of 8\.0 cm .*neck plate: at most [\d.]+ cm.*no thicker/,
      /webs? would come [\d.]+ cm.*needs [\d.]+ cm.*Take a pole of [\d.]+ cm/,
    ],
    [
      'average',
      'garmentMass=10,garmentOffset=300',
      'inside.garmentMass',
      /10 kg hung 30 cm .*tips at [\d.]+°.*is 10°\. Put [\d.]+ kg .*hang no more than [\d.]+ kg/,
    ],
    [
      'average',
      'magnetDiameter=40',
      'inside.magnetDiameter',
      /4 cm \(.*\), leave [\d.]+ cm .*0\.8 cm are needed.*Take magnets of [\d.]+ cm/,
    ],
    [
      'average',
      'clothThickness=10',
      'inside.clothThickness',
      /wrist plate: 3 layers of cloth of 1 cm .*[\d.]+ cm .*is the most/,
    ],
    [
      'average',
      'pressure=50,clothStiffness=1',
      'inside.pressure',
      /50 kPa .*1 N\/mm; .*Give a pressure of [\d.]+ kPa at most/,
    ],
    [
      'average',
      'waistHeight=300',
      'inside.waistHeight',
      /waist 30\.0 cm .*needs 6\.0 cm\. Set the waist at [\d.]+ cm/,
    ],
    [
      'average',
      'testTube.measure2=600',
      'inside.testTube.measure2',
      /60\.0 cm is less than .*63\.0 cm.*Fill it harder/,
    ],
    ['average', 'tubeDiameter=300', 'inside.tubeDiameter', /is 300; it must be at most 200/],
    ['average', 'webPlaces=sides', 'inside.webPlaces', /“sides”; it must be “seams” or “panels”/],
    ['average', 'tubeWidth=30', 'inside.tubeWidth', /tubeWidth/],
  ])('%s with %s: %s is named', async (id, inside, field, ...messages) => {
    const { code, err } = await make(id, inside);
    expect(code).toBe(1);
    expect(err.replace(/\s+/g, ' ')).toMatch(new RegExp(`ERROR ${field.replace('.', '\\.')} `));
    for (const message of messages) expect(err.replace(/\s+/g, ' ')).toMatch(message);
  });

  it('is refused when it is no list of keys and values', async () => {
    const { code, err } = await make('average', 'tubeDiameter');
    expect(code).toBe(2);
    expect(err).toContain('key=value');
  });
});
