import { readdirSync, readFileSync } from 'node:fs';
import { type Body, type BodyInput, fitBody } from '../../src/core/body/index.ts';
import { inEnglish } from '../in-english.ts';

export const DEMO_IDS = readdirSync('shared/demos').map((file) => file.replace('.loftseam.json', ''));

export function readDemo(id: string): BodyInput {
  return JSON.parse(readFileSync(`shared/demos/${id}.loftseam.json`, 'utf8')).body;
}

/** The fitted body, or a thrown list of what stopped it. */
export function fitOrThrow(input: BodyInput, options: { readonly fair?: boolean } = {}): Body {
  const result = fitBody(input, undefined, options);
  if (!result.ok)
    throw new Error(
      result.issues
        .map((i) => i.message)
        .map(inEnglish)
        .join('\n'),
    );
  return result.value;
}
