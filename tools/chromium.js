// Finds Chromium for the browser test. Where it is missing: installs Debian's as root, or prints
// the one line that does, and fails. The browser test is never skipped.
import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { pathToFileURL } from 'node:url';

const usual = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** Path of a Chromium on this machine, or undefined. RONDURE_CHROMIUM names another one. */
export function chromiumPath() {
  return [process.env.RONDURE_CHROMIUM, ...usual].find((path) => path && existsSync(path));
}

function ensureChromium() {
  if (chromiumPath()) return;
  if (process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    const quiet = { stdio: 'inherit', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } };
    execFileSync('apt-get', ['update', '-q'], quiet);
    execFileSync('apt-get', ['install', '-q', '-y', '--no-install-recommends', 'chromium'], quiet);
    if (chromiumPath()) return;
  }
  console.error(
    'The browser test needs Chromium, which was not found. Install it, then run the tests again:\n' +
      '  sudo apt-get update && sudo apt-get install -y --no-install-recommends chromium\n' +
      'Or set RONDURE_CHROMIUM to the program of an installed Chromium.',
  );
  process.exit(1);
}

if (import.meta.url === pathToFileURL(process.argv[1]).href) ensureChromium();
