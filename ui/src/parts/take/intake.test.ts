// Taking papers in: what is refused stops nothing else, the owner can stop, and folders are told.

import { beforeEach, describe, expect, it, vi } from 'vitest';
import { NOT_A_FILE } from '../../door';
import { givenBy, Intake } from './intake.svelte';

const fetched = vi.fn<(address: string, init: { body: File }) => Promise<Response>>();

const file = (name: string) => new File(['x'], name);
const filed = (papers: string[], warnings: string[] = []) => Response.json({ answer: 'filed', papers, warnings });
const refused = () => Response.json({ code: 'not-an-image', values: {}, can_keep: false }, { status: 422 });

beforeEach(() => {
  fetched.mockReset();
  vi.stubGlobal('fetch', fetched);
});

describe('an intake', () => {
  it('goes on after a file that is refused, and tells it by name', async () => {
    fetched.mockImplementation(async (_, { body }) => (body.name === 'b.zip' ? refused() : filed([body.name])));
    const intake = new Intake();
    const given = { files: [file('a.jpg'), file('b.zip'), file('c.pdf')], folders: ['receipts'] };
    expect(await intake.run('book', given)).toEqual(['a.jpg', 'c.pdf']);
    expect(intake.refused.map(({ name, refusal }) => [name, refusal.code])).toEqual([['receipts', NOT_A_FILE], ['b.zip', 'not-an-image']]);
    expect([intake.total, intake.left]).toEqual([0, 0]);
  });

  it('counts the file under way as taken when it was filed before it could be stopped', async () => {
    const intake = new Intake();
    fetched.mockImplementation(async (address, init) => {
      if (address.startsWith('/paper/stop')) return new Response(null, { status: 204 });
      intake.stop();
      return filed([init.body.name]);
    });
    expect(await intake.run('book', { files: ['a', 'b', 'c'].map(file), folders: [] })).toEqual(['a']);
    expect(intake.left).toBe(2);
  });

  it('stops within a file by its ticket, and counts that file among those left out', async () => {
    const intake = new Intake();
    const stopped: string[] = [];
    const ticketOf = (address: string) => new URLSearchParams(address.split('?')[1]).get('ticket') ?? '';
    fetched.mockImplementation(async (address, init) => {
      if (address.startsWith('/paper/stop')) {
        stopped.push(ticketOf(address));
        return new Response(null, { status: 204 });
      }
      if (init.body.name === 'a') return filed(['a']);
      intake.stop();
      expect(stopped).toEqual([ticketOf(address)]);
      return Response.json({ code: 'intake-stopped', values: {}, can_keep: false }, { status: 422 });
    });
    expect(await intake.run('book', { files: ['a', 'b', 'c'].map(file), folders: [] })).toEqual(['a']);
    expect([intake.left, intake.refused.length, intake.total]).toEqual([2, 0, 0]);
    expect(fetched.mock.calls.filter(([address]) => address.startsWith('/paper?')).length).toBe(2);
  });

  it('tells how far the file under way is', async () => {
    vi.useFakeTimers();
    const intake = new Intake();
    let file_it = (_: Response) => {};
    fetched.mockImplementation(async (address) =>
      address.startsWith('/paper/progress') ? Response.json({ done: 3, of: 4 }) : new Promise((resolve) => (file_it = resolve)),
    );
    const run = intake.run('book', { files: [file('a')], folders: [] });
    expect(intake.part).toBe(0);
    await vi.advanceTimersByTimeAsync(300);
    expect(intake.part).toBe(0.75);
    file_it(filed(['a']));
    expect(await run).toEqual(['a']);
    expect([intake.part, vi.getTimerCount()]).toEqual([0, 0]);
    vi.useRealTimers();
  });

  it('counts every page of a document, and papers that were known', async () => {
    fetched.mockResolvedValue(filed(['p1', 'p2'], ['paper-known']));
    const intake = new Intake();
    expect(await intake.run('book', { files: [file('a.pdf')], folders: [] })).toEqual(['p1', 'p2']);
    expect(intake.known).toBe(1);
  });

  it('takes up files that come while others are taken in', async () => {
    fetched.mockImplementation(async (_, { body }) => filed([body.name]));
    const intake = new Intake();
    const first = intake.run('book', { files: [file('a')], folders: [] });
    expect(await intake.run('book', { files: [file('b')], folders: [] })).toEqual([]);
    expect(await first).toEqual(['a', 'b']);
  });

  it('does nothing when there was no file', async () => {
    expect(await new Intake().run('book', givenBy(null))).toEqual([]);
    expect(fetched).not.toHaveBeenCalled();
  });
});

it('tells files, folders and everything else apart in what was dropped', () => {
  const item = (kind: string, got: File | null, folder = '') => ({
    kind,
    getAsFile: () => got,
    webkitGetAsEntry: () => (folder ? { isDirectory: true, name: folder } : null),
  });
  const items = [item('string', null), item('file', file('a.jpg')), item('file', file('scans'), 'scans')];
  const { files, folders } = givenBy({ items } as unknown as DataTransfer);
  expect([files.map(({ name }) => name), folders]).toEqual([['a.jpg'], ['scans']]);
});
