import type { Page } from 'playwright-core';

/** Words in sight, the size of their letters in CSS pixels, and their contrast (WCAG 2.2, 1.4.3) to what lies under them. */
export interface LettersOn {
  readonly words: string;
  readonly px: number;
  readonly contrast: number;
}

/** What is written within a selector, text by text. */
export const lettersOn = (page: Page, selector: string): Promise<LettersOn[]> =>
  page.locator(selector).first().evaluate(readLetters);

function readLetters(within: Element): LettersOn[] {
  const colour = (css: string) => (css.match(/[\d.]+/g) ?? []).map(Number);
  const light = ([r, g, b]: number[]) => {
    const linear = (value: number) =>
      value <= 0.04045 * 255 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4;
    return 0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b);
  };
  const ground = (one: Element): number[] => {
    for (let at: Element | null = one; at; at = at.parentElement) {
      const [r, g, b, opaque = 1] = colour(getComputedStyle(at).backgroundColor);
      if (opaque === 1) return [r, g, b];
      if (opaque > 0) throw new Error(`half a colour lies under ${one.textContent}`);
    }
    return [255, 255, 255];
  };
  const found: LettersOn[] = [];
  const texts = document.createTreeWalker(within, NodeFilter.SHOW_TEXT);
  while (texts.nextNode()) {
    const words = texts.currentNode.textContent!.trim();
    const one = texts.currentNode.parentElement!;
    const { width, height } = one.getBoundingClientRect();
    const { color, fontSize, clipPath, opacity } = getComputedStyle(one);
    if (words === '' || width < 2 || height < 2 || clipPath !== 'none') continue;
    if (opacity !== '1') throw new Error(`half a colour is ${words}`);
    const [over, under] = [light(colour(color)), light(ground(one))].sort((a, b) => b - a);
    found.push({ words, px: parseFloat(fontSize), contrast: (over + 0.05) / (under + 0.05) });
  }
  return found;
}
