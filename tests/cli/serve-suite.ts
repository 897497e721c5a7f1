import { afterAll, afterEach, describe, expect, test } from '@jest/globals';
import { spawn, type ChildProcess } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { request, type IncomingHttpHeaders } from 'node:http';
import { createServer, connect, type AddressInfo, type Server } from 'node:net';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { folderWith, linesOf, MAIN, once, run } from './program.ts';

const PAGE = '<!doctype html><title>Page</title>';
const LONG = `// ${'a long file '.repeat(500)}\n`;
const FILES = {
  'dist/index.html': PAGE,
  'dist/page.js': 'true;',
  'dist/look.css': 'p {}',
  'dist/long.js': LONG,
  'dist/solver.wasm': new Uint8Array([0, 97, 115, 109]),
  'dist/notes/index.html': PAGE,
  'secret.txt': 'not to be read',
  'dist-secret/secret.txt': 'nor this',
};
/** Port numbers that a test takes begin here: the usual one may be taken on this machine. */
const FIRST_PORT = 43_117;
const STOP_MS = 1_000;

interface Answer {
  readonly status: number | undefined;
  readonly type: string | undefined;
  readonly body: string;
}

/** What the server says of an answer beside it. */
function headersOf(
  port: number,
  path: string,
  headers: Readonly<Record<string, string>> = {},
): Promise<Readonly<Record<string, unknown>>> {
  return new Promise((resolve, reject) => {
    request({ host: '127.0.0.1', port, path, headers }, (answer) => {
      answer.resume().on('end', () => resolve({ ...answer.headers, status: answer.statusCode }));
    })
      .on('error', reject)
      .end();
  });
}

/** An answer as it comes, packed or not. */
function bytesOf(
  port: number,
  path: string,
  headers: Readonly<Record<string, string>>,
): Promise<{ status: number | undefined; headers: IncomingHttpHeaders; bytes: Buffer }> {
  return new Promise((resolve, reject) => {
    request({ host: '127.0.0.1', port, path, headers }, (answer) => {
      const parts: Buffer[] = [];
      answer.on('data', (part: Buffer) => parts.push(part));
      answer.on('end', () =>
        resolve({
          status: answer.statusCode,
          headers: answer.headers,
          bytes: Buffer.concat(parts),
        }),
      );
    })
      .on('error', reject)
      .end();
  });
}

/** The path goes as it stands: fetch would tidy its dots away. */
function ask(port: number, path: string, method = 'GET'): Promise<Answer> {
  return new Promise((resolve, reject) => {
    request({ host: '127.0.0.1', port, path, method }, (answer) => {
      let body = '';
      answer.setEncoding('utf8').on('data', (part) => (body += String(part)));
      answer.on('end', () =>
        resolve({ status: answer.statusCode, type: answer.headers['content-type'], body }),
      );
    })
      .on('error', reject)
      .end();
  });
}

interface Serving {
  readonly process: ChildProcess;
  readonly port: number;
  /** All that it has said so far. */
  readonly said: () => string;
  readonly ended: Promise<number | null>;
}

export function serveSuite(): void {
  describe('serve', () => {
    const running: ChildProcess[] = [];
    const taken: Server[] = [];
    afterEach(() => {
      for (const one of running.splice(0)) one.kill('SIGKILL');
      for (const one of taken.splice(0)) one.close();
    });

    const sharedProcess: ChildProcess[] = [];
    /** For tests that ask for pages and no more. */
    const shared = once(() => serve(folderWith(FILES), FIRST_PORT, sharedProcess));
    afterAll(() => void sharedProcess[0]?.kill('SIGKILL'));

    async function serve(folder: string, port: number, started = running): Promise<Serving> {
      const args = [MAIN, 'serve', '--folder', join(folder, 'dist'), '--port', String(port)];
      const child = spawn(process.execPath, args, { cwd: folder });
      started.push(child);
      let said = '';
      const ended = new Promise<number | null>((resolve) => child.once('exit', resolve));
      const address = new Promise<string>((resolve) => {
        child.stdout.setEncoding('utf8').on('data', (part) => {
          said += String(part);
          const found = /http:\/\/localhost:(\d+)/u.exec(said)?.[1];
          if (found !== undefined) resolve(found);
        });
      });
      const failed = ended.then((code) => Promise.reject(new Error(`Ended with ${code}: ${said}`)));
      const at = Number(await Promise.race([address, failed]));
      return { process: child, port: at, said: () => said, ended };
    }

    /** Whichever is free. */
    async function takePort(): Promise<number> {
      const server = createServer();
      taken.push(server);
      await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
      return (server.address() as AddressInfo).port;
    }

    test('hands out the files of the page as what they are, to reading alone', async () => {
      const { port } = await shared();
      expect(await ask(port, '/')).toEqual({
        status: 200,
        type: 'text/html; charset=utf-8',
        body: PAGE,
      });
      const types = ['/page.js?x=1', '/look.css', '/solver.wasm', '/notes/'].map(
        async (path) => (await ask(port, path)).type,
      );
      expect(await Promise.all(types)).toEqual([
        'text/javascript; charset=utf-8',
        'text/css; charset=utf-8',
        'application/wasm',
        'text/html; charset=utf-8',
      ]);
      expect(await ask(port, '/', 'HEAD')).toMatchObject({ status: 200, body: '' });
      expect(await ask(port, '/nothing.js')).toMatchObject({ status: 404 });
      expect(await ask(port, '/', 'POST')).toMatchObject({ status: 405 });
      expect(await ask(port, '/page.js', 'DELETE')).toMatchObject({ status: 405 });
    });

    test('packs what is long for a browser that takes that, and sends nothing that it has already', async () => {
      const { port } = await shared();
      const taking = { 'accept-encoding': 'br, gzip;q=0.8' };
      const long = await bytesOf(port, '/long.js', taking);
      expect([long.status, long.headers['content-encoding']]).toEqual([200, 'gzip']);
      expect(long.bytes.length).toBeLessThan(LONG.length / 10);
      expect(gunzipSync(long.bytes).toString('utf8')).toBe(LONG);
      for (const [path, accepted] of [
        ['/long.js', ''],
        ['/long.js', 'gzip;q=0, br'],
        ['/page.js', 'gzip'],
      ] as const) {
        const plain = await bytesOf(port, path, { 'accept-encoding': accepted });
        expect([path, plain.headers['content-encoding']]).toEqual([path, undefined]);
        expect(plain.headers['content-length']).toBe(String(plain.bytes.length));
      }
      const again = await bytesOf(port, '/long.js', {
        ...taking,
        'if-none-match': `"old", ${String(long.headers['etag'])}`,
      });
      expect([again.status, again.bytes.length]).toEqual([304, 0]);
      const changed = await bytesOf(port, '/long.js', { 'if-none-match': '"old"' });
      expect(changed.status).toBe(200);
    });

    test('gives nothing from outside of its folder, however it is asked for', async () => {
      const { port } = await shared();
      const paths = [
        '/../secret.txt',
        '/%2e%2e/secret.txt',
        '/..%2fsecret.txt',
        '/%2e%2e%2fdist-secret%2fsecret.txt',
        '/notes/../../secret.txt',
        '/..\\secret.txt',
        '//etc/passwd',
        '/%00',
        '/%ff',
        '/notes',
      ];
      for (const path of paths) {
        expect({ path, status: (await ask(port, path)).status }).toEqual({ path, status: 404 });
      }
    });

    test('answers this machine alone, at either of its own addresses', async () => {
      const { port } = await shared();
      const answer = await fetch(`http://localhost:${port}/`);
      expect(await answer.text()).toBe(PAGE);
      // Linux takes all of 127/8 for itself: another address of it is refused.
      const refused = await new Promise<string | undefined>((resolve) => {
        const socket = connect({ port, host: '127.0.0.2' }, () => resolve(undefined));
        socket.on('error', (error: NodeJS.ErrnoException) => resolve(error.code));
      });
      expect(refused).not.toBeUndefined();
    });

    test('lets no page of another address frame it, take it in or reach it by a name of its own', async () => {
      const { port } = await shared();
      for (const path of ['/', '/page.js', '/nothing.js']) {
        expect(await headersOf(port, path)).toMatchObject({
          'content-security-policy': "frame-ancestors 'none'",
          'x-frame-options': 'DENY',
          'x-content-type-options': 'nosniff',
          'cross-origin-resource-policy': 'same-origin',
          'referrer-policy': 'no-referrer',
        });
      }
      const hosts = (host: string): Promise<unknown> =>
        headersOf(port, '/', { Host: host }).then(({ status }) => [host, status]);
      const ours = [`localhost:${port}`, `LOCALHOST:${port}`, `127.0.0.1:${port}`, `[::1]:${port}`];
      for (const host of ours) expect(await hosts(host)).toEqual([host, 200]);
      const others = [
        ...['localhost', 'evil.example', `evil.example:${port}`, `localhost:${port + 1}`],
        ...[`localhost.evil.example:${port}`, `127.0.0.2:${port}`, `::1:${port}`],
      ];
      for (const host of others) expect(await hosts(host)).toEqual([host, 421]);
    });

    /** A process's open files, where the system shows them. */
    const shownTest = process.platform === 'linux' ? test : test.skip;
    shownTest('keeps no file open after downloads that are broken off', async () => {
      const large = new Uint8Array(8_000_000).fill(32);
      const folder = folderWith({ ...FILES, 'dist/large.js': large });
      const { port, process: child } = await serve(folder, FIRST_PORT);
      const openFiles = (): number => readdirSync(`/proc/${child.pid}/fd`).length;
      await ask(port, '/');
      const before = openFiles();
      const breakOff = (): Promise<void> =>
        new Promise((resolve, reject) => {
          request({ host: '127.0.0.1', port, path: '/large.js', agent: false }, (answer) => {
            answer.once('data', () => answer.destroy());
            answer.on('error', () => undefined).once('close', () => resolve());
          })
            .on('error', reject)
            .end();
        });
      for (let count = 0; count < 60; count++) await breakOff();
      const until = Date.now() + 5_000;
      while (openFiles() > before + 5 && Date.now() < until) {
        await new Promise((resolve) => setTimeout(resolve, 50));
      }
      expect(openFiles() - before).toBeLessThanOrEqual(5);
      expect((await ask(port, '/large.js')).body).toHaveLength(large.length);
    });

    test('takes the next free port where its own is in use, and says so', async () => {
      const folder = folderWith(FILES);
      const port = await takePort();
      const first = await serve(folder, port);
      const second = await serve(folder, port);
      expect(first.port).toBeGreaterThan(port);
      expect(second.port).toBeGreaterThan(first.port);
      expect(linesOf(second.said())).toEqual([
        `Port ${port} is not free, so another is taken.`,
        `Coveledger is at http://localhost:${second.port} until Ctrl-C stops it.`,
      ]);
      expect(await (await fetch(`http://localhost:${second.port}/`)).text()).toBe(PAGE);
    });

    test.each(['SIGINT', 'SIGTERM'] as const)(
      'stops at %s within a second, with 0, though a browser hangs on',
      async (signal) => {
        const { process: child, port, ended, said } = await serve(folderWith(FILES), FIRST_PORT);
        const socket = connect({ port, host: '127.0.0.1' });
        socket.on('error', () => undefined);
        await new Promise((resolve) => socket.once('connect', resolve));
        socket.write('GET / HTTP/1.1\r\nHost: localhost\r\n\r\nGET /half');
        const before = Date.now();
        child.kill(signal);
        expect(await ended).toBe(0);
        expect(Date.now() - before).toBeLessThan(STOP_MS);
        expect(said()).toMatch(/\nStopped\.\n$/u);
        socket.destroy();
      },
    );

    test.each([
      { port: 'soon', says: /“soon” is not a number/ },
      { port: '0', says: /--port is 0; at least 1 is needed/ },
      { port: '65536', says: /--port is 65,536; at most 65,535 is allowed/ },
      { port: '80.5', says: /--port is 80\.5; it must be a whole number/ },
    ])('refuses the port $port in words', async ({ port, says }) => {
      const folder = folderWith(FILES);
      const ran = await run(folder, ['serve', '--folder', 'dist', '--port', port]);
      expect([ran.exit, ran.out]).toEqual([2, '']);
      expect(ran.err).toMatch(says);
    });

    test('says how the page is built where it isn’t', async () => {
      const { exit, err } = await run(folderWith({}), ['serve', '--folder', 'dist']);
      expect([exit, linesOf(err).length]).toEqual([2, 1]);
      expect(err).toMatch(/The page isn't built: .*dist” has none\. Run npm run build first/);
    });
  });
}
