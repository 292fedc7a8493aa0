// Modules that are no TypeScript: the words that the build makes of the Fluent files and the catalogue, and styles.

declare module 'virtual:words' {
  /** The names of the messages and the numbers of the items, in the order in which a language has them, packed. */
  export const names: string;
  /** Each language by its tag: a JSON list, packed. */
  export const languages: Readonly<Record<string, string>>;
}

declare module '*.css';
