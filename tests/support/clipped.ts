import type { Page } from 'playwright-core';

/** Words that are cut off, or stand out of the window, in what is shown now: where, and what they say. */
export function clippedWords(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    // What may be pushed sideways, and a name that is as long as its maker likes.
    const pushed = '.thread .scroller, .panel .tools, .way, pre, .by-round ol, .title, .unseen';
    const wide = document.documentElement.clientWidth;
    const found: string[] = [];
    if (document.documentElement.scrollWidth > wide + 1)
      found.push(`the page is ${document.documentElement.scrollWidth} wide in ${wide}`);
    const all = 'button, label, legend, h2, h3, h4, p, summary, li, th, kbd, select, .size, .note';
    for (const one of Array.from(document.querySelectorAll<HTMLElement>(all))) {
      const box = one.getBoundingClientRect();
      if (box.width === 0 || one.closest(pushed)) continue;
      const text = one.innerText.trim();
      if (text === '') continue;
      const says = `${one.tagName.toLowerCase()}.${one.className}: ${text.slice(0, 60)}`;
      if (one.clientWidth > 0 && one.scrollWidth > one.clientWidth + 1 && one.tagName !== 'SELECT')
        found.push(`cut off: ${says}`);
      if (
        one.clientHeight > 0 &&
        one.scrollHeight > one.clientHeight + 3 &&
        one.tagName === 'BUTTON'
      )
        found.push(`cut off below: ${says}`);
      if (box.left < -1 || box.right > wide + 1) found.push(`out of the window: ${says}`);
    }
    return found;
  });
}
