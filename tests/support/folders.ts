import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

/** Every path under a folder with the content of files, one character a byte; '/' for folders. What we may not read says so. */
export function everythingIn(folder: string, prefix = ''): Record<string, string> {
  const found: Record<string, string> = {};
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const full = join(folder, entry.name);
    const name = prefix + entry.name;
    found[name] = '/';
    try {
      if (entry.isFile()) found[name] = readFileSync(full, 'latin1');
      if (entry.isDirectory()) Object.assign(found, everythingIn(full, `${name}/`));
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EACCES') throw error;
      found[name] = 'not ours to read';
    }
  }
  return found;
}
