// What the page says: picks the language, fills in patterns, writes numbers and days as the reader does.

import languages from 'virtual:words';

import type { Item, Unit } from './claims';

/** A Fluent pattern as the build leaves it: a text, or a list of texts, variables and choices. */
export type Pattern = string | readonly Part[];

type Part =
  | string
  | { readonly arg: string }
  | { readonly by: string; readonly variants: Readonly<Record<string, Pattern>>; readonly other: Pattern };

/** One language: its sentences, and the names of the catalogue's items by number. */
export interface Language {
  readonly messages: Readonly<Record<string, Pattern>>;
  readonly items: Readonly<Record<string, string>>;
}

/** What is filled into a sentence: a text as it is, a number written out and open to choices by its plural form. */
export type Values = Readonly<Record<string, string | number>>;

const LANGUAGES = new Map(Object.entries(languages));

const DAY_MS = 86_400_000;

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
    for (const locale of preferred) {
      const tag = locale.split('-')[0] as string;
      const language = LANGUAGES.get(tag);
      if (language !== undefined) return new Words(tag, language, locale);
    }
    return new Words('en', LANGUAGES.get('en') as Language, 'en');
  }

  say(id: string, values: Values = {}): string {
    const pattern = this.language.messages[id];
    if (pattern === undefined) throw new Error(`There is no message '${id}'.`);
    return this.fill(pattern, values);
  }

  item(item: Item): string {
    if (typeof item === 'string') return item;
    return this.language.items[item] ?? this.say('item-unknown', { number: String(item) });
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
    return pattern.map((part) => this.part(part, values)).join('');
  }

  private part(part: Part, values: Values): string {
    if (typeof part === 'string') return part;
    if ('arg' in part) return this.value(values[part.arg]);
    const value = values[part.by];
    const key = typeof value === 'number' ? this.plurals.select(value) : String(value);
    return this.fill(part.variants[key] ?? part.other, values);
  }

  private value(value: string | number | undefined): string {
    return typeof value === 'number' ? this.numbers.format(value) : String(value);
  }
}
