// The reader for whom the unit tests write: British English, whatever the machine speaks.

Object.defineProperty(globalThis, 'navigator', { value: { languages: ['en-GB'] }, configurable: true });
