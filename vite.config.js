// How the page is built: dist/page, plain files with relative paths for any web host.
import { createHash } from 'node:crypto';
import { copyFileSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const inside = (path) => fileURLToPath(new URL(path, import.meta.url));

const { version } = JSON.parse(readFileSync(inside('package.json'), 'utf8'));

const manifest = 'rondure.webmanifest';
const icons = ['icon.svg', 'icon-192.png', 'icon-512.png'];

/**
 * Puts what an installed page wants (manifest and icons) and the service worker beside the page, with the list of files that it keeps at once: all but the Japanese and
 * Chinese fonts, which few want.
 */
function offline() {
  return {
    name: 'rondure-offline',
    apply: 'build',
    enforce: 'post',
    // By hand, so that it keeps its name and its paths stay as they are.
    transformIndexHtml: () => [
      { tag: 'link', attrs: { rel: 'manifest', href: `./${manifest}` }, injectTo: 'head' },
      { tag: 'link', attrs: { rel: 'apple-touch-icon', href: './icon-192.png' }, injectTo: 'head' },
    ],
    writeBundle({ dir }) {
      const own = inside('src/worktable/offline/');
      for (const name of icons) copyFileSync(join(own, name), join(dir, name));
      copyFileSync(join(own, 'manifest.json'), join(dir, manifest));
      const all = readdirSync(join(dir, 'assets')).map((name) => `assets/${name}`);
      const built = all.filter((name) => !/NotoSans(JP|SC)|\.map$/.test(name));
      const files = [...built, ...icons, manifest].sort();
      const hash = createHash('sha256');
      for (const name of [...files, 'index.html']) {
        hash.update(name).update(readFileSync(join(dir, name)));
      }
      const text = readFileSync(inside('src/worktable/offline/service-worker.js'), 'utf8');
      const edition = `rondure-${hash.digest('hex').slice(0, 16)}`;
      writeFileSync(
        join(dir, 'service-worker.js'),
        // The first line names both constants for the lint rule alone.
        text
          .replace(/^.*\n/, '')
          .replace('__FILES__', JSON.stringify(['./', ...files]))
          .replace('__EDITION__', JSON.stringify(edition)),
      );
    },
  };
}

/**
 * A worker hands on an error's code and facts (engine/failure.ts), and the page makes its sentence of
 * them: no worker carries the words of all errors.
 */
function wordlessErrors() {
  const id = '\0wordless-errors';
  return {
    name: 'rondure-wordless-errors',
    enforce: 'pre',
    resolveId: (source, importer) =>
      source.endsWith('/words/en/errors.js') && /core[/\\]errors\.ts$/.test(importer ?? '')
        ? id
        : undefined,
    load: (found) =>
      found === id
        ? 'export const errors = new Proxy({}, { get: (_, code) => () => String(code) });'
        : undefined,
  };
}

export default defineConfig({
  root: inside('src/worktable'),
  base: './',
  cacheDir: inside('.tmp/vite'),
  publicDir: false,
  plugins: [offline()],
  clearScreen: false,
  logLevel: 'warn',
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  define: { __VERSION__: JSON.stringify(version) },
  worker: { format: 'es', plugins: () => [wordlessErrors()] },
  build: {
    outDir: inside('dist/page'),
    emptyOutDir: true,
    target: 'es2022',
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 1000,
    rolldownOptions: { checks: { ineffectiveDynamicImport: false, pluginTimings: false } },
  },
});
