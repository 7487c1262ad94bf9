import { execFileSync } from 'node:child_process';

/** Tests of the page run what a visitor gets: dist/page, built from the source as it stands. */
export default function buildPage(): void {
  execFileSync(process.execPath, ['tools/build.js'], { stdio: 'inherit' });
}
