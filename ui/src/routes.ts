// Where a person stands, as the part of the address behind `#`: `#/book/SUBJECT`.

export const PLACES = ['today', 'pump', 'counter', 'bay', 'book'] as const;
export const ASIDE = ['sheet', 'settings', 'add'] as const;

export type Place = (typeof PLACES)[number];
export type Stand = Place | (typeof ASIDE)[number];

export interface Route {
  stand: Stand;
  /** What is open there: a line of the book, `card`, or nothing. */
  open: string;
}

const STANDS: readonly Stand[] = [...PLACES, ...ASIDE];

/** Reads an address; what it does not know is Today. */
export function parseRoute(hash: string): Route {
  const [first = '', open = ''] = hash.replace(/^#\/?/, '').split('/');
  const stand = STANDS.find((known) => known === first);
  return stand ? { stand, open: safeDecode(open) } : { stand: 'today', open: '' };
}

/** Writes an address. */
export function routeTo(stand: Stand, open = ''): string {
  return open === '' ? `#/${stand}` : `#/${stand}/${encodeURIComponent(open)}`;
}

function safeDecode(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return '';
  }
}
