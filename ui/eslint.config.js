// What the type checker does not see in the screens, and what nobody else sees in the journeys, whose folders are looked
// at from the root; `cargo xtask test style` runs both.
import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import ts from 'typescript-eslint';
import svelteConfig from './svelte.config.js';

export default ts.config(
  { ignores: ['dist', 'public', 'src/types'] },
  js.configs.recommended,
  ts.configs.recommended,
  svelte.configs.recommended,
  {
    languageOptions: { globals: { ...globals.browser } },
    rules: {
      eqeqeq: 'error',
      'no-console': 'error',
      // TypeScript knows every name.
      'no-undef': 'off',
      '@typescript-eslint/no-unused-vars': ['error', { varsIgnorePattern: '^_', argsIgnorePattern: '^_' }],
      // What is not watched on purpose (fingers on the glass, texts put together once) is a plain map.
      'svelte/prefer-svelte-reactivity': 'off',
      // Blanks at the edge of a text stand in braces, or the layout would eat them.
      'svelte/no-useless-mustaches': 'off',
    },
  },
  // A journey runs in Node and in the page, and says what it measured.
  {
    files: ['tests/**/*.mjs'],
    languageOptions: { globals: { ...globals.node } },
    rules: { 'no-console': 'off', 'no-undef': 'error' },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser, extraFileExtensions: ['.svelte'], svelteConfig } },
  },
);
