import { readdirSync, readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname } from 'node:path';
import { headers } from '../../../scripts/headers.mjs';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
};

type Files = ReadonlyMap<string, Buffer>;

const filesIn = (folder: string): Files =>
  new Map(
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map(({ parentPath, name }) => `${parentPath}/${name}`)
      .map((file) => [file.slice(folder.length), readFileSync(file)] as const),
  );

/** The same page as another build has it: each piece under another name, and in no file the old one. */
function renamed(files: Files, mark: string): Files {
  const pieces = [...files.keys()].flatMap(
    (name) => /\/assets\/(.+)-[\w-]{8}\.\w+$/.exec(name) ?? [],
  );
  const names = pieces.filter((_, i) => i % 2 === 0).map((piece) => piece.split('/').at(-1)!);
  const other = (name: string) => name.replace(/(\.\w+)$/, `${mark}$1`);
  const rewritten = (text: string) => {
    const inNew = names.reduce((all, name) => all.replaceAll(name, other(name)), text);
    return inNew.replace(/paper-reef ([0-9a-f]{12})/, `paper-reef $1${mark}`);
  };
  return new Map(
    [...files].map(([name, bytes]) => [
      rewritten(name),
      /\.(js|css|html)$/.test(name) ? Buffer.from(rewritten(bytes.toString())) : bytes,
    ]),
  );
}

/** Serves a built page on loopback, with its headers; it can be stopped, and be given a newer build. */
export class PageServer {
  private readonly built: Files;
  private files: Files;
  private server: Server | undefined;
  private port = 0;
  /** Whether its workers say nothing: what is written then comes as thick as it can be typed. */
  isMute = false;

  constructor(folder: string) {
    this.built = filesIn(folder);
    this.files = this.built;
  }

  get address(): string {
    return `http://127.0.0.1:${this.port}`;
  }

  async start(): Promise<void> {
    if (this.server?.listening) return;
    this.server = createServer(({ url = '/' }, answer) => {
      const { pathname } = new URL(url, 'http://here');
      const name = pathname === '/' ? '/index.html' : pathname;
      // A browser asks for it beside the icon that is opened as a page.
      if (name === '/favicon.ico') return void answer.writeHead(204).end();
      const bytes = this.files.get(name);
      const type = types[extname(name)] ?? 'application/octet-stream';
      answer.writeHead(bytes ? 200 : 404, { ...headers, 'Content-Type': type });
      answer.end(this.isMute && /worker-[\w-]+\.js$/.test(name) ? '' : bytes);
    });
    await new Promise<void>((done) => this.server!.listen(this.port, '127.0.0.1', done));
    this.port = (this.server.address() as AddressInfo).port;
  }
  async stop(): Promise<void> {
    const closed = new Promise((done) => this.server?.close(done));
    this.server?.closeAllConnections();
    await closed;
  }
  /** Serves the build as it is, or as a newer one. */
  serve(mark: string): void {
    this.files = mark === '' ? this.built : renamed(this.built, mark);
  }
}
