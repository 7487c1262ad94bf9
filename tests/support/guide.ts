import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

const top = new URL('../../', import.meta.url).pathname;

/** README and every page of the guide, by path from the top folder. */
export function guidePages(): { path: string; text: string }[] {
  const pages = readdirSync(join(top, 'docs/guide')).filter((name) => name.endsWith('.md'));
  return ['README.md', ...pages.sort().map((name) => `docs/guide/${name}`)].map((path) => ({
    path,
    text: readFileSync(join(top, path), 'utf8'),
  }));
}

/** All of it as one text. */
export function guideText(): string {
  return guidePages()
    .map(({ text }) => text)
    .join('\n');
}
