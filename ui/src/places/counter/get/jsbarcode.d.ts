// The one class of `jsbarcode` that is used here: its declarations cover only the whole library, which draws by itself.

declare module 'jsbarcode/bin/barcodes/CODE128/index.js' {
  export class CODE128 {
    constructor(text: string, options: object);
    /** The modules from left to right: 1 is dark. */
    encode(): { text: string; data: string };
  }
}
