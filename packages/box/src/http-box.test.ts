import { readdirSync } from 'node:fs';
import { createServer, type RequestListener } from 'node:http';
import type { AddressInfo } from 'node:net';
import { createWords } from '@larkhold/words';
import { afterAll, describe, expect, it } from 'vitest';
import { startNginx } from '../../../tests/box/nginx.ts';
import { boxFileName } from './box-file-name.ts';
import { troubleWords } from './box-trouble.ts';
import { createHttpBox } from './http-box.ts';
import { describeBox } from './trial/box-acceptance.ts';

const nginx = await startNginx();
afterAll(() => nginx?.close());
let count = 0;
/** A folder of 32 letters, as a secret would give one. */
const nextAddress = (): string => {
  count += 1;
  return `${nginx?.address}/${'a'.repeat(30)}${String.fromCharCode(97 + Math.floor(count / 26), 97 + (count % 26))}/`;
};

describe('a box on nginx, with the file that clubs use', () => {
  if (nginx === undefined) {
    it('is tried where nginx is installed: apt-get install nginx-light', () => {
      console.info('There is no nginx here: the box on a host was not tried.');
    });
    return;
  }
  describeBox(async () => createHttpBox({ address: nextAddress() }));

  it('spreads over hosts by the first letter of their paths: the app sees one address, and each box lies on one disk', async () => {
    const second = await startNginx();
    const front = await startNginx(
      `location ~ "^/box/[a-p]" { client_max_body_size 8m; proxy_pass ${second?.origin}; }`,
    );
    try {
      for (const [letter, host] of [
        ['b', second],
        ['q', front],
      ] as const) {
        const path = letter.repeat(32);
        const box = createHttpBox({ address: `${front?.address}/${path}/` });
        const content = new Uint8Array([1, 2, 3]);
        const name = await boxFileName('phone', 1, content);
        expect(await box.put(name, content)).toMatchObject({ ok: true });
        expect(await box.list()).toMatchObject({ ok: true, value: [{ name, bytes: 3 }] });
        expect(await box.get(name)).toMatchObject({ ok: true, value: { content } });
        expect(readdirSync(`${host?.folder}/box/${path}`)).toEqual([name]);
        expect(await box.remove(name)).toMatchObject({ ok: true });
        expect(await box.list()).toEqual({ ok: true, value: [] });
      }
    } finally {
      await front?.close();
      await second?.close();
    }
  });

  it('lists no boxes, and knows no other files', async () => {
    const get = async (path: string, method = 'GET') => (await fetch(nginx.address + path, { method })).status;
    expect(await get('/')).toBe(404);
    expect(await get('/guessed/')).toBe(404);
    expect(await get(`/${'a'.repeat(32)}/evil.html`, 'PUT')).toBe(404);
    expect(await get(`/${'a'.repeat(32)}/phone-1-aaaaaaaaaaaaaaaaaaaaaaaaaa.age`, 'MKCOL')).toBe(403);
  });
});

/** A host that does something else than it should. */
async function at<T>(answer: RequestListener, work: (address: string) => Promise<T>): Promise<T> {
  const server = createServer(answer).listen(0, '127.0.0.1');
  await new Promise((resolve) => server.once('listening', resolve));
  try {
    return await work(`http://127.0.0.1:${(server.address() as AddressInfo).port}/box/`);
  } finally {
    server.closeAllConnections();
    server.close();
  }
}

describe('a host', () => {
  const html: RequestListener = (_, response) => {
    response.setHeader('content-type', 'text/html').end('<!doctype html><title>Please sign in</title>');
  };
  const status =
    (code: number): RequestListener =>
    (_, response) => {
      response.statusCode = code;
      response.end();
    };
  const cases: [string, RequestListener, string][] = [
    ['wants a password', status(401), 'refused'],
    ['forbids', status(403), 'refused'],
    ['has a fault', status(500), 'fault'],
    ['is full', status(507), 'full'],
    ['has too many guests', status(429), 'slow'],
    ['answers with a page', html, 'noBox'],
    ['lists what is no list', (_, response) => response.end('{"files":"many"}'), 'noBox'],
    ['sends the caller elsewhere', (_, response) => response.writeHead(302, { location: '/' }).end(), 'gone'],
    ['hangs up', (request) => request.socket.destroy(), 'gone'],
    ['does not answer', () => undefined, 'slow'],
  ];
  it.each(cases)('that %s: every verb says so and nothing throws', (_, answer, kind) =>
    at(answer, async (address) => {
      const box = createHttpBox({ address, patienceMs: answer.length === 0 ? 200 : 20_000 });
      const answers = [
        await box.list(),
        await box.put('phone-1-aaaaaaaaaaaaaaaaaaaaaaaaaa.age', new Uint8Array(3)),
        await box.get('phone-1-aaaaaaaaaaaaaaaaaaaaaaaaaa.age'),
      ].filter((one) => kind !== 'noBox' || !one.ok);
      expect(answers.length).toBeGreaterThan(0);
      for (const one of answers) {
        expect(one).toMatchObject({ ok: false, trouble: { kind } });
        if (one.ok) continue;
        for (const language of ['en', 'de']) {
          const said = troubleWords(one.trouble, createWords(language));
          expect(said).toMatch(language === 'en' ? /kept here|tried again/ : /bleibt hier|wieder versucht/);
        }
      }
    }),
  );

  it('that is gone says so', async () => {
    const box = createHttpBox({ address: 'http://127.0.0.1:9/box/', patienceMs: 2000 });
    expect(await box.list()).toMatchObject({ ok: false, trouble: { kind: 'gone' } });
  });

  it('that sends without end is left after eight megabytes', () =>
    at(
      (_, response) => {
        const piece = Buffer.alloc(256 * 1024);
        const more = (): void => {
          if (!response.destroyed) response.write(piece, () => setImmediate(more));
        };
        more();
      },
      async (address) => {
        const box = createHttpBox({ address });
        expect(await box.get('phone-1-aaaaaaaaaaaaaaaaaaaaaaaaaa.age')).toMatchObject({
          ok: false,
          trouble: { kind: 'enormous' },
        });
      },
    ));
});
