// How the screens are built, served while they are worked on, and tested.
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';
import { notices } from './notices.plugin.ts';
import { texts } from './texts.plugin.ts';

// Address of a running `steady serve`, so that `npm run dev` can reach a real core.
const desk = process.env.STEADY_DESK;

export default defineConfig({
  base: './',
  plugins: [svelte(), texts('../src-tauri/core/text', 'src/main.ts'), notices('..')],
  resolve: process.env.VITEST ? { conditions: ['browser'] } : {},
  build: {
    target: ['chrome111', 'safari15'],
    outDir: 'dist',
    emptyOutDir: true,
    // No inlined data: addresses, so that the content policy can stay strict.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  server: {
    fs: { allow: ['.', '../src-tauri/core/text'] },
    proxy: desk
      ? {
          '/api': { target: desk, changeOrigin: true, headers: { origin: desk } },
          '/photo': { target: desk, changeOrigin: true },
          '/file': { target: desk, changeOrigin: true },
        }
      : {},
  },
  test: {
    environment: 'happy-dom',
    css: true,
    include: ['src/**/*.test.ts'],
    setupFiles: ['src/whole.ts'],
  },
});
