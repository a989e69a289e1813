import fontUrl from 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf?url';

const WITHIN = /^data:[^,]*;base64,/;

/** Letters of printed pages: from beside the program, or from within it where it is one file. Rejects when they are not there. */
export async function readFont(): Promise<Uint8Array> {
  // The policy of a page from disk lets nothing be fetched, not even from its own text.
  const head = WITHIN.exec(fontUrl)?.[0];
  if (head !== undefined)
    return Uint8Array.from(atob(fontUrl.slice(head.length)), (sign) => sign.charCodeAt(0));
  const answer = await fetch(fontUrl);
  if (!answer.ok) throw new Error(`the letters for printing could not be read (${answer.status})`);
  return new Uint8Array(await answer.arrayBuffer());
}
