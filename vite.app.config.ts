/** Builds the worksheet for the browser into dist/app, where the server finds it. */
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

export default defineConfig({
  root: 'src/app',
  base: '/',
  plugins: [react()],
  worker: { format: 'es' },
  build: {
    target: 'es2022',
    outDir: '../../dist/app',
    emptyOutDir: true,
    chunkSizeWarningLimit: 1500,
    assetsInlineLimit: 0,
    // On a busy machine it would warn that the build was slow.
    rolldownOptions: { checks: { pluginTimings: false } },
  },
});
