import { describe, expect, it } from 'vitest';
import { fitBody } from '../../src/core/body/index.ts';
import { inEnglish } from '../in-english.ts';
import { EXTREME_PEOPLE } from './extreme-people.ts';

describe('bodies no survey of soldiers holds', () => {
  it('are many, of both figures', () => {
    expect(EXTREME_PEOPLE.length).toBeGreaterThanOrEqual(27);
    expect(EXTREME_PEOPLE.filter(({ body }) => body.figure === 'chest').length).toBeGreaterThanOrEqual(10);
  });

  it.each(EXTREME_PEOPLE.map(({ name, body }) => [name, body] as const))(
    '%s: accepted, and told of no mistake of nature',
    (_, body) => {
      const fitted = fitBody(body);
      expect(fitted.ok).toBe(true);
      expect(fitted.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
      expect(fitted.issues.map(({ code }) => code)).not.toContain('measure-implausible');
      expect(fitted.issues.map(({ code }) => code)).not.toContain('measures-exchanged');
      for (const { message } of fitted.issues)
        expect(inEnglish(message)).not.toMatch(/did you mean|too (large|small) for the others: they/i);
    },
  );
});
