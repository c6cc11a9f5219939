// Builds the studio's page into dist/studio; both hosts serve it from there. Addresses are relative, so that it
// is the same page under the loopback host and under the desktop's own protocol.
import react from '@vitejs/plugin-react';
import { defineConfig, type HtmlTagDescriptor, type Plugin } from 'vite';

/** Typefaces that stand on every screen; the slanted one does not. */
const FIRST_FONTS = /source-(?:sans|serif)-(?:regular|semibold)/;

/**
 * Names in the page's head what a start waits for, so that it is fetched at once: the studio itself, before the
 * page's script asks for it, and the typefaces, before words are laid out that would be laid out again with them.
 */
function fetchedAhead(): Plugin {
  return {
    name: 'fetched-ahead',
    transformIndexHtml: {
      order: 'post',
      handler(html, { bundle = {} }): HtmlTagDescriptor[] {
        const files = Object.values(bundle);
        const studio = files.find(
          (file) => file.type === 'chunk' && file.facadeModuleId?.endsWith('/renderer/page.tsx'),
        );
        const scripts = studio?.type === 'chunk' ? [studio.fileName, ...studio.imports] : [];
        const fonts = files.filter(({ fileName }) => FIRST_FONTS.test(fileName));
        const link = (attrs: Record<string, string>, file: string): HtmlTagDescriptor => ({
          tag: 'link',
          attrs: { ...attrs, crossorigin: true, href: `./${file}` },
          injectTo: 'head',
        });
        return [
          ...scripts
            .filter((file) => !html.includes(file))
            .map((file) => link({ rel: 'modulepreload' }, file)),
          ...fonts.map(({ fileName }) => link({ rel: 'preload', as: 'font', type: 'font/ttf' }, fileName)),
        ];
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
