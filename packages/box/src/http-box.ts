import * as z from 'zod';
import { type BoxAdapter, type BoxAnswer, LARGEST_FILE_BYTES } from './box-adapter.ts';
import { readBoxFileName } from './box-file-name.ts';
import { type BoxTroubleKind, troubled } from './box-trouble.ts';

/** What an HTTP box needs. */
export interface HttpBoxOptions {
  /** The box's own address, with a slash at the end. */
  address: string;
  /** How long one request may take, milliseconds. */
  patienceMs?: number;
  /** The platform's own unless a test says otherwise. */
  fetch?: typeof globalThis.fetch;
}

/** A folder's list as nginx writes it (`autoindex_format json`); other hosts can write the same. */
const listSchema = z
  .array(
    z.object({
      name: z.string().max(255),
      type: z.string(),
      mtime: z.string().optional(),
      size: z.number().optional(),
    }),
  )
  .max(10_000);

/**
 * A box on a host that understands GET, PUT and DELETE (WebDAV, RFC 4918) and lists a folder as JSON, as nginx does with `dav_methods` and
 * `autoindex_format json`. No precondition is sent: nginx does not heed one on a PUT, and a file that is named by its content needs none.
 * @param options see `HttpBoxOptions`.
 * @returns the box.
 */
export function createHttpBox(options: HttpBoxOptions): BoxAdapter {
  const { address, patienceMs = 20_000 } = options;
  const send = async (path: string, init: RequestInit = {}): Promise<BoxAnswer<Response>> => {
    try {
      const signal = AbortSignal.timeout(patienceMs);
      const doFetch = options.fetch ?? globalThis.fetch;
      return {
        ok: true,
        value: await doFetch(address + path, {
          ...init,
          signal,
          cache: 'no-store',
          redirect: 'error',
          credentials: 'same-origin',
        }),
      };
    } catch (error) {
      return troubled(Object(error).name === 'TimeoutError' ? 'slow' : 'gone', path || undefined);
    }
  };
  const markOf = async (name: string): Promise<BoxAnswer<string | undefined>> => {
    const sent = await send(name, { method: 'HEAD' });
    if (!sent.ok) return sent;
    if (sent.value.status === 404) return { ok: true, value: undefined };
    return sent.value.ok ? { ok: true, value: tagOf(sent.value) } : troubled(kindOf(sent.value.status), name);
  };
  return {
    list: async () => {
      const sent = await send('');
      if (!sent.ok) return sent;
      const { status } = sent.value;
      if (status === 404) return { ok: true, value: [] }; // the first put makes it
      if (!sent.value.ok) return troubled(kindOf(status));
      const text = await bodyOf(sent.value);
      if (!text.ok) return text;
      const read = listSchema.safeParse(parsed(new TextDecoder().decode(text.value)));
      if (!read.success) return troubled('noBox');
      const entries = read.data.filter(({ name, type }) => type === 'file' && readBoxFileName(name) !== undefined);
      return {
        ok: true,
        value: entries.map(({ name, size = 0, mtime = '' }) => ({ name, bytes: size, mark: listMark(mtime, size) })),
      };
    },
    get: async (name) => {
      const sent = await send(name);
      if (!sent.ok) return sent;
      if (!sent.value.ok) return troubled(sent.value.status === 404 ? 'missing' : kindOf(sent.value.status), name);
      if (/html/i.test(sent.value.headers.get('content-type') ?? '')) return troubled('noBox', name);
      const body = await bodyOf(sent.value, name);
      return body.ok ? { ok: true, value: { content: body.value, mark: tagOf(sent.value) } } : body;
    },
    put: async (name, content) => {
      const headers = { 'content-type': 'application/octet-stream' };
      const sent = await send(name, { method: 'PUT', body: content, headers });
      if (!sent.ok) return sent;
      const { status } = sent.value;
      if (status !== 200 && status !== 201 && status !== 204) return troubled(kindOf(status), name);
      const now = await markOf(name);
      if (!now.ok) return now;
      return now.value === undefined ? troubled('noBox', name) : { ok: true, value: now.value };
    },
    remove: async (name) => {
      const sent = await send(name, { method: 'DELETE' });
      if (!sent.ok) return sent;
      const { status } = sent.value;
      return sent.value.ok || status === 404 ? { ok: true, value: undefined } : troubled(kindOf(status), name);
    },
  };
}

/** What a status means, RFC 9110 and RFC 4918. */
function kindOf(status: number): BoxTroubleKind {
  if (status === 401 || status === 403 || status === 407) return 'refused';
  if (status === 413) return 'enormous';
  if (status === 507) return 'full';
  if (status === 408 || status === 429 || status === 504) return 'slow';
  return status >= 500 ? 'fault' : 'noBox';
}

function tagOf(response: Response): string {
  return response.headers.get('etag') ?? response.headers.get('last-modified') ?? '';
}

/** The mark of a listed file. nginx's tag of a file is its time and size in hexadecimal: where the list tells both, it is the same text. */
function listMark(mtime: string, size: number): string {
  const ms = Date.parse(mtime);
  return Number.isNaN(ms) ? '' : `"${(ms / 1000).toString(16)}-${size.toString(16)}"`;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** A body, but never more of it than a file may have, whatever its length says. */
async function bodyOf(response: Response, name?: string): Promise<BoxAnswer<Uint8Array>> {
  if (Number(response.headers.get('content-length') ?? 0) > LARGEST_FILE_BYTES) return troubled('enormous', name);
  const pieces: Uint8Array[] = [];
  let length = 0;
  try {
    const reader = response.body?.getReader();
    for (;;) {
      const { done, value } = (await reader?.read()) ?? { done: true, value: undefined };
      if (done || value === undefined) break;
      length += value.byteLength;
      if (length > LARGEST_FILE_BYTES) {
        await reader?.cancel();
        return troubled('enormous', name);
      }
      pieces.push(value);
    }
  } catch (error) {
    return troubled(Object(error).name === 'TimeoutError' ? 'slow' : 'gone', name);
  }
  const body = new Uint8Array(length);
  let at = 0;
  for (const piece of pieces) {
    body.set(piece, at);
    at += piece.byteLength;
  }
  return { ok: true, value: body };
}
