import { createReadStream, existsSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import path from 'node:path';

/** Media types a plain host gives by the ends of names (IANA). */
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.ttf': 'font/ttf',
  '.txt': 'text/plain',
  '.webmanifest': 'application/manifest+json',
};

export interface Host {
  /** Where the folder is found, with a slash at its end. */
  readonly url: string;
  /** What was asked for and is not there. */
  readonly missed: readonly string[];
  readonly close: () => void;
}

/** A host as plain as they come: files of a folder below `place`, and no header but their type. */
export async function serveFolder(folder: string, place: string): Promise<Host> {
  const missed: string[] = [];
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://127.0.0.1');
    const name = pathname.startsWith(place) ? pathname.slice(place.length) || 'index.html' : null;
    const file = name === null ? null : path.join(folder, path.normalize(`/${name}`));
    if (file === null || !existsSync(file)) {
      missed.push(pathname);
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { 'content-type': TYPES[path.extname(file)] ?? 'application/octet-stream' });
    createReadStream(file).pipe(response);
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}${place}`,
    missed,
    close() {
      server.closeAllConnections();
      server.close();
    },
  };
}
