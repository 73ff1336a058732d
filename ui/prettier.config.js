// One layout for every file of the screens and of the journeys; `cargo xtask test style` holds them to it.
export default {
  printWidth: 120,
  singleQuote: true,
  plugins: ['prettier-plugin-svelte'],
  overrides: [
    { files: '*.svelte', options: { parser: 'svelte' } },
    // Style sheets quote as CSS itself does.
    { files: '*.css', options: { singleQuote: false } },
    // Journeys quote what screens say, apostrophes and all.
    { files: '*.mjs', options: { singleQuote: false } },
  ],
};
