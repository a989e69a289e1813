import { failure, type Issue, type Result, success } from '../base/index.ts';
import type { Form } from '../form/index.ts';
import type { Piece } from '../pattern/index.ts';
import { phrase } from './phrases.ts';

/** All pieces of a form, or those asked for by id. Fails with every id that no piece has. */
export function piecesWanted(form: Form, only?: readonly string[]): Result<readonly Piece[]> {
  const all = [...form.pieces, ...(form.inside?.pieces ?? [])];
  if (!only) return success(all);
  const known = all.map(({ id }) => id);
  const issues = only
    .filter((name) => !known.includes(name))
    .map((name): Issue => {
      const message = phrase('file.unknown-piece', { name, known });
      return { code: 'unknown-piece', path: 'only', message, severity: 'error' };
    });
  return issues.length > 0 ? failure(issues) : success(all.filter(({ id }) => only.includes(id)));
}
