import type { CDPSession, Page } from 'playwright-core';

/** A place in the window, CSS pixels. */
type At = readonly [x: number, y: number];

/** A maker without mouse and keyboard: nothing but touches, as a screen sends them (Chrome's own protocol). */
export class FingersAlone {
  private constructor(
    readonly page: Page,
    private readonly screen: CDPSession,
  ) {}

  static async on(page: Page): Promise<FingersAlone> {
    return new FingersAlone(page, await page.context().newCDPSession(page));
  }

  private async touch(type: 'touchStart' | 'touchMove' | 'touchEnd', at: readonly At[] = []) {
    const touchPoints = at.map(([x, y], id) => ({ x, y, id }));
    await this.screen.send('Input.dispatchTouchEvent', { type, touchPoints });
  }

  /** One finger, or several, from place to place. */
  async pull(way: readonly (At | readonly At[])[]): Promise<void> {
    const [first, ...rest] = way.map((at) => (isPlace(at) ? [at] : at));
    await this.touch('touchStart', first);
    for (const at of rest) await this.touch('touchMove', at);
    // A finger that rests before it is lifted throws nothing.
    for (let n = 0; n < 3; n++) await this.touch('touchMove', rest.at(-1));
    await this.touch('touchEnd');
  }

  /** Pushes what lies under the finger by so much, as one scrolls. */
  async push(from: At, x: number, y: number): Promise<void> {
    const way = Array.from({ length: 13 }, (_, n): At => [
      from[0] + (x * n) / 12,
      from[1] + (y * n) / 12,
    ]);
    await this.pull(way);
    // A tap while the window still runs would only stop it.
    await this.page.locator('body').evaluate(rest);
  }

  /** Taps the middle of what a selector finds, once it was pushed into sight; its target is no smaller than a fingertip. */
  async tap(selector: string): Promise<void> {
    const { at, size } = await this.inSight(selector);
    // 44 CSS pixels (WCAG 2.2, 2.5.5).
    if (Math.min(...size) < 43.9) throw new Error(`${selector} is ${size.join(' by ')} pixels`);
    for (let taps = 0; taps < 3; taps++) {
      const clicked = await this.page.evaluateHandle(watchClick);
      // Down and up in one go: where the machine is busy, two messages would be a long press.
      await this.page.touchscreen.tap(at[0], at[1]);
      // After a pull Chromium now and then takes what its protocol sends for the end of it: one taps again.
      if (await clicked.evaluate(({ came }) => came)) return;
    }
    throw new Error(`${selector} is tapped in vain`);
  }

  /** Pushes what a selector finds into sight, as often as somebody would put up with. */
  async inSight(selector: string): Promise<{ at: At; size: At }> {
    const one = this.page.locator(selector).first();
    await one.waitFor();
    for (let pushes = 0; pushes < 25; pushes++) {
      const place = await one.evaluate(whereOf);
      if (!place.by) return place;
      await this.push(place.hold, ...place.by);
      await one.evaluate(rest);
    }
    throw new Error(`${selector} does not come into sight`);
  }
}

const isPlace = (at: At | readonly At[]): at is At => typeof at[0] === 'number';

/** Whether a click comes soon, wherever it goes. */
function watchClick(): { came: Promise<boolean> } {
  const came = new Promise<boolean>((done) => {
    addEventListener('click', () => done(true), { capture: true, once: true });
    setTimeout(() => done(false), 1500);
  });
  return { came };
}

/** Until something has stood still for some frames. */
async function rest(one: Element): Promise<void> {
  let was = '';
  for (let still = 0; still < 8;) {
    await new Promise((done) => requestAnimationFrame(done));
    const { left, top } = one.getBoundingClientRect();
    still = was === `${left} ${top}` ? still + 1 : 0;
    was = `${left} ${top}`;
  }
}

/** Where something is, and by how much to push what it lies in, and where to hold it, unless a finger reaches it. */
function whereOf(one: Element): { at: At; size: At; by?: [number, number]; hold: At } {
  const box = one.getBoundingClientRect();
  const at: At = [box.left + box.width / 2, box.top + box.height / 2];
  const size: At = [box.width, box.height];
  const reached = document.elementFromPoint(...(at as [number, number]));
  const label = one instanceof HTMLInputElement ? one.labels?.[0] : undefined;
  if (reached && (one.contains(reached) || label?.contains(reached))) return { at, size, hold: at };
  const scrolls = (of: Element) => {
    const { overflowX, overflowY } = getComputedStyle(of);
    const down = /auto|scroll/.test(overflowY) && of.scrollHeight > of.clientHeight + 1;
    const along = /auto|scroll/.test(overflowX) && of.scrollWidth > of.clientWidth + 1;
    return down || along;
  };
  const outside = at[1] < 0 || at[1] > innerHeight;
  let holder: Element = outside ? document.documentElement : one.parentElement!;
  while (holder !== document.documentElement && !scrolls(holder)) holder = holder.parentElement!;
  const whole = new DOMRect(0, 0, innerWidth, innerHeight);
  const own = holder === document.documentElement ? whole : holder.getBoundingClientRect();
  const left = Math.max(0, own.left);
  const top = Math.max(0, own.top);
  const right = Math.min(innerWidth, own.right);
  const bottom = Math.min(innerHeight, own.bottom);
  // Not on the panel, which a finger would work on, nor on what slides sideways.
  const free = (at: At) =>
    !document.elementFromPoint(...(at as [number, number]))?.matches('.panel canvas, input');
  const spots = [0.5, 0.62, 0.74, 0.86].flatMap((down) =>
    [0.5, 0.94].map((over): At => [left + over * (right - left), top + down * (bottom - top)]),
  );
  const hold = spots.find(free) ?? spots[0];
  const within = (by: number, from: number, least: number, most: number) =>
    Math.max(least + 8 - from, Math.min(most - 8 - from, by));
  const by: [number, number] = [
    within((left + right) / 2 - at[0], hold[0], left, right),
    within((top + bottom) / 2 - at[1] + (hold[1] - (top + bottom) / 2), hold[1], top, bottom),
  ];
  return { at, size, by, hold };
}
