import type { Plugin } from 'vite';

/** Only the text face is fetched ahead of the style sheet; the title face may arrive a moment later. */
export const preloadTextFace: Plugin = {
  name: 'preload-text-face',
  transformIndexHtml: {
    order: 'post',
    handler: (_html, { bundle }) =>
      Object.keys(bundle ?? {})
        .filter((file) => file.includes('SourceSans3VF-Upright'))
        .map((file) => ({
          tag: 'link',
          attrs: { rel: 'preload', as: 'font', type: 'font/woff2', crossorigin: '', href: `/${file}` },
          injectTo: 'head' as const,
        })),
  },
};
