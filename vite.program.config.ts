import { defineConfig } from 'vite';

/** The program in a few files instead of hundreds, each of which Node.js would have to find, read and compile. Packages stay packages. */
export default defineConfig({
  publicDir: false,
  build: {
    ssr: 'src/cli/main.ts',
    outDir: 'dist',
    emptyOutDir: false, // beside what the compiler wrote: types, and the modules that threads of their own start from
    target: 'node20',
    minify: false,
    rollupOptions: { output: { entryFileNames: 'cli/main.js', chunkFileNames: 'cli/part-[name]-[hash].js' } },
  },
});
