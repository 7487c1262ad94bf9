import { execFileSync, spawn } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { cpSync, existsSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { npm, packed, top } from '../support/pack.js';

// The tarball in a project that holds nothing else, installed by npm as a stranger would.

let folder: string;
const at = (...path: string[]) => join(folder, ...path);
const inPackage = (...path: string[]) => at('node_modules', 'rondure', ...path);
beforeAll(async () => {
  const made = await packed();
  folder = made.folder;
  writeFileSync(at('package.json'), '{ "private": true, "type": "module" }');
  await npm(folder, 'install', '--ignore-scripts', made.tarball);
  cpSync(join(top, 'fixtures/kingfisher.svg'), at('kingfisher.svg'));
}, 600_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** N·R(R+1)/2, the sum of an arithmetic series. */
const stitches = (wedges: number, rounds: number) => (wedges * rounds * (rounds + 1)) / 2;

test('brings no compiler, no types of others and no tool of the build', () => {
  const { dependencies } = JSON.parse(readFileSync(join(top, 'package.json'), 'utf8'));
  const names = readdirSync(at('node_modules'));
  for (const name of Object.keys(dependencies)) expect(names).toContain(name);
  for (const name of ['typescript', '@types', 'vite', 'esbuild', 'preact'])
    expect(names).not.toContain(name);
});

test('its command makes a panel', () => {
  const argv = ['chart', 'kingfisher.svg', '--rounds', '12', '--colours', '5', '-o', 'bird'];
  execFileSync(at('node_modules/.bin/rondure'), argv, { cwd: folder });
  const { shape, panels } = JSON.parse(readFileSync(at('bird', 'pattern.json'), 'utf8'));
  expect(shape).toMatchObject({ wedges: 7, rounds: 12 });
  expect(panels[0].rounds.join('').length).toBe(stitches(7, 12));
  for (const name of ['chart.svg', 'chart.png', 'stringing.txt', 'shopping.txt', 'worked.png'])
    expect(readdirSync(at('bird'))).toContain(name);
});

const program = `import { en, makePattern, patternText, readPalette } from 'rondure';
import type { Pattern, Picture } from 'rondure';
import { patternFiles, writeFolder } from 'rondure/node';

const data = new Uint8Array(4 * 40 * 40).map((_, k) => (k % 4 === 3 ? 255 : (k * 7) % 251));
const picture: Picture = { width: 40, height: 40, data };
const { beads, diameterMm } = readPalette('id,name,hex\\nn,night,#1b2a52\\nb,barley,#f0d68a\\n', 'two');
const pattern: Pattern = makePattern({
  picture,
  pictureName: 'moon',
  title: 'Barley moon',
  beads,
  colours: 2,
  shape: { wedges: 6, rounds: 9, beadDiameterMm: diameterMm },
  place: { place: 'fill' },
  art: 'photo',
  background: '#1b2a52',
}).pattern;
const text: string = patternText(pattern);
const files: ReadonlyMap<string, Uint8Array | string> = await patternFiles(pattern, en);
await writeFolder('moon', new Map([...files, ['pattern.json', text]]), { force: false });
`;

/** Strict, every declaration checked, and no types of Node: what they name they bring. */
const strict: ts.CompilerOptions = {
  strict: true,
  skipLibCheck: false,
  exactOptionalPropertyTypes: true,
  noUncheckedIndexedAccess: true,
  noPropertyAccessFromIndexSignature: true,
  verbatimModuleSyntax: true,
  target: ts.ScriptTarget.ES2022,
  types: [],
};
const [nodeNext, bundler] = [
  { module: ts.ModuleKind.NodeNext, moduleResolution: ts.ModuleResolutionKind.NodeNext },
  { module: ts.ModuleKind.ESNext, moduleResolution: ts.ModuleResolutionKind.Bundler },
];
const [bare, dom] = [['lib.es2022.d.ts'], ['lib.es2022.d.ts', 'lib.dom.d.ts']];

test.each([
  ['Node’s rules, without DOM', { ...nodeNext, lib: bare }],
  ['Node’s rules, with DOM', { ...nodeNext, lib: dom }],
  ['a bundler’s rules, without DOM', { ...bundler, lib: bare }],
  ['a bundler’s rules, with DOM', { ...bundler, lib: dom }],
])('a program against both entry points compiles strictly: %s', (_, how) => {
  writeFileSync(at('moon.ts'), program);
  const built = ts.createProgram([at('moon.ts')], { ...strict, ...how });
  const faults = ts.getPreEmitDiagnostics(built).map(({ messageText, file, start }) => {
    const text = ts.flattenDiagnosticMessageText(messageText, ' ');
    return `${file?.fileName}:${start}: ${text}`;
  });
  expect(faults).toEqual([]);
  const seen = built.getSourceFiles().map(({ fileName }) => fileName);
  expect(seen).toContain(inPackage('dist/node/index.d.ts'));
  expect(seen.filter((name) => /@types/.test(name))).toEqual([]);
  expect(seen.some((name) => /lib\.dom/.test(name))).toBe(how.lib === dom);
});

test('the same program makes a panel', () => {
  const { outputText } = ts.transpileModule(program, {
    compilerOptions: { ...strict, ...bundler },
  });
  writeFileSync(at('moon.js'), outputText);
  execFileSync(process.execPath, ['moon.js'], { cwd: folder });
  const { panels } = JSON.parse(readFileSync(at('moon', 'pattern.json'), 'utf8'));
  expect(panels[0].rounds.join('').length).toBe(stitches(6, 9));
  expect(readFileSync(at('moon', 'chart.svg'), 'utf8')).toMatch(/^<svg /);
});

test('`rondure page` serves all that the page asks for, the fonts of the package among it', async () => {
  const server: ChildProcess = spawn(at('node_modules/.bin/rondure'), ['page']);
  try {
    const address = await new Promise<string>((done, fail) => {
      let told = '';
      server.once('exit', () => fail(new Error(told)));
      for (const stream of [server.stdout!, server.stderr!])
        stream.on('data', (part: Buffer) => {
          told += part;
          const found = /http:\/\/127\.0\.0\.1:\d+\//.exec(told)?.[0];
          if (found) done(found);
        });
    });
    const assets = inPackage('dist/page/assets');
    const code = readdirSync(assets)
      .filter((name) => name.endsWith('.js'))
      .map((name) => readFileSync(join(assets, name), 'utf8'));
    const named = code.join('\n').matchAll(/[\w-]+\.ttf/g);
    const fonts = [...new Set(Array.from(named, ([name]) => name))];
    const kept = readdirSync(inPackage('fonts')).filter((name) => name.endsWith('.ttf'));
    expect(fonts.map((name) => name.replace(/-[\w-]{8}\.ttf$/, '.ttf')).sort()).toEqual(kept);
    for (const name of fonts) {
      expect(existsSync(join(assets, name))).toBe(false);
      const answer = await fetch(`${address}assets/${name}`);
      expect(answer.headers.get('Content-Type')).toBe('font/ttf');
      const font = readFileSync(inPackage('fonts', name.replace(/-[\w-]{8}\.ttf$/, '.ttf')));
      expect(Buffer.from(await answer.arrayBuffer()).equals(font), name).toBe(true);
    }
    const keeper = await (await fetch(`${address}service-worker.js`)).text();
    const list: string[] = JSON.parse(/\["\.\/".*?\]/.exec(keeper)![0]);
    expect(list.length).toBeGreaterThan(20);
    for (const path of list) expect((await fetch(address + path)).status, path).toBe(200);
    for (const path of [
      'assets/NotoSans-Regular.ttf',
      'assets/Other-Regular-12345678.ttf',
      'fonts/',
    ])
      expect((await fetch(address + path)).status, path).toBe(404);
  } finally {
    server.kill();
  }
});
