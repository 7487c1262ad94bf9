import { execFileSync } from 'node:child_process';

/** Tests of the spawned program run what a user runs: dist/, built from the source as it stands. */
export default function build(): void {
  execFileSync(process.execPath, ['tools/build.js', '--no-page'], { stdio: 'inherit' });
}
