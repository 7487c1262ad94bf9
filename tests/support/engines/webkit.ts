import { spawn } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as after } from 'node:timers/promises';
import sharp from 'sharp';
import { miniBrowserPath } from '../../../tools/test-tools.js';
import type { Engine, EnginePage } from './engine.js';

// WebKit, by WebKitGTK's own driver over the WebDriver protocol (W3C WebDriver, sections 8 to 17). It needs a display:
// one without a screen. Each page is a session, since its driver keeps one session a browser.

/** WebDriver's names of keys that write no letter (W3C WebDriver, 17.4.2). */
const keyCodes: Record<string, string> = {
  ...{ Control: '\uE009', Shift: '\uE008', Tab: '\uE004', Enter: '\uE007', Escape: '\uE00C' },
  ...{ ArrowLeft: '\uE012', ArrowUp: '\uE013', ArrowRight: '\uE014', ArrowDown: '\uE015' },
  ...{ Backspace: '\uE003', Delete: '\uE017', Home: '\uE011', End: '\uE010', Space: ' ' },
};
const keyCode = (name: string) => keyCodes[name] ?? name;

const freePort = () =>
  new Promise<number>((resolve, reject) => {
    const server = createServer().once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address() as { port: number };
      server.close(() => resolve(port));
    });
  });

/** A display without a screen; what is on it lies in a file, in the format of X window dumps. */
interface Display {
  readonly display: string;
  readonly xvfb: ChildProcess;
  readonly folder: string;
}

async function startDisplay(): Promise<Display> {
  const folder = mkdtempSync(join(tmpdir(), 'rondure-display-'));
  // Xvfb writes the number of the display that it took.
  const screen = ['-screen', '0', '2000x1400x24', '-fbdir', folder];
  const xvfb = spawn('Xvfb', ['-displayfd', '3', ...screen, '-nolisten', 'tcp'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  });
  const number = await new Promise<string>((resolve, reject) => {
    xvfb.once('error', reject);
    xvfb.once('exit', () => reject(new Error('Xvfb ended at once')));
    xvfb.stdio[3]!.once('data', (data: Buffer) => resolve(data.toString().trim()));
  });
  return { display: `:${number}`, xvfb, folder };
}

/** PNG of what is on a display: 32 bits a pixel, blue first (XWDFile.h of the X Window System, version 7). */
async function pictureOf({ folder }: Display): Promise<Buffer> {
  const file = readFileSync(join(folder, 'Xvfb_screen0'));
  const word = (n: number) => file.readUInt32BE(4 * n);
  const [headerBytes, version, width, height] = [word(0), word(1), word(4), word(5)];
  const [bitsPerPixel, bytesPerLine, colours] = [word(11), word(12), word(19)];
  if (version !== 7 || bitsPerPixel !== 32) throw new Error('an unknown dump of the display');
  const begin = headerBytes + 12 * colours;
  const rgb = Buffer.alloc(3 * width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const from = begin + y * bytesPerLine + 4 * x;
      const to = 3 * (y * width + x);
      for (let c = 0; c < 3; c++) rgb[to + c] = file[from + 2 - c];
    }
  }
  return sharp(rgb, { raw: { width, height, channels: 3 } })
    .png()
    .toBuffer();
}

/** WebKit, by WebKitGTK's MiniBrowser. */
export async function startWebKit(): Promise<Engine> {
  const binary = miniBrowserPath();
  if (!binary) throw new Error('WebKitGTK is missing: run node tools/test-tools.js');
  const display = await startDisplay();
  const drivers: ChildProcess[] = [];
  return {
    name: 'webkit',
    async newPage(width, height) {
      const { page, driver } = await newSession(binary, display);
      drivers.push(driver);
      await page.size(width, height);
      return page;
    },
    async close() {
      for (const driver of drivers) driver.kill();
      display.xvfb.kill();
      await after(50);
      rmSync(display.folder, { recursive: true, force: true });
    },
  };
}

async function newSession(binary: string, display: Display) {
  const port = await freePort();
  const driver = spawn('WebKitWebDriver', [`--port=${port}`, '--host=127.0.0.1'], {
    stdio: 'ignore',
    env: {
      ...process.env,
      DISPLAY: display.display,
      LIBGL_ALWAYS_SOFTWARE: '1',
      // Without OpenGL: Mesa's software driver (22.3) breaks down in WebKit's drawing threads on a busy machine, and the
      // page's process with it. WebKit's own pictures wait for its compositor; those of the display do.
      WEBKIT_SKIA_ENABLE_CPU_RENDERING: '1',
      WEBKIT_DISABLE_COMPOSITING_MODE: '1',
      // As root, on test machines only: the web process's own sandbox refuses to start.
      WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: '1',
    },
  });
  const call = async <T>(method: string, path: string, body?: unknown): Promise<T> => {
    const answer = await fetch(`http://127.0.0.1:${port}${path}`, {
      method,
      ...(body !== undefined && { body: JSON.stringify(body) }),
      headers: { 'Content-Type': 'application/json' },
    });
    const { value } = (await answer.json()) as { value: T & { error?: string; message?: string } };
    if (!answer.ok) throw new Error(`${method} ${path}: ${value?.error}: ${value?.message}`);
    return value;
  };
  for (let tries = 0; ; tries++) {
    try {
      await call('GET', '/status');
      break;
    } catch (error) {
      if (tries > 200) throw error;
      await after(50);
    }
  }
  const options = { binary, args: ['--automation'] };
  const { sessionId } = await call<{ sessionId: string }>('POST', '/session', {
    capabilities: {
      alwaysMatch: { browserName: 'MiniBrowser', 'webkitgtk:browserOptions': options },
    },
  });
  const at = `/session/${sessionId}`;
  await call('POST', `${at}/timeouts`, { script: 120_000, pageLoad: 120_000 });
  const act = async (actions: unknown[]) => {
    await call('POST', `${at}/actions`, { actions });
    await call('DELETE', `${at}/actions`);
  };
  const pointer = (actions: unknown[]) =>
    act([{ type: 'pointer', id: 'mouse', parameters: { pointerType: 'mouse' }, actions }]);
  const keys = (actions: unknown[]) => act([{ type: 'key', id: 'keys', actions }]);
  const move = (x: number, y: number) => ({
    type: 'pointerMove',
    x: Math.round(x),
    y: Math.round(y),
    duration: 0,
    origin: 'viewport',
  });
  // The expression stands in the script itself: the page's own policy may forbid to evaluate text.
  const script = (expression: string) => `const done = arguments[arguments.length - 1];
    Promise.resolve().then(() => (${expression}\n)).then(
      (value) => done({ value }), (error) => done({ error: String(error) }));`;
  const page: EnginePage = {
    open: (url) => call('POST', `${at}/url`, { url }),
    async evaluate<T>(expression: string) {
      const body = { script: script(expression), args: [] };
      const got = await call<{ value?: T; error?: string }>('POST', `${at}/execute/async`, body);
      if (got.error) throw new Error(got.error);
      return got.value as T;
    },
    pressAt: (x, y) =>
      pointer([move(x, y), { type: 'pointerDown', button: 0 }, { type: 'pointerUp', button: 0 }]),
    drag: ([[x, y], ...rest]) =>
      pointer([
        move(x, y),
        { type: 'pointerDown', button: 0 },
        ...rest.map(([toX, toY]) => ({ ...move(toX, toY), duration: 20 })),
        { type: 'pointerUp', button: 0 },
      ]),
    type: (text) =>
      keys(
        [...text].flatMap((value) => [
          { type: 'keyDown', value },
          { type: 'keyUp', value },
        ]),
      ),
    key: (name, held) => {
      const hold = held ? [keyCode(held)] : [];
      return keys([
        ...hold.map((value) => ({ type: 'keyDown', value })),
        { type: 'keyDown', value: keyCode(name) },
        { type: 'keyUp', value: keyCode(name) },
        ...hold.map((value) => ({ type: 'keyUp', value })),
      ]);
    },
    screenshot: () => pictureOf(display),
    async size(w, h) {
      // The window's frame takes a little: what it takes is added.
      let rect = { width: w, height: h };
      for (let tries = 0; tries < 10; tries++) {
        await call('POST', `${at}/window/rect`, rect);
        const [innerW, innerH] = await page.evaluate<[number, number]>('[innerWidth, innerHeight]');
        if (innerW === w && innerH === h) return;
        // The window follows a moment later where the machine is busy.
        if (tries % 2 === 0)
          rect = { width: rect.width + w - innerW, height: rect.height + h - innerH };
        await after(50 * tries);
      }
    },
    async close() {
      await call('DELETE', at);
      driver.kill();
    },
  };
  return { page, driver };
}
