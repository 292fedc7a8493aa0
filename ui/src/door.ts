// The one door to the core, with two transports: the window's own commands, or the local server that
// served this page. Which of the two is known once, when the ui starts.

import { convertFileSrc, invoke, isTauri } from '@tauri-apps/api/core';
import type { BriefPage, CardOptions, HandoverForm, Refusal, ReportOptions, Request, Response } from './door/types';

type Ask = Request['ask'];

/** Which answer a question gets; every question that is not listed is a change and gets `written`. */
type AnswerTo = {
  shelf: 'shelf';
  today: 'today';
  visits: 'visits';
  moved: 'moved';
  pump: 'pump';
  fuel: 'fuel';
  costs: 'costs';
  measured: 'measured';
  'read-measured': 'measured-read';
  counter: 'counter';
  parts: 'parts';
  bay: 'bay';
  lines: 'lines';
  line: 'line';
  sheet: 'sheet';
  card: 'card';
  vin: 'vin';
  'read-card': 'card-read';
  handover: 'handover';
  'compare-card': 'compared';
  'compare-cards': 'compared';
  check: 'check';
  codes: 'codes';
  trouble: 'trouble';
  'trouble-of': 'trouble';
  troubles: 'troubles';
  brief: 'brief';
  guides: 'guides';
  guide: 'guide';
  rebuild: 'rebuilt';
};

/** The answer to a kind of question. */
export type Answer<A extends Ask> = Extract<Response, { answer: A extends keyof AnswerTo ? AnswerTo[A] : 'written' }>;

/** What the door threw back, with the reason as data. */
export class Refused extends Error {
  constructor(readonly refusal: Refusal) {
    super(refusal.code);
  }
}

/** The code of the ui's own refusal: the core did not answer. */
export const NO_ANSWER = 'no-answer';
/** Another of its own: a folder was put where a file goes. */
export const NOT_A_FILE = 'not-a-file';

/** The core's, for a file that was stopped on its way in. */
export const INTAKE_STOPPED = 'intake-stopped';

/** The refusal inside whatever was thrown; a core that does not answer is a refusal too. */
export function refusalOf(thrown: unknown): Refusal {
  if (thrown instanceof Refused) return thrown.refusal;
  return { code: NO_ANSWER, values: {}, can_keep: false };
}

const inWindow = isTauri();

/** Asks the door. Throws `Refused`. */
export async function ask<R extends Request>(request: R): Promise<Answer<R['ask']>> {
  const answer = inWindow ? await askWindow(request) : await askServer(request);
  return answer as Answer<R['ask']>;
}

/** The answer of this name. */
type Named<N extends Response['answer']> = Extract<Response, { answer: N }>;

/**
 * Hands in the bytes of a photo or a PDF, which become papers in the tray. Under its ticket, which is used once, it can be
 * asked how far it is and be stopped. Throws `Refused`, with `INTAKE_STOPPED` when it was stopped before it was filed.
 */
export async function takeIn(book: string, file: Blob, ticket: string): Promise<Named<'filed'>> {
  const answer = inWindow
    ? await fromWindow<Response>(invoke('take_in', new Uint8Array(await file.arrayBuffer()), { headers: { book, ticket } }))
    : await fromServer(fetch(`/paper?${new URLSearchParams({ book, ticket })}`, { method: 'POST', body: file }));
  return answer as Named<'filed'>;
}

/** Stops what is taken in under a ticket; its own answer says whether that came in time. Throws `Refused`. */
export async function stopIntake(ticket: string): Promise<void> {
  if (inWindow) return fromWindow<void>(invoke('stop_intake', { ticket }));
  return nothingFrom(fetch(`/paper/stop?${new URLSearchParams({ ticket })}`, { method: 'POST' }));
}

/** How many steps of an intake are done, of how many at most. */
export interface IntakeProgress {
  done: number;
  of: number;
}

/** How far the intake of a ticket is; nothing where none is under way. Throws `Refused`. */
export async function intakeProgress(ticket: string): Promise<IntakeProgress | null> {
  if (inWindow) return fromWindow<IntakeProgress | null>(invoke('intake_progress', { ticket }));
  return (await (await accepted(fetch(`/paper/progress?${new URLSearchParams({ ticket })}`))).json()) as IntakeProgress | null;
}

/** A paper that waits to be taken in: another app shared it, or it was named when the program was started. */
export interface SharedPaper {
  id: string;
  /** What its owner calls it; empty where nobody told. */
  name: string;
}

/** What waits to be taken in; in a browser, with which nobody shares, nothing. Throws `Refused`. */
export async function sharedPapers(): Promise<SharedPaper[]> {
  return inWindow ? fromWindow<SharedPaper[]>(invoke('shared')) : [];
}

/** Takes one of what waits into the tray of a book, as `takeIn` does; stopped, it waits on. Only in the window. Throws `Refused`. */
export async function takeShared(book: string, id: string, ticket: string): Promise<Named<'filed'>> {
  return (await fromWindow<Response>(invoke('take_shared', { book, id, ticket }))) as Named<'filed'>;
}

/** Leaves one of what waits out, for good. Only in the window. Throws `Refused`. */
export function leaveShared(id: string): Promise<void> {
  return fromWindow<void>(invoke('leave_shared', { id }));
}

/**
 * Reads a paper, until `signal` is aborted. Throws `Refused`, or the signal's reason.
 */
export async function readPaper(book: string, paper: string, signal: AbortSignal): Promise<Named<'receipt'>> {
  const answer = inWindow
    ? await Promise.race([fromWindow<Response>(invoke('read_paper', { book, paper })), stopped(signal)])
    : await fromServer(fetch(`/read?${new URLSearchParams({ book, paper })}`, { method: 'POST', signal }));
  return answer as Named<'receipt'>;
}

/** Four corners, each in shares of the photo's width and height, clockwise from the paper's upper left. */
export type Corners = [upperLeft: Corner, upperRight: Corner, lowerRight: Corner, lowerLeft: Corner];
export type Corner = [x: number, y: number];

/** The corners of a paper on its photo as they were found; nothing where they are not beyond doubt. Throws `Refused`. */
export async function foundCorners(book: string, paper: string): Promise<Corners | null> {
  if (inWindow) return fromWindow<Corners | null>(invoke('find_corners', { book, paper }));
  return (await (await accepted(fetch(`/corners?${new URLSearchParams({ book, paper })}`))).json()) as Corners | null;
}

/** Straightens a paper between its corners, or puts the photo back as it was taken. Throws `Refused`. */
export async function straighten(book: string, paper: string, corners: Corners | null): Promise<Named<'written'>> {
  const answer = inWindow
    ? await fromWindow<Response>(invoke('straighten', { book, paper, corners }))
    : await fromServer(fetch(`/straighten?${new URLSearchParams({ book, paper })}`, inJson(corners)));
  return answer as Named<'written'>;
}

/** The address of a photo. */
export function photo(hash: string, size: 'thumb' | 'full'): string {
  // `convertFileSrc` would write the slash as %2F, so the path is put behind an empty one.
  return (inWindow ? convertFileSrc('', 'photo') : '/photo/') + `${hash}/${size}`;
}

/** What the PDF of a paper is. Throws `Refused` where it can not be had. */
export async function documentOf(book: string, paper: string): Promise<Named<'document'>> {
  const answer = inWindow
    ? await fromWindow<Response>(invoke('document', { book, paper }))
    : await fromServer(fetch(documentPath(book, paper)));
  return answer as Named<'document'>;
}

/** The address at which a browser shows the PDF of a paper; nothing in the window, where `saveDocument` writes it. */
export function documentAddress(book: string, paper: string, name: string): string | null {
  return inWindow ? null : documentPath(book, paper, name);
}

function documentPath(...parts: string[]): string {
  return ['/document', ...parts.map(encodeURIComponent)].join('/');
}

/** Writes the PDF of a paper as it came in; the path at which it stands. Only in the window. Throws `Refused`. */
export function saveDocument(book: string, paper: string, name: string): Promise<string> {
  return fromWindow<string>(invoke('save_document', { book, paper, name }));
}

/** The address from which a browser can save the card; nothing in the window, where `saveCard` writes it. */
export function cardAddress(book: string, options: CardOptions): string | null {
  if (inWindow) return null;
  const said = Object.entries(options).filter(([, value]) => value !== undefined);
  const query = new URLSearchParams([['book', book], ...said.map(([name, value]) => [name, String(value)])]);
  return `/card.pdf?${query}`;
}

/** Writes the card as PDF and returns the path at which it stands. Only in the window. Throws `Refused`. */
export function saveCard(book: string, options: CardOptions): Promise<string> {
  return fromWindow<string>(invoke('save_card', { book, options }));
}

/** Sets a brief on paper. In the window the path at which the PDF stands, in a browser the PDF. Throws `Refused`. */
export async function saveBrief(page: BriefPage): Promise<string | Blob> {
  if (inWindow) return fromWindow<string>(invoke('save_brief', { page }));
  return (await accepted(fetch('/brief.pdf', inJson(page)))).blob();
}

/** Sets the full report. In the window the path at which the PDF stands, in a browser the PDF. Throws `Refused`. */
export async function saveReport(book: string, options: ReportOptions): Promise<string | Blob> {
  if (inWindow) return fromWindow<string>(invoke('save_report', { book, options }));
  return (await accepted(fetch(`/report.pdf?${new URLSearchParams({ book })}`, inJson(options)))).blob();
}

/** What is said when a book is handed over: the form, the passphrase that locks the file, and the name it may bear. */
export interface Handing {
  form: HandoverForm;
  /** Empty where the file is not locked. */
  passphrase: string;
  name: string;
}

/**
 * Packs a book for the next owner and hands it over. In the window the answer's path is where the file stands; in a
 * browser it is the address from which to fetch it. Throws `Refused`.
 */
export async function handOver(book: string, handing: Handing): Promise<Named<'packed'>> {
  const answer = inWindow
    ? await fromWindow<Response>(invoke('hand_over', { book, ...handing }))
    : await fromServer(fetch(`/handover?${new URLSearchParams({ book })}`, inJson(handing)));
  return answer as Named<'packed'>;
}

/** Whether a file that was written has to be fetched by the browser. */
export const fetchesFiles = !inWindow;

/** How many bytes of a book file cross into the window at once, so that it never stands in memory as a whole. */
const PIECE = 4 * 1024 * 1024;

/** Brings a book file in, to be opened by `receiveBook`. `told` hears how many bytes are in. Throws `Refused`. */
export async function bringBook(file: Blob, told: (bytes: number) => void): Promise<void> {
  if (!inWindow) return nothingFrom(fetch('/receive', { method: 'POST', body: file }));
  for (let at = 0; at === 0 || at < file.size; at += PIECE) {
    const piece = new Uint8Array(await file.slice(at, at + PIECE).arrayBuffer());
    await fromWindow<void>(invoke('bring_book', piece, { headers: at === 0 ? { first: 'yes' } : {} }));
    told(at + piece.length);
  }
}

/** Opens the file that was brought, and takes its book in. Throws `Refused`. */
export async function receiveBook(passphrase: string): Promise<Named<'received'>> {
  const answer = inWindow
    ? await fromWindow<Response>(invoke('receive_book', { passphrase }))
    : await fromServer(fetch('/receive/open', inJson({ passphrase })));
  return answer as Named<'received'>;
}

function askWindow(request: Request): Promise<Response> {
  return fromWindow(invoke<Response>('ask', { request }));
}

function askServer(request: Request): Promise<Response> {
  return fromServer(fetch('/ask', inJson(request)));
}

function inJson(body: unknown): RequestInit {
  return { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) };
}

/** Settles once `signal` is aborted, and has the window give the reading up then. */
function stopped(signal: AbortSignal): Promise<never> {
  return new Promise((_, reject) => {
    const stop = () => {
      void invoke('stop_reading');
      reject(signal.reason as Error);
    };
    if (signal.aborted) stop();
    else signal.addEventListener('abort', stop, { once: true });
  });
}

async function fromWindow<T>(reply: Promise<T>): Promise<T> {
  try {
    return await reply;
  } catch (thrown) {
    throw isRefusal(thrown) ? new Refused(thrown) : thrown;
  }
}

async function fromServer(reply: Promise<globalThis.Response>): Promise<Response> {
  return (await (await accepted(reply)).json()) as Response;
}

async function nothingFrom(reply: Promise<globalThis.Response>): Promise<void> {
  await accepted(reply);
}

async function accepted(reply: Promise<globalThis.Response>): Promise<globalThis.Response> {
  const answer = await reply;
  if (answer.ok) return answer;
  const body: unknown = answer.status === 422 ? await answer.json() : undefined;
  throw isRefusal(body) ? new Refused(body) : new Error(answer.statusText);
}

function isRefusal(thrown: unknown): thrown is Refusal {
  return typeof thrown === 'object' && thrown !== null && 'code' in thrown && 'values' in thrown;
}
