// Keeping a file that came as bytes.

/** Lets the browser keep a PDF as a file of this name. */
export function keep(pdf: Blob, name: string) {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(pdf);
  link.download = name;
  link.click();
  // The browser reads it after the click, and has done so long before a minute is over.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
