import { saveFile } from './save-file.ts';

/** Where a page that is one file holds what lies beside the page of a site. */
const NOTICES_ID = 'third-party-notices';

/** Whether this is the built site, and neither the one file nor a page under development. */
export const isSite = import.meta.env.PROD && import.meta.env.MODE !== 'one-file';

export interface ProgramItself {
  /** Where the whole program lies as one file; absent where this is that file. */
  readonly oneFileUrl?: string;
  /** Saves the notices of what others wrote; absent where they lie beside the page. */
  readonly saveNotices?: () => void;
}

/** What a maker may take of the program itself. */
export function handOverProgram(): ProgramItself {
  const notices = document.getElementById(NOTICES_ID)?.textContent;
  return {
    ...(isSite ? { oneFileUrl: './loftseam.html' } : {}),
    ...(notices ? { saveNotices: () => saveFile('THIRD-PARTY-NOTICES.txt', 'text/plain', notices) } : {}),
  };
}
