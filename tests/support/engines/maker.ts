import { setTimeout as after } from 'node:timers/promises';
import type { EnginePage } from './engine.js';

/** A maker before the page, in any engine: looks, taps, and waits for what is to come. */
export interface Maker {
  readonly page: EnginePage;
  /** Waits until an expression is true in the page; tells what it waited for. */
  until(expression: string, what: string, seconds?: number): Promise<void>;
  /** Brings the first element that a selector finds into sight and presses its middle. */
  tap(selector: string): Promise<void>;
  /** Waits until the choice of beads has settled for what is wished. */
  settled(): Promise<void>;
  /** Drops a file on the table. */
  drop(name: string, bytes: Uint8Array, type: string): Promise<void>;
  /** The bytes of what a tap saves. */
  saved(selector: string): Promise<Buffer>;
  /** Everything that the page wrote to the console as an error, or threw, since it was opened. */
  complaints(): Promise<string[]>;
}

/** Opens the page and listens for what goes wrong in it; what is saved is caught on its way. */
export async function makerAt(page: EnginePage, address: string): Promise<Maker> {
  await page.open(address);
  await page.evaluate(`(() => {
    globalThis.complaints = [];
    addEventListener('error', ({ message }) => complaints.push(message));
    addEventListener('unhandledrejection', ({ reason }) => complaints.push(String(reason)));
    const say = console.error;
    console.error = (...said) => { complaints.push(said.join(' ')); say.apply(console, said); };
    globalThis.caught = [];
    const make = URL.createObjectURL;
    URL.createObjectURL = (blob) => { globalThis.lastBlob = blob; return make.call(URL, blob); };
    const click = HTMLAnchorElement.prototype.click;
    HTMLAnchorElement.prototype.click = function () {
      if (this.download) caught.push(globalThis.lastBlob); else click.call(this);
    };
  })()`);

  async function until(expression: string, what: string, seconds = 90): Promise<void> {
    const end = Date.now() + 1000 * seconds;
    for (;;) {
      if (await page.evaluate<boolean>(`(async () => !!(await (${expression})))()`)) return;
      if (Date.now() > end) throw new Error(`waited ${seconds} s in vain: ${what}`);
      await after(100);
    }
  }

  const settled = () =>
    until(`document.querySelector('main')?.dataset.state === 'settled'`, 'beads are chosen');

  return {
    page,
    until,
    settled,
    async tap(selector) {
      const found = JSON.stringify(selector);
      await until(`document.querySelector(${found})`, `there is ${selector}`);
      await until(
        `!document.querySelector(${found}).matches(':disabled, [aria-disabled="true"]')`,
        `${selector} can be pressed`,
      );
      // A press goes where the element was when it was looked for: it has to stand still.
      const [x, y] = await page.evaluate<[number, number]>(`(async () => {
        let was = '';
        for (let looks = 0; ; looks++) {
          const one = document.querySelector(${found});
          one.scrollIntoView({ block: 'center', inline: 'center' });
          const { left, top, width, height } = one.getBoundingClientRect();
          const middle = [left + width / 2, top + height / 2];
          if (was === middle.join() || looks > 100) return middle;
          was = middle.join();
          await new Promise((done) => setTimeout(done, 60));
        }
      })()`);
      await page.pressAt(x, y);
    },
    async drop(name, bytes, type) {
      const file = JSON.stringify([name, type, Buffer.from(bytes).toString('base64')]);
      await page.evaluate(`(() => {
        const [name, type, text] = ${file};
        const bytes = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
        const event = new Event('drop', { bubbles: true, cancelable: true });
        const dataTransfer = { types: ['Files'], files: [new File([bytes], name, { type })] };
        Object.defineProperty(event, 'dataTransfer', { value: dataTransfer });
        document.body.dispatchEvent(event);
      })()`);
    },
    async saved(this: Maker, selector) {
      await page.evaluate('void (caught.length = 0)');
      await this.tap(selector);
      await until('caught.length > 0', `${selector} saves a file`, 180);
      const text = await page.evaluate<string>(`caught[0].arrayBuffer().then((buffer) => {
        const bytes = new Uint8Array(buffer);
        let text = '';
        for (let p = 0; p < bytes.length; p += 8192)
          text += String.fromCharCode(...bytes.subarray(p, p + 8192));
        return btoa(text);
      })`);
      return Buffer.from(text, 'base64');
    },
    complaints: () => page.evaluate<string[]>('complaints'),
  };
}
