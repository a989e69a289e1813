import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import type { NumberOption, Option, OptionTable } from '../../src/core/base/index.ts';
import { INSIDE_OPTIONS } from '../../src/core/inside/index.ts';
import { ALLOWANCE_KINDS, GRAIN_TURN, PATTERN_OPTIONS } from '../../src/core/pattern/index.ts';
import { parseProject } from '../../src/core/project/index.ts';
import { projectSchema } from '../../src/core/project/project.ts';
import {
  CUTTER_OPTIONS,
  MAT_SIDE,
  MEASURED_BAR,
  PRINT_OPTIONS,
  PROJECTED_LENGTH,
} from '../../src/core/sheet/index.ts';

const SQUARE = ['top', 'right', 'bottom', 'left', 'diagonal'];

const { overlap: _notInTheFile, ...print } = PRINT_OPTIONS;

/** What the file may name; `*` stands for any name. */
const options: Readonly<Record<string, Option>> = {
  ...optionsByPath('inside', INSIDE_OPTIONS),
  ...optionsByPath('cloth', PATTERN_OPTIONS),
  'cloth.allowanceByEdge.*': PATTERN_OPTIONS.allowance,
  'cloth.allowanceByKind.seam': PATTERN_OPTIONS.allowance,
  'cloth.allowanceByKind.opening': PATTERN_OPTIONS.allowance,
  ...Object.fromEntries(
    ALLOWANCE_KINDS.map((kind) => [`cloth.allowanceByKind.${kind}`, PATTERN_OPTIONS.allowance]),
  ),
  'cloth.allowanceByMaterial.*': PATTERN_OPTIONS.allowance,
  'cloth.grain.*': GRAIN_TURN,
  ...optionsByPath('cutting', print),
  ...optionsByPath('cutting', CUTTER_OPTIONS),
  'cutting.measuredBars.across': MEASURED_BAR,
  'cutting.measuredBars.up': MEASURED_BAR,
  ...Object.fromEntries(SQUARE.map((line) => [`cutting.projectedSquare.${line}`, PROJECTED_LENGTH])),
  'cutting.mat.width': MAT_SIDE,
  'cutting.mat.height': MAT_SIDE,
};
const numbers = Object.entries(options).filter(
  (entry): entry is [string, NumberOption] => 'unit' in entry[1],
);

/**
 * Least, most and usual of version 1 of the file, as it was first written. Within narrower limits a file once saved could not
 * be opened any more, and with another usual value a form would be made otherwise than before of the same file.
 */
const ofVersion1: Readonly<Record<string, readonly [least: number, most: number, usual: number | null]>> = {
  'inside.tubeDiameter': [5, 200, 25],
  'inside.boardThickness': [1, 30, 8],
  'inside.clothThickness': [0.1, 10, 0.6],
  'inside.wantedDeviation': [0.5, 50, 3],
  'inside.pressure': [0.1, 50, 3],
  'inside.clothStiffness': [1, 1000, 40],
  'inside.measuredGrowth': [0, 0.2, null],
  'inside.testTube.measure1': [500, 900, null],
  'inside.testTube.measure2': [500, 900, null],
  'inside.testTube.measure3': [500, 900, null],
  'inside.coverThickness': [0, 40, 0],
  'inside.magnetDiameter': [4, 60, 15],
  'inside.pegDiameter': [4, 60, 12],
  'inside.garmentMass': [0, 100, 3],
  'inside.garmentOffset': [0, 1000, 60],
  'inside.waistHeight': [300, 2000, null],
  'inside.legs': [3, 8, 5],
  'inside.legRadius': [50, 1000, 300],
  'inside.standMass': [0.1, 100, 6],
  'inside.tubeWall': [0.2, 50, 1.5],
  'inside.testTubeFill': [0.1, 2, null],
  'inside.garmentHeight': [0, 2500, null],
  'inside.stemDiameter': [5, 200, null],
  'cloth.allowance': [0, 50, 10],
  'cloth.allowanceByEdge.*': [0, 50, 10],
  'cloth.allowanceByKind.seam': [0, 50, 10],
  'cloth.allowanceByKind.opening': [0, 50, 10],
  // Limits alone: what is usual hangs on the kind, `tests/assembly/allowance-by-edge.test.ts`.
  ...Object.fromEntries(
    ['shoulder', 'side', 'closing', 'armhole', 'neck', 'base', 'wrist', 'web', 'tie', 'cover'].map((kind) => [
      `cloth.allowanceByKind.${kind}`,
      [0, 50, 10] as const,
    ]),
  ),
  'cloth.allowanceByMaterial.*': [0, 50, 10],
  // A quarter turn either way.
  'cloth.grain.*': [-1.5707963267948966, 1.5707963267948966, 0],
  'cutting.margin': [0, 50, 10],
  'cutting.kerf': [0, 3, 0],
  'cutting.bladeOffset': [0, 2, 0],
  'cutting.overcut': [0, 5, 0],
  'cutting.measuredBars.across': [50, 250, null],
  'cutting.measuredBars.up': [50, 250, null],
  ...Object.fromEntries(
    SQUARE.map((line) => [`cutting.projectedSquare.${line}`, [100, 2000, null] as const]),
  ),
  'cutting.mat.width': [150, 5000, null],
  'cutting.mat.height': [150, 5000, null],
};

describe('the tables of options', () => {
  it('have an entry for everything of inside, cloth and cutting that takes a number', () => {
    const taken = ['inside', 'cloth', 'cutting'].flatMap((section) =>
      numbersOfSchema(z.toJSONSchema(projectSchema.shape[section as 'inside'], { io: 'input' }), section),
    );
    expect(taken.sort()).toEqual(numbers.map(([path]) => path).sort());
  });

  it('say of every number what version 1 of the file said', () => {
    expect(
      Object.fromEntries(numbers.map(([path, { min, max, usual }]) => [path, [min, max, usual]])),
    ).toEqual(ofVersion1);
  });

  it.each(numbers)(
    'take the limits of %s themselves, and refuse what is just beyond',
    (path, { unit, min, max }) => {
      const step = unit === 'count' ? 1 : 1e-9;
      for (const value of [min, max]) expect(issuesWith(path, value), `${value}`).toEqual([]);
      for (const [value, limit] of [
        [min - step, min],
        [max + step, max],
      ]) {
        const field = path.replace('*', 'x');
        const refusal = { code: 'file-out-of-range', path: field, severity: 'error', measured: value, limit };
        expect(issuesWith(path, value), `${value}`).toMatchObject([refusal]);
      }
    },
  );

  it('count by whole numbers alone', () => {
    const counts = numbers.filter(([, { unit }]) => unit === 'count');
    expect(counts.map(([path]) => path)).toEqual(['inside.legs']);
    for (const [path, { min }] of counts) expect(issuesWith(path, min + 0.5)).toHaveLength(1);
  });

  it('offer every choice, and no other', () => {
    const choices = Object.entries(options).flatMap(([path, option]) =>
      'choices' in option ? [[path, option.choices] as const] : [],
    );
    expect(choices.map(([path]) => path)).toEqual([
      'inside.webPlaces',
      'inside.parts',
      'inside.strapsAt.hip',
      'inside.strapsAt.highHip',
      'inside.strapsAt.waist',
      'inside.strapsAt.underbust',
      'inside.strapsAt.bust',
      'inside.strapsAt.upperChest',
      'inside.plateCovers',
      'inside.poleMaterial',
      'cloth.notchShape',
      'cutting.paper',
      'cutting.joint',
      'cutting.twins',
      'cutting.plain',
      'cutting.ground',
      'cutting.booklet',
    ]);
    for (const [path, names] of choices) {
      for (const name of names) expect(issuesWith(path, name)).toEqual([]);
      expect(issuesWith(path, 'none of these')).toMatchObject([{ code: 'file-wrong-choice', path }]);
    }
  });

  it.each(Object.entries(options).filter(([, { usual }]) => usual !== null))(
    'take the usual value of %s as if it were given',
    (path, { usual }) => {
      expect(issuesWith(path, usual)).toEqual([]);
    },
  );
});

function optionsByPath(path: string, table: OptionTable): Record<string, Option> {
  return Object.fromEntries(
    Object.entries(table).flatMap(([key, entry]) =>
      'usual' in entry
        ? [[`${path}.${key}`, entry as Option]]
        : Object.entries(optionsByPath(`${path}.${key}`, entry)),
    ),
  );
}

type JsonSchema = z.core.JSONSchema.JSONSchema;

/** Paths of all numbers a JSON schema takes. */
function numbersOfSchema(schema: JsonSchema, path: string): string[] {
  if (schema.type === 'number' || schema.type === 'integer') return [path];
  const parts = Object.entries(schema.properties ?? {}) as [string, JsonSchema][];
  const { additionalProperties: any } = schema;
  if (typeof any === 'object') parts.push(['*', any as JsonSchema]);
  return parts.flatMap(([key, part]) => numbersOfSchema(part, `${path}.${key}`));
}

/** Objects of which the file wants all parts. */
const wholes: Readonly<Record<string, object>> = {
  measuredBars: { across: 200, up: 200 },
  mat: { width: 600, height: 400 },
  projectedSquare: { top: 500, right: 500, bottom: 500, left: 500, diagonal: 707 },
};

/** What is wrong with a project that names nothing but this value. */
function issuesWith(path: string, value: unknown) {
  const [section, key, part] = path.replace('*', 'x').split('.');
  const body = { figure: 'bust', measures: {} };
  return parseProject({
    format: 'loftseam-project',
    version: 1,
    name: 'limits',
    displayUnits: 'cm',
    body,
    [section]: { [key]: part === undefined ? value : { ...wholes[key], [part]: value } },
  }).issues;
}
