import { describe, expect, it } from 'vitest';
import { createReader } from '../../src/cli/create-reader.ts';
import { describeIssues, describeTapes } from '../../src/cli/describe-form.ts';
import { formatTable } from '../../src/cli/format-table.ts';
import { showProgress } from '../../src/cli/show-progress.ts';
import { verbatim } from '../../src/core/base/index.ts';

const reader = await createReader('en');

describe('what the command line shows', () => {
  it('lines columns up by characters, not bytes', () => {
    const table = formatTable(
      [{ title: 'who' }, { title: 'mm', align: 'right' }],
      [
        ['Zoë', '5'],
        ['Bo', '1234'],
      ],
    );
    expect(table).toBe(['who    mm', '---  ----', 'Zoë     5', 'Bo   1234'].join('\n'));
  });

  it('shows tapes in the chosen unit and their difference in mm', () => {
    const tape = { id: 'bustGirth', kind: 'girth', target: 940, got: 939.96, status: 'met' } as const;
    expect(describeTapes([tape], 'cm', reader)).toContain('94.0 cm  94.0 cm   -0.04  met');
    expect(describeTapes([tape], 'in', reader)).toContain('37 in  37 in   -0.04  met');
    expect(describeTapes([{ ...tape, got: 940 }], 'cm', reader)).toContain(' 0.00  met');
    const estimate = { ...tape, status: 'estimated', spread: 12 } as const;
    // Nobody typed what is estimated.
    expect(describeTapes([estimate], 'cm', reader)).toMatch(
      /bustGirth +girth +– +94\.0 cm +– +estimated ±1\.2/,
    );
  });

  it('puts errors before warnings, each with its field', () => {
    const warning = {
      code: 'odd',
      path: 'body.measures.hipGirth',
      message: verbatim('Is it?'),
      severity: 'warning',
    } as const;
    const error = { code: 'bad', path: '', message: verbatim('No.'), severity: 'error' } as const;
    expect(describeIssues([warning, error], reader)).toBe(
      'ERROR    (bad)\n         No.\nwarning  body.measures.hipGirth  (odd)\n         Is it?',
    );
    expect(describeIssues([], reader)).toBe('No issues.');
  });
});

describe('showProgress', () => {
  function record(isTTY: boolean): string {
    let text = '';
    const stream = { isTTY, columns: 20, write: (part: string) => (text += part) };
    const { onProgress, end } = showProgress(stream, reader);
    onProgress(0, 'body', verbatim('Shaping the body'));
    onProgress(0.5, 'body', verbatim('Shaping the body some more'));
    onProgress(0.999, 'panels', verbatim('Unrolling'));
    end();
    return text;
  }

  it('writes one line per stage into a log', () => {
    expect(record(false)).toBe('body: Shaping the body\npanels: Unrolling\n');
  });

  it('rewrites one line on a terminal, never wider than it, and clears it', () => {
    const frames = record(true).split('\r\u001b[2K');
    expect(frames).toEqual(['', '  0 %  Shaping the ', ' 50 %  Shaping the ', ' 99 %  Unrolling', '']);
  });
});
