import { createPipeline } from '../src/core/pipeline/index.ts';
import { ENGLISH } from './in-english.ts';

/** Enough for every demo, every layout of two of them, and what files of tests between these make. */
const REMEMBERED = 80;

/**
 * One memory for all tests of a process that make forms to look at something else: a demo's body is fitted once and its form filled
 * once, and a test pays only for what it changes. Not for tests of the pipeline itself, of what is told while it works, nor of that
 * the same comes out twice; and not for drafts, whose body may depend on the one before.
 */
export const sharedPipeline = createPipeline(REMEMBERED);

/** For forms whose fineness does not matter: taken alike, so that they are the same ones. */
export const COARSE = { speaker: ENGLISH, targetTriangles: 2000, date: '2026-01-31' };
