// A trouble into the book, and out of it again.

import { ask } from '../../../door';
import type { TroubleForm } from '../../../door/types';
import { fromBook, NOTHING_HERE } from './form';

/** What stands in the book. Throws `Refused`. */
export async function takeUp(book: string, subject: string): Promise<TroubleForm> {
  return fromBook((await ask({ ask: 'trouble-of', book, subject, here: NOTHING_HERE })).form);
}

/** Writes a trouble down, or amends the line in which it stands; gives its line. Throws `Refused`. */
export async function writeTrouble(book: string, subject: string, trouble: TroubleForm, keep: boolean): Promise<string> {
  if (subject === '') return (await ask({ ask: 'write-trouble', book, trouble, keep })).subject;
  await ask({ ask: 'amend-trouble', book, subject, trouble, why: '', keep });
  return subject;
}
