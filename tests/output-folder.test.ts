import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, symlinkSync } from 'node:fs';
import { chmodSync, existsSync, lstatSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { spawnSync } from 'node:child_process';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { checkOutputFree, ourFiles, writeFolder } from '../src/node/output/output-folder.js';

const pattern = '{"format":"rondure-pattern","version":1}';
const files = new Map<string, Uint8Array | string>([
  ['pattern.json', pattern],
  ['chart.png', Uint8Array.of(1, 2, 3)],
  ['rounds.txt', 'R1 (7 stitches): 7A\n'],
]);
const fails = (code: string, facts: object = {}) =>
  expect.objectContaining({ code, facts: expect.objectContaining(facts) });

let root: string;
let dir: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'rondure-test-'));
  dir = join(root, 'кошка & 100% готово');
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

/** Every path under the root with the content of files, to compare before and after. */
function everything(path = root): Record<string, string> {
  const found: Record<string, string> = {};
  for (const entry of readdirSync(path, { withFileTypes: true })) {
    const full = join(path, entry.name);
    found[full.slice(root.length + 1)] = entry.isFile() ? readFileSync(full, 'latin1') : '/';
    if (entry.isDirectory()) Object.assign(found, everything(full));
  }
  return found;
}

function oursAt(path: string): void {
  mkdirSync(path);
  writeFileSync(join(path, 'pattern.json'), pattern);
  writeFileSync(join(path, 'worked.png'), 'from last time');
  writeFileSync(join(path, 'notes.md'), 'bought two packets');
  mkdirSync(join(path, 'photos'));
  writeFileSync(join(path, 'photos', 'finished.jpg'), 'the purse');
  symlinkSync('notes.md', join(path, 'link to notes'));
}

/** The number of a process that has ended. */
const deadPid = () => spawnSync(process.execPath, ['-e', '']).pid;

describe('a new folder', () => {
  it('holds exactly the files, and nothing lies beside it', async () => {
    await writeFolder(dir, files, { force: false });
    expect(readdirSync(root)).toEqual(['кошка & 100% готово']);
    expect(readdirSync(dir).sort()).toEqual([...files.keys()].sort());
    expect(readFileSync(join(dir, 'pattern.json'), 'utf8')).toBe(pattern);
    expect([...readFileSync(join(dir, 'chart.png'))]).toEqual([1, 2, 3]);
  });

  it('has the permissions that any new folder has', async () => {
    await writeFolder(dir, files, { force: false });
    mkdirSync(join(root, 'plain'));
    expect(statSync(dir).mode).toBe(statSync(join(root, 'plain')).mode);
  });

  it('gets its parents, which go again when writing fails', async () => {
    const deep = join(root, 'a', 'b', 'purse');
    const bad = new Map(files).set('no\0name', 'x');
    await expect(writeFolder(deep, bad, { force: false })).rejects.toThrow();
    expect(everything()).toEqual({});
    await writeFolder(deep, files, { force: false });
    expect(readdirSync(deep).length).toBe(files.size);
  });

  it('may have a name as long as names may be, and a longer one is an error of its own', async () => {
    const long = join(root, 'л'.repeat(127));
    await writeFolder(long, files, { force: false });
    expect(readdirSync(root)).toEqual(['л'.repeat(127)]);
    const longer = join(root, 'x'.repeat(300));
    await expect(checkOutputFree(longer, false)).rejects.toThrow(fails('output-name-bad'));
  });

  it('is refused where anything is, and that stays as it was', async () => {
    mkdirSync(dir);
    const file = join(root, 'file');
    writeFileSync(file, 'mine');
    symlinkSync('nowhere', join(root, 'dangling'));
    const before = everything();
    for (const path of [dir, file, join(root, 'dangling'), `${dir}/`]) {
      await expect(checkOutputFree(path, false)).rejects.toThrow(
        fails('output-exists', { dir: path }),
      );
      await expect(writeFolder(path, files, { force: false })).rejects.toThrow(
        fails('output-exists', { dir: path }),
      );
    }
    expect(everything()).toEqual(before);
  });

  it('cannot lie inside a file', async () => {
    writeFileSync(join(root, 'file'), 'mine');
    const path = join(root, 'file', 'purse');
    const error = fails('output-parent-not-folder', { dir: path });
    await expect(checkOutputFree(path, false)).rejects.toThrow(error);
    await expect(writeFolder(path, files, { force: false })).rejects.toThrow(error);
    expect(everything()).toEqual({ file: 'mine' });
  });
});

describe('an abort', () => {
  it('leaves nothing, whenever it comes', async () => {
    for (const after of [0, 1, 2, 3]) {
      const stop = new AbortController();
      let given = 0;
      const counted = new Map(files);
      counted.entries = function* () {
        for (const entry of files) {
          if (given++ === after) stop.abort();
          yield entry;
        }
        if (after === given) stop.abort();
      } as typeof counted.entries;
      counted[Symbol.iterator] = counted.entries;
      const write = writeFolder(join(root, 'new', 'dir'), counted, {
        force: false,
        signal: stop.signal,
      });
      await expect(write).rejects.toThrow(expect.objectContaining({ name: 'AbortError' }));
      expect(everything()).toEqual({});
    }
  });
});

describe('--force', () => {
  it('replaces our files, removes those no longer made, and keeps what is not ours', async () => {
    oursAt(dir);
    chmodSync(dir, 0o750);
    const notes = statSync(join(dir, 'notes.md'));
    await checkOutputFree(dir, true);
    await writeFolder(dir, files, { force: true });
    expect(readdirSync(root).length).toBe(1);
    expect(readdirSync(dir).sort()).toEqual(
      [...files.keys(), 'link to notes', 'notes.md', 'photos'].sort(),
    );
    expect(readFileSync(join(dir, 'photos', 'finished.jpg'), 'utf8')).toBe('the purse');
    expect(lstatSync(join(dir, 'link to notes')).isSymbolicLink()).toBe(true);
    expect(statSync(join(dir, 'notes.md')).mtimeMs).toBe(notes.mtimeMs);
    expect(statSync(dir).mode & 0o777).toBe(0o750);
  });

  it('takes an empty folder, and a name that is free', async () => {
    mkdirSync(dir);
    await writeFolder(dir, files, { force: true });
    await writeFolder(join(root, 'free'), files, { force: true });
    expect(readdirSync(dir).length).toBe(files.size);
    expect(readdirSync(join(root, 'free')).length).toBe(files.size);
  });

  it('leaves alone what is not ours', async () => {
    mkdirSync(dir);
    writeFileSync(join(dir, 'pattern.json'), '{"format":"sewing"}');
    const folder = join(root, 'holiday');
    mkdirSync(folder);
    writeFileSync(join(folder, 'chart.png'), 'weather');
    const file = join(root, 'file');
    writeFileSync(file, 'mine');
    symlinkSync('nowhere', join(root, 'dangling'));
    const before = everything();
    const cases = { [dir]: 'folder', [folder]: 'folder', [file]: 'file' };
    for (const [path, found] of Object.entries({ ...cases, [join(root, 'dangling')]: 'link' })) {
      const error = fails('output-not-ours', { dir: path, found });
      await expect(checkOutputFree(path, true)).rejects.toThrow(error);
      await expect(writeFolder(path, files, { force: true })).rejects.toThrow(error);
    }
    expect(everything()).toEqual(before);
  });

  it('writes through a link to a folder and keeps the link', async () => {
    oursAt(dir);
    const link = join(root, 'link');
    symlinkSync(dir, link);
    await writeFolder(link, files, { force: true });
    expect(lstatSync(link).isSymbolicLink()).toBe(true);
    expect(existsSync(join(dir, 'chart.png'))).toBe(true);
    expect(existsSync(join(dir, 'worked.png'))).toBe(false);
    expect(readdirSync(root).length).toBe(2);
  });

  it('does not pull the folder away from under the one who works in it', async () => {
    oursAt(dir);
    const before = everything();
    const here = process.cwd;
    process.cwd = () => join(dir, 'photos');
    try {
      const error = fails('output-is-here', { dir });
      await expect(writeFolder(dir, files, { force: true })).rejects.toThrow(error);
    } finally {
      process.cwd = here;
    }
    expect(everything()).toEqual(before);
  });

  it('puts everything back when writing fails half-way', async () => {
    oursAt(dir);
    const before = everything();
    const bad = new Map(files).set('no\0name', 'x');
    await expect(writeFolder(dir, bad, { force: true })).rejects.toThrow();
    expect(everything()).toEqual(before);
  });
});

describe('after a killed run', () => {
  it('the older folder comes back when the run died between the two renames', async () => {
    oursAt(dir);
    const before = everything();
    const mark = `${deadPid()}-0a1b2c3d`;
    const name = 'кошка & 100% готово';
    renameSync(dir, join(root, `.${name}.rondure-old-${mark}`));
    mkdirSync(join(root, `.${name}.rondure-new-${mark}`));
    await expect(checkOutputFree(dir, false)).rejects.toThrow(fails('output-exists', { dir }));
    expect(everything()).toEqual(before);
    await writeFolder(dir, files, { force: true });
    expect(existsSync(join(dir, 'notes.md'))).toBe(true);
  });

  it('the older folder comes back into an empty one, and never goes when its place was taken', async () => {
    const mark = `${deadPid()}-0a1b2c3d`;
    const aside = join(root, `.purse.rondure-old-${mark}`);
    const twin = join(root, `.purse.rondure-new-${mark}`);
    const purse = join(root, 'purse');
    oursAt(aside);
    mkdirSync(twin);
    mkdirSync(purse);
    writeFileSync(join(purse, 'mine.txt'), 'made by hand meanwhile');
    const before = everything();
    await expect(checkOutputFree(purse, false)).rejects.toThrow(fails('output-exists'));
    expect(everything()).toEqual(before);
    rmSync(join(purse, 'mine.txt'));
    await checkOutputFree(purse, true);
    expect(readdirSync(root)).toEqual(['purse']);
    expect(readFileSync(join(purse, 'notes.md'), 'utf8')).toBe('bought two packets');
  });

  it('half an older folder that was being removed never comes back', async () => {
    const gone = join(root, `.purse.rondure-gone-${deadPid()}-0a1b2c3d`);
    mkdirSync(gone);
    writeFileSync(join(gone, 'pattern.json'), pattern);
    await checkOutputFree(join(root, 'purse'), false);
    expect(everything()).toEqual({});
  });

  it('a process number that somebody else has by now keeps nothing for ever', async () => {
    // In a container every run has the same number; elsewhere numbers come round again.
    for (const pid of [process.pid, process.ppid]) {
      oursAt(join(root, `.purse.rondure-old-${pid}-0a1b2c3d`));
      const elevenMinutes = Date.now() + 660_000;
      const clock = vi.spyOn(Date, 'now').mockReturnValue(elevenMinutes);
      await checkOutputFree(join(root, 'purse'), true);
      clock.mockRestore();
      expect(readdirSync(root)).toEqual(['purse']);
      rmSync(join(root, 'purse'), { recursive: true });
    }
  });

  it('leftovers go, but not those of a run that still works, nor look-alikes', async () => {
    const name = 'кошка & 100% готово';
    const dead = `.${name}.rondure-new-${deadPid()}-0a1b2c3d`;
    const kept = [`.${name}.rondure-new-${process.ppid}-0a1b2c3d`, `.${name}.rondure-notes`];
    for (const entry of [dead, ...kept]) mkdirSync(join(root, entry));
    await writeFolder(dir, files, { force: false });
    expect(readdirSync(root).sort()).toEqual([...kept, name].sort());
  });
});

it('knows the names of the files in a pattern folder', () => {
  expect(ourFiles).toContain('pattern.json');
  expect(new Set(ourFiles).size).toBe(ourFiles.length);
  // names that every system takes: lower case, two hyphens at most, one dot, no reserved device names
  for (const name of ourFiles)
    expect(name).toMatch(/^(?!con|prn|aux|nul|com\d|lpt\d)[a-z]+(-[a-z]+){0,2}\.[a-z]+$/);
});
