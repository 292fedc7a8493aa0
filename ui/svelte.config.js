// Svelte needs nothing set; the file stands here so that the editor and the checker agree on the version.

export default {};
