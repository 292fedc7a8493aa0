// The door's two transports: what goes out, and what becomes of an answer, a refusal and silence.

import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { CardOptions, Refusal } from './door/types';

const refusal: Refusal = { code: 'reading-lower', values: { than: '96 300 km' }, can_keep: true };

beforeEach(() => vi.resetModules());
afterEach(() => vi.unstubAllGlobals());

const OPTIONS: CardOptions = { size: 'id1', paper: 'letter', vin: 'last-six', hide_names: true, prices: false, lang: 'fr' };

describe('in a browser', () => {
  async function openDoor(reply: () => Promise<Response>) {
    const fetched = vi.fn<(address: string, init: RequestInit) => Promise<Response>>(reply);
    vi.stubGlobal('fetch', fetched);
    return { fetched, ...(await import('./door')) };
  }

  it('a question goes to the server as JSON and its answer comes back', async () => {
    const { ask, fetched } = await openDoor(async () => Response.json({ answer: 'rebuilt', entries: 7 }));
    expect(await ask({ ask: 'rebuild' })).toEqual({ answer: 'rebuilt', entries: 7 });
    expect(fetched.mock.calls[0]).toEqual(['/ask', expect.objectContaining({ method: 'POST', body: '{"ask":"rebuild"}' })]);
  });

  it('a refusal is thrown with its reason as data', async () => {
    const { ask, refusalOf } = await openDoor(async () => Response.json(refusal, { status: 422 }));
    const thrown: unknown = await ask({ ask: 'check' }).catch((error: unknown) => error);
    expect(refusalOf(thrown)).toEqual(refusal);
  });

  it('a server that is gone, or that lets nobody in, did not answer', async () => {
    const replies = [() => Promise.reject(new TypeError()), async () => new Response('', { status: 401 })];
    for (const reply of replies) {
      vi.resetModules();
      const { ask, refusalOf, NO_ANSWER } = await openDoor(reply);
      const thrown: unknown = await ask({ ask: 'check' }).catch((error: unknown) => error);
      expect(refusalOf(thrown)).toMatchObject({ code: NO_ANSWER, can_keep: false });
    }
  });

  it('a photo goes in as its bytes and comes out at an address of its own', async () => {
    const filed = { answer: 'filed', papers: ['p'], warnings: [] };
    const { fetched, photo, takeIn } = await openDoor(async () => Response.json(filed));
    const bytes = new Blob(['photo']);
    expect(await takeIn('b 1', bytes, 't')).toEqual(filed);
    expect(fetched.mock.calls[0]).toEqual(['/paper?book=b+1&ticket=t', expect.objectContaining({ body: bytes })]);
    expect(photo('abc', 'thumb')).toBe('/photo/abc/thumb');
  });

  it('a paper is read by the server, which hears when nobody waits any more', async () => {
    const stopping = new AbortController();
    const { fetched, readPaper } = await openDoor(async () => Response.json({ answer: 'receipt' }));
    await readPaper('b', 'p 1', stopping.signal);
    expect(fetched.mock.calls[0]).toEqual(['/read?book=b&paper=p+1', { method: 'POST', signal: stopping.signal }]);
  });

  it('nobody shares with a page in a browser', async () => {
    const { fetched, sharedPapers } = await openDoor(() => Promise.reject(new TypeError()));
    expect(await sharedPapers()).toEqual([]);
    expect(fetched).not.toHaveBeenCalled();
  });

  it('corners that were found come out, or none', async () => {
    const { fetched, foundCorners } = await openDoor(async () => Response.json([[0.2, 0.2], [0.8, 0.2], [0.8, 0.8], [0.2, 0.8]]));
    expect((await foundCorners('b', 'p 1'))?.[2]).toEqual([0.8, 0.8]);
    expect(fetched.mock.calls[0]).toEqual(['/corners?book=b&paper=p+1']);
  });

  it('corners go in as shares, and none put the photo back', async () => {
    const { fetched, straighten } = await openDoor(async () => Response.json({ answer: 'written' }));
    await straighten('b', 'p', [[0, 0], [1, 0], [1, 1], [0, 0.5]]);
    await straighten('b', 'p', null);
    expect(fetched.mock.calls.map(([address, { body }]) => [address, body])).toEqual([
      ['/straighten?book=b&paper=p', '[[0,0],[1,0],[1,1],[0,0.5]]'],
      ['/straighten?book=b&paper=p', 'null'],
    ]);
  });

  it('a book is handed over by a question of its own, and its file fetched from where the answer says', async () => {
    const { fetched, fetchesFiles, handOver } = await openDoor(async () => Response.json({ answer: 'packed', path: '/handover/t/Thistle.wellkept' }));
    const form = { day: '', reading: '', words: '', without_papers: true, keep: false };
    expect(await handOver('b', { form, passphrase: 'x', name: 'n' })).toMatchObject({ path: '/handover/t/Thistle.wellkept' });
    expect(fetched.mock.calls[0]?.[0]).toBe('/handover?book=b');
    expect(JSON.parse(String(fetched.mock.calls[0]?.[1].body))).toEqual({ form, passphrase: 'x', name: 'n' });
    expect(fetchesFiles).toBe(true);
  });

  it('a book file is brought as its bytes, and opened without bringing it again', async () => {
    const replies = [new Response(null, { status: 204 }), Response.json(refusal, { status: 422 }), Response.json({ answer: 'received' })];
    const { bringBook, fetched, receiveBook } = await openDoor(async () => replies.shift() ?? Response.error());
    const file = new Blob(['book']);
    await bringBook(file, () => {});
    await expect(receiveBook('')).rejects.toMatchObject({ refusal });
    expect(await receiveBook('pass')).toEqual({ answer: 'received' });
    expect(fetched.mock.calls.map(([address, { body }]) => [address, body])).toEqual([
      ['/receive', file],
      ['/receive/open', '{"passphrase":""}'],
      ['/receive/open', '{"passphrase":"pass"}'],
    ]);
  });

  it('a PDF has an address of its own, and what it is stands above it', async () => {
    const told = { answer: 'document', page: 1, pages: 2 };
    const { documentAddress, documentOf, fetched } = await openDoor(async () => Response.json(told));
    expect(documentAddress('b', 'p', 'a 1.pdf')).toBe('/document/b/p/a%201.pdf');
    expect(await documentOf('b', 'p')).toEqual(told);
    expect(fetched.mock.calls[0]?.[0]).toBe('/document/b/p');
  });

  it('the card is fetched from an address that says what it shows', async () => {
    const { cardAddress } = await openDoor(() => Promise.reject(new TypeError()));
    const address = '/card.pdf?book=b&size=id1&paper=letter&vin=last-six&hide_names=true&prices=false&lang=fr';
    expect(cardAddress('b', OPTIONS)).toBe(address);
    expect(cardAddress('b', { ...OPTIONS, viewer: 'https://card.example/' })).toBe(`${address}&viewer=https%3A%2F%2Fcard.example%2F`);
  });
});

describe('in the window', () => {
  async function openDoor(invoke: (command: string, body: unknown, options: unknown) => Promise<unknown>) {
    const invoked = vi.fn(invoke);
    const convertFileSrc = (path: string, protocol: string) => `${protocol}://localhost/${encodeURIComponent(path)}`;
    vi.stubGlobal('isTauri', true);
    vi.stubGlobal('window', { __TAURI_INTERNALS__: { invoke: invoked, convertFileSrc } });
    return { invoked, ...(await import('./door')) };
  }

  it('a question is a command, and its refusal is thrown as data', async () => {
    const { ask, invoked, refusalOf } = await openDoor(() => Promise.reject(refusal));
    const thrown: unknown = await ask({ ask: 'check' }).catch((error: unknown) => error);
    expect(refusalOf(thrown)).toEqual(refusal);
    expect(invoked.mock.calls[0]?.slice(0, 2)).toEqual(['ask', { request: { ask: 'check' } }]);
  });

  it('a photo goes in as raw bytes, with its book beside it', async () => {
    const { invoked, photo, takeIn } = await openDoor(async () => ({ answer: 'filed', papers: ['p'], warnings: [] }));
    await takeIn('b', new Blob(['photo']), 't');
    expect(invoked.mock.calls[0]).toEqual(['take_in', new TextEncoder().encode('photo'), { headers: { book: 'b', ticket: 't' } }]);
    expect(photo('abc', 'full')).toBe('photo://localhost/abc/full');
  });

  it('a PDF has no address and is written where the window writes', async () => {
    const { documentAddress, invoked, saveDocument } = await openDoor(async () => '/documents/a.pdf');
    expect(documentAddress('b', 'p', 'a.pdf')).toBeNull();
    expect(await saveDocument('b', 'p', 'a.pdf')).toBe('/documents/a.pdf');
    expect(invoked.mock.calls[0]?.slice(0, 2)).toEqual(['save_document', { book: 'b', paper: 'p', name: 'a.pdf' }]);
  });

  it('a paper that is read is no longer waited for when it is stopped', async () => {
    const stopping = new AbortController();
    const { invoked, readPaper } = await openDoor(() => new Promise(() => {}));
    const reading = readPaper('b', 'p', stopping.signal);
    stopping.abort();
    await expect(reading).rejects.toMatchObject({ name: 'AbortError' });
    expect(invoked.mock.calls.map(([command]) => command)).toEqual(['read_paper', 'stop_reading']);
    expect(invoked.mock.calls[0]?.[1]).toEqual({ book: 'b', paper: 'p' });
  });

  it('what was shared is listed, and taken in or left out one by one', async () => {
    const replies: unknown[] = [[{ id: '1', name: '' }], { answer: 'filed', papers: ['p'], warnings: [] }, null];
    const { invoked, leaveShared, sharedPapers, takeShared } = await openDoor(async () => replies.shift());
    expect(await sharedPapers()).toEqual([{ id: '1', name: '' }]);
    expect(await takeShared('b', '1', 't')).toMatchObject({ papers: ['p'] });
    await leaveShared('2');
    expect(invoked.mock.calls.map(([command, body]) => [command, body])).toEqual([
      ['shared', {}],
      ['take_shared', { book: 'b', id: '1', ticket: 't' }],
      ['leave_shared', { id: '2' }],
    ]);
  });

  it('a large book file crosses piece by piece', async () => {
    const { bringBook, fetchesFiles, invoked } = await openDoor(async () => null);
    const told: number[] = [];
    await bringBook(new Blob([new Uint8Array(9 * 1024 * 1024)]), (bytes) => told.push(bytes));
    expect(invoked.mock.calls.map(([command, piece, options]) => [command, (piece as Uint8Array).length, options])).toEqual([
      ['bring_book', 4 * 1024 * 1024, { headers: { first: 'yes' } }],
      ['bring_book', 4 * 1024 * 1024, { headers: {} }],
      ['bring_book', 1024 * 1024, { headers: {} }],
    ]);
    expect(told).toEqual([4, 8, 9].map((size) => size * 1024 * 1024));
    // An empty file is brought as well, and refused by the core.
    await bringBook(new Blob([]), () => {});
    expect(invoked.mock.calls.at(-1)?.[2]).toEqual({ headers: { first: 'yes' } });
    expect(fetchesFiles).toBe(false);
  });

  it('the card is written by the window, not fetched', async () => {
    const { cardAddress, saveCard } = await openDoor(async () => '/cards/card.pdf');
    expect(cardAddress('b', OPTIONS)).toBeNull();
    expect(await saveCard('b', OPTIONS)).toBe('/cards/card.pdf');
  });
});
