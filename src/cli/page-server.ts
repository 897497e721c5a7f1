/** Serves the built page to this machine alone: files of one folder, read and never written. */
import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import {
  createServer,
  type IncomingMessage,
  type RequestListener,
  type Server,
  type ServerResponse,
} from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { createGzip } from 'node:zlib';
import { systemCode } from '../hosts/file/system-reason.ts';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.xml': 'application/xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
};

/** Pictures are packed already. */
const PACKED = ['.png'];
/** The quickest: on one machine a tighter one takes longer than it saves. */
const GZIP_LEVEL = 1;
/** Under this, packing gains nothing. */
const LEAST_BYTES_PACKED = 1_024;

const TEXT = { 'Content-Type': 'text/plain; charset=utf-8' } as const;

/** Both of what "localhost" may stand for: a browser tries either. */
const ADDRESSES = ['127.0.0.1', '::1'] as const;
/** As they stand in an address. */
const HOSTS = ['localhost', '127.0.0.1', '[::1]'] as const;
/** The port that an address of http leaves out. */
const UNWRITTEN_PORT = 80;
/** No page of anybody else's frames this one, takes a file of it in, or learns where a person came from. */
const GUARDS = {
  'Content-Security-Policy': "frame-ancestors 'none'",
  'X-Frame-Options': 'DENY',
  'X-Content-Type-Options': 'nosniff',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Referrer-Policy': 'no-referrer',
} as const;
const MOST_PORTS_TRIED = 20;
const HIGHEST_PORT = 65_535;

export interface PageServer {
  readonly port: number;
  /** Ends what is under way too. */
  readonly close: () => Promise<void>;
}

/**
 * Serves `folder` at a port; where it is in use, at the next that is free.
 *
 * @returns undefined where none of the next twenty is free.
 */
export async function servePages(folder: string, port: number): Promise<PageServer | undefined> {
  const last = Math.min(port + MOST_PORTS_TRIED, HIGHEST_PORT);
  for (let tried = port; tried <= last; tried++) {
    const servers = await listenAt(tried, answerFrom(folder, tried));
    if (servers === undefined) continue;
    return {
      port: tried,
      close: async () => {
        await Promise.all(servers.map(close));
      },
    };
  }
  return undefined;
}

/** All addresses or none: another program at one of them would answer in our place. */
async function listenAt(port: number, answer: RequestListener): Promise<Server[] | undefined> {
  const servers: Server[] = [];
  for (const address of ADDRESSES) {
    const server = createServer(answer);
    const failure = await listen(server, port, address);
    if (failure === undefined) servers.push(server);
    // A machine without one of the two kinds of address.
    else if (failure !== 'EADDRNOTAVAIL' && failure !== 'EAFNOSUPPORT') {
      await Promise.all(servers.map(close));
      return undefined;
    }
  }
  return servers.length === 0 ? undefined : servers;
}

/** @returns undefined once it listens, else why it doesn't. */
function listen(server: Server, port: number, address: string): Promise<string | undefined> {
  return new Promise((resolve, reject) => {
    server.once('error', (error) => {
      const code = systemCode(error);
      if (code === undefined) reject(error);
      else resolve(code);
    });
    server.listen({ port, host: address }, () => resolve(undefined));
  });
}

function close(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });
}

function answerFrom(folder: string, port: number): RequestListener {
  return (request, response) => {
    for (const [name, value] of Object.entries(GUARDS)) response.setHeader(name, value);
    if (!isOurHost(request.headers.host, port)) {
      response.writeHead(421, TEXT).end('This is no address of this server.\n');
      return;
    }
    const isRead = request.method === 'GET' || request.method === 'HEAD';
    if (!isRead) {
      response.writeHead(405, { Allow: 'GET, HEAD' }).end();
      return;
    }
    const file = fileOf(folder, request.url ?? '/');
    void lookAt(file).then((found) => {
      if (found !== undefined) {
        answerWith(found, request, response);
        return;
      }
      response.writeHead(404, TEXT);
      response.end(request.method === 'HEAD' ? undefined : 'There is no such page.\n');
    });
  };
}

interface FoundFile {
  readonly path: string;
  readonly size: number;
  /** Another one once the file is written anew (RFC 9110, 8.8.3). */
  readonly tag: string;
}

/** The file, packed where the browser takes that; nothing of it where the browser has it as it is. */
function answerWith(
  { path, size, tag }: FoundFile,
  { method, headers }: IncomingMessage,
  response: ServerResponse,
): void {
  const isPacked =
    size >= LEAST_BYTES_PACKED &&
    !PACKED.includes(extname(path)) &&
    takesGzip(headers['accept-encoding']);
  const said = { 'Cache-Control': 'no-cache', ETag: tag, Vary: 'Accept-Encoding' };
  if (headers['if-none-match']?.split(/, ?/u).includes(tag) === true) {
    response.writeHead(304, said).end();
    return;
  }
  response.writeHead(200, {
    ...said,
    'Content-Type': TYPES[extname(path)] ?? 'application/octet-stream',
    ...(isPacked ? { 'Content-Encoding': 'gzip' } : { 'Content-Length': size }),
  });
  // Whichever end breaks off first, the file is closed.
  if (method === 'HEAD') response.end();
  else if (isPacked)
    pipeline(createReadStream(path), createGzip({ level: GZIP_LEVEL }), response).catch(
      () => undefined,
    );
  else pipeline(createReadStream(path), response).catch(() => undefined);
}

/** RFC 9110, 12.5.3: named, and not with a weight of 0. */
function takesGzip(accepted: string | string[] | undefined): boolean {
  return [accepted ?? []]
    .flat()
    .join()
    .split(',')
    .some((one) => {
      const [name = '', ...weights] = one.trim().toLowerCase().split(/ *; */u);
      return name === 'gzip' && !weights.some((weight) => /^q=0(?:\.0*)?$/u.test(weight));
    });
}

/**
 * A name that another page of the browser has led to this machine (DNS rebinding) is none of ours: that page
 * would read ours as its own.
 */
function isOurHost(host: string | undefined, port: number): boolean {
  const asked = host?.toLowerCase();
  return HOSTS.some(
    (name) => asked === `${name}:${port}` || (port === UNWRITTEN_PORT && asked === name),
  );
}

/** The file that an address asks for; undefined for one outside of the folder. */
function fileOf(folder: string, address: string): string | undefined {
  try {
    const path = decodeURIComponent(address.replace(/[?#].*$/su, ''));
    if (path.includes('\0')) return undefined;
    const file = normalize(join(folder, path.endsWith('/') ? `${path}index.html` : path));
    return file.startsWith(folder + sep) ? file : undefined;
  } catch {
    // An address that is no text.
    return undefined;
  }
}

async function lookAt(path: string | undefined): Promise<FoundFile | undefined> {
  if (path === undefined) return undefined;
  try {
    const there = await stat(path);
    if (!there.isFile()) return undefined;
    const { size, mtimeMs } = there;
    return { path, size, tag: `W/"${size.toString(36)}-${mtimeMs.toString(36)}"` };
  } catch {
    return undefined;
  }
}
