import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** The API that `npm run dev` talks to; the server serves the built app itself. */
const api = process.env.FQ_API ?? 'http://127.0.0.1:3000';

export default defineConfig({
  root: 'src/web',
  plugins: [react()],
  worker: { format: 'es' },
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    target: 'es2022',
    // Small files stay files: the content policy lets the page load only what this server serves.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  server: { port: 4200, strictPort: false, proxy: { '/api/': api } },
});
