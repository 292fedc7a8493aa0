// Builds the page into one file, dist/index.html: script and style inline, allowed by their hashes and nothing else.

import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

import { build } from 'vite';

import { readMessages, tags, wordsPlugin } from './words.mjs';

const HERE = fileURLToPath(new URL('.', import.meta.url));

/** What a slow phone loads in a moment. */
const LIMIT = 60_000;

/** Phones of 2021 and later. */
const BROWSERS = ['chrome87', 'safari14.1', 'firefox91'];

const english = readMessages('en');
const { script, style } = await bundle();
const page = fill(readFileSync(`${HERE}src/page.html`, 'utf8'), {
  policy: policy(script, style),
  title: english['title'],
  // Without a script nothing can choose between them.
  noscript: tags().map((tag) => `<p lang="${tag}">${readMessages(tag)['noscript']}`).join('\n'),
  licence: licence('@noble/ed25519'),
  script,
  style,
});
const size = Buffer.byteLength(page);
if (size > LIMIT) {
  throw new Error(`The page has ${size} bytes; at most ${LIMIT} are allowed.`);
}
mkdirSync(`${HERE}dist`, { recursive: true });
writeFileSync(`${HERE}dist/index.html`, page);
console.log(`viewer/dist/index.html: ${size} bytes`);

async function bundle() {
  const result = await build({
    configFile: false,
    root: HERE,
    logLevel: 'warn',
    plugins: [wordsPlugin(), withoutReasons()],
    build: {
      write: false,
      // Class fields are the newest thing in the code, and those browsers have them; lowered, they cost a kilobyte.
      target: 'es2022',
      cssTarget: BROWSERS,
      cssCodeSplit: false,
      modulePreload: false,
      lib: { entry: `${HERE}src/main.ts`, formats: ['iife'], name: 'viewer' },
      minify: true,
    },
  });
  const output = [result].flat().flatMap((bundle) => bundle.output);
  const code = output.find((file) => file.type === 'chunk').code;
  const css = output.find((file) => file.fileName.endsWith('.css')).source;
  // Inside an element only these two sequences could end or hide it.
  return { script: code.trim().replaceAll('</', '<\\/').replaceAll('<!--', '<\\!--'), style: String(css).trim() };
}

/** Leaves out the reasons that errors carry for whoever debugs: the reader of the page is told by the fault alone. */
function withoutReasons() {
  const reason = /\b(refused|wrong|new CborError)\('[^']*'\)|\b(new Refusal\('[a-z-]+'), '[^']*'\)/g;
  return {
    name: 'without-reasons',
    enforce: 'pre',
    transform: (code, id) =>
      id.startsWith(`${HERE}src/`) ? code.replace(reason, (_, call, refusal) => (call ? `${call}('')` : `${refusal}, '')`)) : null,
  };
}

/** Allows this very script and style; no request, no frame, no form, no base, no string turned into markup. */
function policy(script, style) {
  return [
    "default-src 'none'",
    `script-src '${sha256(script)}'`,
    `style-src '${sha256(style)}'`,
    // The empty icon in the page keeps browsers from asking the host for one.
    'img-src data:',
    "form-action 'none'",
    "base-uri 'none'",
    "require-trusted-types-for 'script'",
    "trusted-types 'none'",
  ].join('; ');
}

/** The licence of a library whose code the page carries, which asks to go with every copy. */
function licence(library) {
  const text = readFileSync(`${HERE}../node_modules/${library}/LICENSE`, 'utf8').trim();
  if (text.includes('--')) throw new Error(`The licence of ${library} would end the comment that holds it.`);
  return `${library}:\n${text}\n`;
}

function sha256(text) {
  return `sha256-${createHash('sha256').update(text).digest('base64')}`;
}

function fill(template, values) {
  return template.replace(/\{\{(\w+)\}\}/g, (_, name) => {
    if (values[name] === undefined) throw new Error(`The template asks for '${name}', which the build does not have.`);
    return values[name];
  });
}
