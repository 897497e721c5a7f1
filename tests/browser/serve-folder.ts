/** Serves a folder of the build on this machine alone, as any static host would. */
import { createServer, type Server } from 'node:http';
import { readFile } from 'node:fs/promises';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize, sep } from 'node:path';

const KINDS: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
};

export interface Served {
  readonly origin: string;
  close(): Promise<void>;
}

/** Answers GET alone, below the folder alone; 404 else. */
export async function serveFolder(folder: string): Promise<Served> {
  const server: Server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const file = normalize(join(folder, decodeURIComponent(pathname)));
    const answer = async (): Promise<void> => {
      if (request.method !== 'GET' || !file.startsWith(folder + sep)) throw new Error(pathname);
      const content = await readFile(file);
      response.setHeader('Content-Type', KINDS[extname(file)] ?? 'application/octet-stream');
      response.end(content);
    };
    answer().catch(() => {
      response.statusCode = 404;
      response.end();
    });
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    origin: `http://127.0.0.1:${port}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
