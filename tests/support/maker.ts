import type { Page } from 'playwright-core';
import { runsOf } from '../../src/core/pages/lists/runs.js';

/** Chance by a seed (Park and Miller, Communications of the ACM 31(10):1192-1201, 1988), from 0 to 1. */
export function chances(seed: number): () => number {
  let now = seed;
  return () => (now = (now * 16807) % 2147483647) / 2147483647;
}

/** Beads as lists write them: 3A 2B. */
const inRuns = (beads: string) =>
  runsOf(beads)
    .map(({ letter, count }) => `${count}${letter}`)
    .join(' ');

/** What the screen beside the bead mat shows. */
interface Shown {
  readonly run: string | undefined;
  readonly stitches: string | undefined;
  readonly extra: string;
  readonly coming: string;
  readonly done: string | undefined;
}

/**
 * A maker with thread and cloth who looks at the screen, makes mistakes, and mends them as the page
 * says. Threads are kept as they are: what was strung last is worked first.
 */
export class Maker {
  /** Letters on the thread of each length, the first strung first. */
  readonly threads: string[] = [];
  /** What each stitch carries. */
  readonly cloth: string[] = [];
  mistakes = 0;
  /** How often a slip was found before it was worked. */
  found = 0;

  constructor(
    public page: Page,
    readonly letters: string,
    readonly chance: () => number,
    /** How many beads of a hundred go wrong. */
    readonly percent: number,
  ) {}

  shown(): Promise<Shown> {
    return this.page.evaluate(() => {
      const data = (query: string) => document.querySelector<HTMLElement>(query)?.dataset;
      return {
        run: data('.tap.stringing')?.run,
        stitches: data('.tap.crocheting')?.stitches,
        extra: data('.tap.crocheting')?.extra ?? '',
        coming: data('.coming')?.coming ?? '',
        done: data('.tap.done')?.done,
      };
    });
  }

  /** One tap, and what is shown then. */
  private async tap(query = '.at-work button.tap'): Promise<Shown> {
    await this.page.evaluate(async (what) => {
      document.querySelector<HTMLElement>(what)!.click();
      await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    }, query);
    return this.shown();
  }

  act = (action: string) => this.tap(`.at-work [data-action="${action}"]`);

  /** Tells beads in the help that is open. */
  private async tell(beads: string): Promise<string> {
    const field = this.page.locator('.help-sheet [data-typed-beads]');
    await field.fill(inRuns(beads));
    await this.page.locator('.help-sheet [data-add-typed]').click();
    await this.page.locator('.help-sheet .told-beads').waitFor();
    return (await this.page.locator('.help-sheet .found').getAttribute('data-slips')) ?? '';
  }

  /** Strings one length, a bead in so many wrong; reads it back in the end where that is wished. */
  async string(readBack: boolean): Promise<void> {
    let thread = '';
    let now = await this.shown();
    for (;;) {
      while (now.run) {
        const [count, letter] = now.run.split(' ');
        for (let n = 0; n < Number(count); n++) thread += this.bead(letter);
        now = await this.tap();
      }
      if (!readBack) break;
      await this.act('check-strung');
      const slips = await this.tell(thread);
      if (slips === '0') {
        await this.tap('.help-sheet .found [data-right]');
        break;
      }
      this.found += Number(slips);
      const off = this.page.locator('.help-sheet [data-take-off]');
      const good = Number(await off.getAttribute('data-take-off'));
      if (thread.length - good > 120) {
        await this.tap('.help-sheet [data-mend-later]');
        break;
      }
      thread = thread.slice(0, good);
      now = await this.tap('.help-sheet [data-take-off]');
    }
    this.threads.push(thread);
  }

  /** What comes on the thread where one bead of a colour is wanted. */
  private bead(letter: string): string {
    if (this.chance() * 100 >= this.percent) return letter;
    this.mistakes++;
    const others = [...this.letters].filter((one) => one !== letter);
    const other = others[Math.floor(this.chance() * others.length)];
    return [other, '', letter + other][Math.floor(this.chance() * 3)];
  }

  /** The beads nearest the hook on a thread. */
  private next = (length: number, most: number) =>
    [...this.threads[length].slice(-most)].reverse().join('');

  private takeOff(length: number): string {
    const bead = this.threads[length].at(-1) ?? '';
    this.threads[length] = this.threads[length].slice(0, -1);
    return bead;
  }

  /**
   * Works the step that is shown: looks whether the beads that come are those on the screen, says so
   * where they are not, then works what is told. `length` is the one at hand, from 0.
   */
  async work(length: number): Promise<Shown> {
    let now = await this.shown();
    for (let tries = 0; now.coming !== this.next(length, now.coming.length); tries++) {
      if (tries > 5) throw new Error(`${now.coming} shown, ${this.next(length, 10)} on the thread`);
      await this.act('something-wrong');
      const slips = await this.tell(this.next(length, now.coming.length + 6));
      this.found += Number(slips);
      await this.tap('.help-sheet [data-mend-later]');
      now = await this.shown();
    }
    this.workStitches(length, now.stitches!, now.extra);
    return this.tap();
  }

  /** Works stitches without the screen; beads that are too many are taken off as they come. */
  workStitches(length: number, stitches: string, extra = ''): void {
    let off = '';
    for (const mark of stitches) {
      if (mark !== '.') {
        for (let bead = this.takeOff(length); bead !== mark; bead = this.takeOff(length)) {
          off += bead;
          if (off.length > extra.length) throw new Error(`${mark} wanted, ${off} on the thread`);
        }
      }
      this.cloth.push(mark);
    }
    while (off.length < extra.length) off += this.takeOff(length);
    if ([...off].sort().join('') !== [...extra].sort().join(''))
      throw new Error(`${off} taken off, ${extra} told`);
  }

  /** Finds the place by the beads that come: taps them, then types more. Gives the stitch that it went to. */
  async find(length: number, roughly: number): Promise<number> {
    await this.act('where-am-i');
    const places = this.page.locator('.help-sheet .found');
    const there = () => places.getAttribute('data-places').then(Number);
    const beads = this.next(length, 90);
    for (let n = 0; n < Math.min(12, beads.length); n++) {
      await this.page.locator(`[data-tap-bead="${beads[n]}"]`).click();
      if ((await there()) === 1) break;
    }
    if ((await there()) > 1) {
      const field = this.page.locator('.help-sheet [data-typed-beads]');
      await field.fill(inRuns(beads.slice(12)));
      await field.press('Tab');
    }
    const offered = await this.page
      .locator('[data-go-there]')
      .evaluateAll((all) => all.map((one) => Number((one as HTMLElement).dataset.goThere)));
    // Who has two places to choose from knows about where the work was.
    const [best] = offered.sort((p, q) => Math.abs(p - roughly) - Math.abs(q - roughly));
    await this.tap(`[data-go-there="${best}"]`);
    return best;
  }

  /** Sews on the beads that the list at the end asks for. */
  async sewOn(): Promise<void> {
    const list = await this.page.locator('.at-work [data-sew-on]').evaluateAll((all) =>
      all.map((one) => {
        const { noted, sewOn } = (one as HTMLElement).dataset;
        return { stitch: Number(noted), letter: sewOn! };
      }),
    );
    for (const { stitch, letter } of list) this.cloth[stitch] = letter;
  }
}
