import { readFileSync } from 'node:fs';

/** Packages that nearly every call needs, and of many files, go into what is bundled. */
export const WITHIN = ['commander', 'yaml', 'zod'];

const { dependencies } = JSON.parse(readFileSync('package.json', 'utf8'));
const beside = Object.keys(dependencies).filter((name) => !WITHIN.includes(name));

/** How a program of many files is made one of few, for rolldown. @param dir the folder for it, emptied before */
export const bundledInto = (dir) => ({
  platform: 'node',
  external: beside.map((name) => new RegExp(`^${name}(?:/|$)`)),
  output: {
    dir,
    cleanDir: true,
    entryFileNames: '[name].js',
    chunkFileNames: '[name].js',
    minify: { compress: false, mangle: false, codegen: true },
  },
  logLevel: 'warn',
});
