// Gets Rondure in every way that README and npm offer, from what is committed here, makes a panel with what came,
// and prints how large it is. Takes minutes and asks npm's registry, as `npm ci` does.
//   node tools/installs.js
import { execFileSync } from 'node:child_process';
import { existsSync, lstatSync, mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { cpSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const top = fileURLToPath(new URL('../', import.meta.url));
const scratch = mkdtempSync(join(tmpdir(), 'rondure-installs-'));
const production = { NODE_ENV: 'production' };

function run(folder, program, argv, env = {}) {
  const inherited = Object.entries(process.env).filter(([name]) => !/^npm_/i.test(name));
  execFileSync(program, argv, {
    cwd: folder,
    stdio: ['ignore', 'ignore', 'inherit'],
    env: { ...Object.fromEntries(inherited), ...env },
  });
}

const npm = (folder, env, ...argv) =>
  run(folder, 'npm', [...argv, '--prefer-offline', '--loglevel=error'], env);

/** A clone of the last commit, installed; its own program. */
function clone(env, ...flags) {
  return (folder) => {
    run(scratch, 'git', ['clone', '--quiet', '--no-hardlinks', top, folder]);
    npm(folder, env, 'ci', ...flags);
    return { rondure: join(folder, 'bin/rondure.js'), home: folder };
  };
}

/** An empty project that asks for Rondure; the program that npm links. */
function project(env, ...wish) {
  return (folder) => {
    mkdirSync(folder);
    writeFileSync(join(folder, 'package.json'), '{ "private": true }');
    npm(folder, env, 'install', ...wish);
    const home = join(folder, 'node_modules/rondure');
    return { rondure: join(folder, 'node_modules/.bin/rondure'), home };
  };
}

function tarball() {
  const folder = join(scratch, 'clone'); // made by the first way
  npm(folder, {}, 'pack', '--ignore-scripts');
  return join(
    folder,
    readdirSync(folder).find((name) => name.endsWith('.tgz')),
  );
}

const address = `git+${pathToFileURL(top).href.replace(/\/$/, '')}`;
const ways = [
  ['clone', 'npm ci in a clone', clone({})],
  ['clone-production', 'NODE_ENV=production npm ci in a clone', clone(production)],
  ['clone-omit', 'npm ci --omit=dev in a clone', clone({}, '--omit=dev')],
  ['git', 'npm install of the git address', project({}, address)],
  ['git-production', 'the same, NODE_ENV=production', project(production, address)],
  ['tarball', 'npm install of the tarball', (folder) => project({}, tarball())(folder)],
];

/** Bytes of all files below a folder. */
const bytesBelow = (folder) =>
  readdirSync(folder, { recursive: true })
    .map((name) => lstatSync(join(folder, name)))
    .reduce((sum, about) => sum + (about.isFile() ? about.size : 0), 0);

try {
  for (const [name, what, get] of ways) {
    const folder = join(scratch, name);
    const from = Date.now();
    const { rondure, home } = get(folder);
    const seconds = (Date.now() - from) / 1000;
    cpSync(join(top, 'fixtures/kingfisher.svg'), join(folder, 'kingfisher.svg'));
    run(folder, rondure, ['chart', 'kingfisher.svg', '--rounds', '12', '-o', 'made']);
    for (const file of [join(folder, 'made/chart.svg'), join(home, 'dist/page/index.html')])
      if (!existsSync(file)) throw new Error(`${what}: no ${file}`);
    const megabytes = bytesBelow(join(folder, 'node_modules')) / 1e6;
    const size = `${megabytes.toFixed(0)} MB in node_modules`;
    console.log(`${what}: makes a panel, has the page; ${size}, ${seconds.toFixed(0)} s`);
  }
} finally {
  rmSync(scratch, { recursive: true, force: true });
}
