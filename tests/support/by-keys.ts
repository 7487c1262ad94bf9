import type { Page } from 'playwright-core';

/** A maker without mouse and finger: nothing but keys, as a keyboard sends them. */
export class KeysAlone {
  constructor(public page: Page) {}

  async press(...keys: string[]): Promise<void> {
    for (const key of keys) await this.page.keyboard.press(key);
  }

  /** What a field that has the keyboard holds is typed over. */
  async typeOver(text: string): Promise<void> {
    await this.press('Control+a');
    await this.page.keyboard.type(text);
  }

  /** Whether the keyboard lies on what a selector finds. */
  on = (selector: string): Promise<boolean> =>
    this.page.evaluate((one) => document.activeElement?.matches(one) ?? false, selector);

  /** Goes on with Tab until the keyboard lies there; no more often than somebody would put up with. */
  async tabTo(selector: string, most = 30): Promise<void> {
    for (let tabs = 0; tabs <= most; tabs++) {
      if (await this.on(selector)) return;
      await this.press('Tab');
    }
    const now = await this.page.evaluate(() => document.activeElement?.outerHTML.slice(0, 120));
    throw new Error(`${selector} is not reached by ${most} times Tab; the keyboard lies on ${now}`);
  }

  /** What the place of the keyboard looks like: whoever cannot see it is lost. */
  ring = (): Promise<{ width: number; style: string; inSight: boolean }> =>
    this.page.evaluate(() => {
      const at = document.activeElement!;
      const { outlineWidth, outlineStyle } = getComputedStyle(at);
      const { left, right, top, bottom } = at.getBoundingClientRect();
      const inSight = right > 0 && bottom > 0 && left < innerWidth && top < innerHeight;
      return { width: parseFloat(outlineWidth), style: outlineStyle, inSight };
    });
}
