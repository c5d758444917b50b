import { defineConfig } from 'astro/config';

export default defineConfig({
  srcDir: './src/site',
  cacheDir: './.cache/astro',
  outDir: './dist',
  compressHTML: true,
  build: { format: 'file' },
  devToolbar: { enabled: false },
});
