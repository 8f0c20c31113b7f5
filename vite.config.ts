import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

export default defineConfig({
  root: 'src/web',
  base: '/',
  plugins: [react()],
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    assetsInlineLimit: 0, // no data: addresses, the content-security policy has none
    modulePreload: { polyfill: false },
    target: 'es2022',
  },
});
