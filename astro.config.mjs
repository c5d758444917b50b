import { defineConfig } from 'astro/config';
import { recordPhotos, recordWatch } from './src/site/integration.ts';
import { browserScripts } from './src/site/scripts.ts';

export default defineConfig({
  srcDir: './src/site',
  cacheDir: './.cache/astro',
  compressHTML: true,
  trailingSlash: 'ignore',
  build: { format: 'file' },
  devToolbar: { enabled: false },
  integrations: [recordPhotos(), recordWatch(), browserScripts()],
  server: { host: '127.0.0.1' },
});
