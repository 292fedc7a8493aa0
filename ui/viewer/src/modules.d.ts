// Modules that are no TypeScript: the words that the build makes of the Fluent files and the catalogue, and styles.

declare module 'virtual:words' {
  const languages: Readonly<Record<string, import('./words').Language>>;
  export default languages;
}

declare module '*.css';
