// Finds the programs that tests need: three browser engines for the page, poppler and qpdf to read PDFs
// back. What is missing is installed from Debian as root, or named with the one line that does it,
// and the run fails. No test is ever skipped for a missing program.
import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { pathToFileURL } from 'node:url';

const usual = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** Path of a Chromium on this machine, or undefined. RONDURE_CHROMIUM names another one. */
export function chromiumPath() {
  return [process.env.RONDURE_CHROMIUM, ...usual].find((path) => path && existsSync(path));
}

/** Path of a Firefox on this machine, or undefined. */
export const firefoxPath = () =>
  ['/usr/bin/firefox-esr', '/usr/bin/firefox'].find((path) => existsSync(path));

/** Path of WebKitGTK's small browser, which its driver steers, or undefined: its folder is named by machine and edition. */
export function miniBrowserPath() {
  const folders = existsSync('/usr/lib') ? readdirSync('/usr/lib') : [];
  return folders
    .filter((name) => name.endsWith('-linux-gnu'))
    .flatMap((name) =>
      ['4.1', '4.0'].map((edition) => `/usr/lib/${name}/webkit2gtk-${edition}/MiniBrowser`),
    )
    .find((path) => existsSync(path));
}

const onPath = (program) =>
  (process.env.PATH ?? '').split(delimiter).some((folder) => existsSync(join(folder, program)));

const needed = [
  { name: 'chromium', found: () => chromiumPath() !== undefined },
  { name: 'poppler-utils', found: () => onPath('pdftoppm') && onPath('pdfinfo') },
  { name: 'qpdf', found: () => onPath('qpdf') },
  { name: 'firefox-esr', found: () => firefoxPath() !== undefined },
  {
    name: 'webkit2gtk-driver',
    found: () => onPath('WebKitWebDriver') && miniBrowserPath() !== undefined,
  },
  { name: 'xvfb', found: () => onPath('Xvfb') },
];
const missing = () => needed.filter(({ found }) => !found()).map(({ name }) => name);

function ensureTools() {
  if (missing().length === 0) return;
  const install = ['install', '-q', '-y', '--no-install-recommends', ...missing()];
  if (process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    const quiet = { stdio: 'inherit', env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } };
    execFileSync('apt-get', ['update', '-q'], quiet);
    execFileSync('apt-get', install, quiet);
    if (missing().length === 0) return;
  }
  console.error(
    `The tests need ${missing().join(', ')}, not found. Install them, then run the tests again:\n` +
      `  sudo apt-get update && sudo apt-get install -y --no-install-recommends ${missing().join(' ')}\n` +
      'RONDURE_CHROMIUM can name the program of another Chromium.',
  );
  process.exit(1);
}

if (import.meta.url === pathToFileURL(process.argv[1]).href) ensureTools();
