import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** Everything stays in files of its own: the page's security policy allows neither inline scripts nor inline styles nor data addresses. */
export default defineConfig({
  root: here('.'),
  base: './',
  plugins: [react()],
  css: { modules: { localsConvention: 'camelCaseOnly' } },
  build: {
    outDir: here('../dist/page'),
    emptyOutDir: true,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    target: 'es2023',
    chunkSizeWarningLimit: 1500,
  },
});
