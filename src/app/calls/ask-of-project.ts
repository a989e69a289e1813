import type { Project } from '../../core/project/index.ts';
import { type PageCalls, pageCallNames, rulesOf, type ViewCalls } from './call-types.ts';
import type { AnyCall } from './describe-call.ts';

/** The calls for the views: those about the project being worked on are asked of it as it is when they are asked. */
export function askOfProject(calls: PageCalls, presentProject: () => Project | null): ViewCalls {
  const offered = pageCallNames.map((name) => {
    const ask: AnyCall = calls[name];
    const askOfPresent = async (...rest: unknown[]) => {
      const project = presentProject();
      return project ? ask(project, ...rest) : null;
    };
    return [name, rulesOf(name).isOfPresentProject ? askOfPresent : ask];
  });
  return Object.fromEntries(offered);
}
