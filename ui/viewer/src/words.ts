// What the page says: picks the language, fills in patterns, writes numbers and days as the reader does.

import { languages, names } from 'virtual:words';

import type { Item, Unit } from './claims';
import { inflate } from './inflate';

/** A Fluent pattern as the build leaves it: a text, or a list of texts, variables and choices. */
export type Pattern = string | readonly Part[];

/** A text, the name of a variable, or a choice by a variable: by its plural form or its text, else the last pattern. */
type Part = string | readonly [string] | readonly [string, Readonly<Record<string, Pattern>>, Pattern];

/** What is filled into a sentence: a text as it is, a number written out and open to choices by its plural form. */
export type Values = Readonly<Record<string, string | number>>;

/** One language: its sentences by their names and the catalogue's items by their numbers. */
export type Language = ReadonlyMap<string, Pattern>;

/** What a language has: messages by their names, items by their numbers. */
export const NAMES = unpacked(names).split(' ');

/** The languages of the page. */
export const TAGS = Object.keys(languages);

export const DAY_MS = 86_400_000;

/** The words of one language, in the manner of one region. */
export class Words {
  private readonly numbers: Intl.NumberFormat;
  private readonly plurals: Intl.PluralRules;
  private readonly days: Intl.DateTimeFormat;

  constructor(
    /** The language's tag, for the page's `lang`. */
    readonly tag: string,
    private readonly language: Language,
    locale: string,
  ) {
    this.numbers = new Intl.NumberFormat(locale);
    this.plurals = new Intl.PluralRules(locale);
    this.days = new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' });
  }

  /** The first of the reader's languages that the page has, or English. */
  static for(preferred: readonly string[]): Words {
    const known = preferred.map((locale) => [locale.split('-')[0] as string, locale] as const);
    const [tag, locale] = known.find(([tag]) => TAGS.includes(tag)) ?? ['en', 'en'];
    const patterns = JSON.parse(unpacked(languages[tag] as string)) as readonly Pattern[];
    return new Words(tag, new Map(patterns.map((pattern, at) => [NAMES[at] as string, pattern])), locale);
  }

  say(id: string, values: Values = {}): string {
    const pattern = this.language.get(id);
    if (pattern === undefined) throw new Error(`There is no message '${id}'.`);
    return this.fill(pattern, values);
  }

  item(item: Item): string {
    if (typeof item === 'string') return item;
    const number = String(item);
    return this.language.has(number) ? this.say(number) : this.say('item-unknown', { number });
  }

  number(value: number): string {
    return this.numbers.format(value);
  }

  /** A reading with its unit. */
  distance(reading: number, unit: Unit): string {
    return this.say(`distance-${unit}`, { number: reading });
  }

  /** A day counted from 1970-01-01. */
  day(day: number): string {
    return this.days.format(day * DAY_MS);
  }

  private fill(pattern: Pattern, values: Values): string {
    if (typeof pattern === 'string') return pattern;
    return pattern.map((part) => (typeof part === 'string' ? part : this.filled(part, values))).join('');
  }

  private filled([name, forms, other]: readonly [string, Readonly<Record<string, Pattern>>?, Pattern?], values: Values): string {
    const value = values[name];
    if (forms === undefined) return typeof value === 'number' ? this.number(value) : String(value);
    const form = typeof value === 'number' ? this.plurals.select(value) : String(value);
    return this.fill(forms[form] ?? (other as Pattern), values);
  }
}

/** A text as the build packed it: deflated, in base64. */
function unpacked(packed: string): string {
  const bytes = Uint8Array.from(atob(packed), (character) => character.charCodeAt(0));
  return new TextDecoder().decode(inflate(bytes));
}
