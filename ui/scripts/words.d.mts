// The types of words.mjs.

export declare const target: URL;
export declare function ids(): string;
