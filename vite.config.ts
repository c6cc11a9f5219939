// Builds the studio's page into dist/studio; both hosts serve it from there. Addresses are relative, so that it
// is the same page under the loopback host and under the desktop's own protocol.
import react from '@vitejs/plugin-react';
import { defineConfig, type HtmlTagDescriptor, type Plugin } from 'vite';

/** Names the studio in the page's head, so that it is fetched at once, before the page's script asks for it. */
function fetchedAhead(): Plugin {
  return {
    name: 'fetched-ahead',
    transformIndexHtml: {
      order: 'post',
      handler(html, { bundle = {} }): HtmlTagDescriptor[] {
        const studio = Object.values(bundle).find(
          (file) => file.type === 'chunk' && file.facadeModuleId?.endsWith('/renderer/page.tsx'),
        );
        const scripts = studio?.type === 'chunk' ? [studio.fileName, ...studio.imports] : [];
        return scripts
          .filter((file) => !html.includes(file))
          .map((file) => ({
            tag: 'link',
            attrs: { rel: 'modulepreload', crossorigin: true, href: `./${file}` },
            injectTo: 'head',
          }));
      },
    },
  };
}

export default defineConfig({
  root: 'renderer',
  base: './',
  plugins: [react(), fetchedAhead()],
  worker: { format: 'es' },
  build: {
    outDir: '../dist/studio',
    emptyOutDir: true,
    target: 'chrome130',
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 2000,
  },
});
