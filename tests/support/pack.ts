import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

export const top = fileURLToPath(new URL('../../', import.meta.url));

const run = promisify(execFile);

/** npm in a folder; what asks the registry takes what `npm ci` left in npm's store first. */
export async function npm(folder: string, ...argv: string[]): Promise<string> {
  const { stdout } = await run('npm', ['--prefix', folder, ...argv, '--prefer-offline'], {
    cwd: folder,
    maxBuffer: 1 << 26,
  });
  return stdout;
}

/** The tarball that a user of the package gets, of dist/ as the tests' setup built it. */
export async function packed(): Promise<{ folder: string; tarball: string; bytes: Uint8Array }> {
  const folder = mkdtempSync(join(tmpdir(), 'rondure-package-'));
  const told = await npm(top, 'pack', '--ignore-scripts', '--json', '--pack-destination', folder);
  const tarball = join(folder, JSON.parse(told)[0].filename);
  return { folder, tarball, bytes: readFileSync(tarball) };
}
