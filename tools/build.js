// Builds dist/ from src/: compiles the types away, publishes the JSON Schemas, and puts the page beside them.
//   node tools/build.js           all of it
//   node tools/build.js --no-page without the page, as most tests want it
// Nothing is built again while what it is made from stays as it was.
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  cpSync,
  existsSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const top = fileURLToPath(new URL('../', import.meta.url));
const dist = join(top, 'dist');
const scratch = join(top, '.tmp');
const withPage = !process.argv.includes('--no-page');

/** Every file below a folder, by its path from the top, in order. */
function filesBelow(folder) {
  return readdirSync(join(top, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(top.length))
    .sort();
}

/** One line for all that dist/ is made from. */
function fingerprint(files) {
  const hash = createHash('sha256');
  for (const file of files)
    hash
      .update(file)
      .update('\0')
      .update(readFileSync(join(top, file)));
  return hash.digest('hex');
}

const common = ['package.json', 'tsconfig.json', 'tools/build.js'];
const sources = fingerprint([...common, ...filesBelow('src')]);
const pageSources = fingerprint([
  ...[...common, 'vite.config.js'],
  ...['src', 'palettes', 'fonts'].flatMap(filesBelow),
]);
const stampOf = (name) => {
  const file = join(dist, name);
  return existsSync(file) ? readFileSync(file, 'utf8') : '';
};
const programStands = stampOf('.made-from') === sources;
const pageStands = !withPage || stampOf('page/.made-from') === pageSources;
if (!programStands || !pageStands) await build();

/** Where a file of an installed development dependency lies. */
function inTool(path) {
  return createRequire(import.meta.url).resolve(path);
}

/** `npm ci` installs the tools of the build even for production (.npmrc); others may leave them out. */
function needTools() {
  try {
    inTool('typescript/bin/tsc');
    inTool('vite/package.json');
  } catch (error) {
    if (error.code !== 'MODULE_NOT_FOUND') throw error;
    console.error(
      'Rondure is built with its development dependencies, and they are not installed: run npm ci --include=dev here.',
    );
    process.exit(1);
  }
}

async function build() {
  needTools();
  const made = join(scratch, `dist-${process.pid}`);
  try {
    mkdirSync(made, { recursive: true });
    if (programStands)
      cpSync(dist, made, { recursive: true, filter: (path) => path !== join(dist, 'page') });
    else await buildProgram(made);
    if (withPage && !pageStands) await buildPage(join(made, 'page'));
    else if (existsSync(join(dist, 'page')))
      cpSync(join(dist, 'page'), join(made, 'page'), { recursive: true });
    // A program that runs meanwhile finds the old build or the new one.
    rmSync(dist, { recursive: true, force: true });
    renameSync(made, dist);
  } finally {
    rmSync(made, { recursive: true, force: true });
  }
}

async function buildProgram(made) {
  // What did not change is not compiled again; files whose source is gone are cleared away.
  const compiled = join(scratch, 'compiled');
  const info = join(scratch, 'compiled.tsbuildinfo');
  if (!existsSync(compiled)) rmSync(info, { force: true });
  const how = ['--outDir', compiled, '--incremental', '--tsBuildInfoFile', info];
  execFileSync(
    process.execPath,
    [inTool('typescript/bin/tsc'), '-p', join(top, 'tsconfig.json'), ...how],
    {
      stdio: 'inherit',
    },
  );
  for (const file of filesBelow('.tmp/compiled')) {
    const source = file.replace('.tmp/compiled', 'src').replace(/(\.d\.ts|\.js)$/, '.ts');
    if (!existsSync(join(top, source))) rmSync(join(top, file));
  }
  cpSync(compiled, made, { recursive: true });
  const schemas = [
    ['core/pattern/schema.js', 'patternJsonSchema', 'pattern.schema.json'],
    ['core/swatch/schema.js', 'swatchJsonSchema', 'swatch.schema.json'],
  ];
  for (const [module, name, file] of schemas) {
    const { [name]: schema } = await import(pathToFileURL(join(made, module)).href);
    writeFileSync(join(made, file), `${JSON.stringify(schema(), null, 2)}\n`);
  }
  await bundleProgram(made);
  writeFileSync(join(made, '.made-from'), sources);
}

/**
 * The command line in a few files beside the modules that it is made of: to find and open hundreds of
 * small ones took longer than much of its work.
 */
async function bundleProgram(made) {
  const { build: bundle } = await import('vite');
  const ownPlace = {
    name: 'rondure-own-place',
    /** What a module finds by its own place, it finds from the module still. */
    transform: (code, id) =>
      id.startsWith(made) && code.includes('import.meta.url')
        ? code.replaceAll(
            'import.meta.url',
            `new URL('..${id.slice(made.length)}', import.meta.url).href`,
          )
        : undefined,
  };
  await bundle({
    configFile: false,
    root: made,
    logLevel: 'warn',
    plugins: [ownPlace],
    // zod brings its words in every language, a file each, and culori 154 modules for a table of names;
    // their licences go with them.
    ssr: { noExternal: ['zod', 'culori'] },
    build: {
      ssr: join(made, 'cli/main.js'),
      outDir: join(made, 'program'),
      target: 'node20',
      rolldownOptions: {
        // The library has the languages too: they stay one copy, and English alone is in the bundle.
        external: (id, from) =>
          from !== undefined &&
          /\/words\/pages\/load\.js$/.test(from) &&
          /^\.\/(?!english)\w+\/index\.js$/.test(id),
        output: {
          // Small, but functions keep their names, so that a fault's trace can be read.
          minify: {
            compress: false,
            mangle: { toplevel: false },
            codegen: { removeWhitespace: true },
          },
          entryFileNames: '[name].js',
          chunkFileNames: '[name]-[hash].js',
        },
      },
    },
  });
  for (const name of ['zod', 'culori']) {
    const licence = join(dirname(inTool(`${name}/package.json`)), 'LICENSE');
    cpSync(licence, join(made, `program/${name}-LICENSE`));
  }
}

async function buildPage(folder) {
  const { build: bundle } = await import('vite');
  // Tests that build it themselves run under another, for which every element would name its line of source.
  process.env.NODE_ENV = 'production';
  await bundle({ configFile: join(top, 'vite.config.js'), build: { outDir: folder } });
  writeFileSync(join(folder, '.made-from'), pageSources);
}
