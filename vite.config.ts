// Builds the studio's page into dist/studio; both hosts serve it from there. Addresses are relative, so that it
// is the same page under the loopback host and under the desktop's own protocol.
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

export default defineConfig({
  root: 'renderer',
  base: './',
  plugins: [react()],
  worker: { format: 'es' },
  build: {
    outDir: '../dist/studio',
    emptyOutDir: true,
    target: 'chrome130',
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 2000,
  },
});
