import { expect, test } from 'vitest';
import { languages } from '../src/words/index.js';
import { english } from '../src/words/worktable/english/index.js';
import { loadWorktable } from '../src/words/worktable/load.js';

/** A fact that is the text 12, and the facts of a sentence by name: each is 12 and its name. */
function facts(): unknown {
  const text: object = Object('12');
  return new Proxy(text, {
    get: (_, name) => {
      if (typeof name === 'symbol') return undefined;
      const own: unknown = Reflect.get(String.prototype, name);
      return typeof own === 'function' ? own.bind('12') : name === 'art' ? 'photo' : `12${name}`;
    },
  });
}

/** Every text of a catalogue by its path, sentences with the facts in them. */
function texts(value: unknown, path = ''): [string, string][] {
  if (typeof value === 'string') return [[path, value]];
  if (typeof value === 'function') {
    return [[path, String((value as (f: unknown) => string)(facts()))]];
  }
  return Object.entries(value as object).flatMap(([key, one]) => texts(one, `${path}.${key}`));
}

const wanted = texts(english);
const marks = (text: string) => [...new Set(text.match(/12[a-zA-Z]*/g))].sort();

test.each(languages)('the page says everything in %s, with every fact', async (language) => {
  const said = new Map(texts(await loadWorktable[language]()));
  expect([...said.keys()].sort()).toEqual(wanted.map(([path]) => path).sort());
  for (const [path, text] of wanted) {
    const one = said.get(path)!;
    expect(one === '', path).toBe(text === '');
    expect(marks(one), path).toEqual(marks(text));
    expect(one, path).not.toMatch(/^\s|\s$|undefined/);
  }
});

test.each(languages.filter((one) => !one.startsWith('en')))(
  'hardly a word of the page is left in English: %s',
  async (language) => {
    const said = new Map(texts(await loadWorktable[language]()));
    const same = wanted.filter(([path, text]) => /[a-z]{4}/i.test(text) && said.get(path) === text);
    // Names of keys and of paper, and words that are the same in both.
    expect(same.length, same.map(([path]) => path).join(' ')).toBeLessThan(16);
  },
);
