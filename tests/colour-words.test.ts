import { describe, expect, test } from 'vitest';
import { beadLookOf, colourWordOf } from '../src/core/colour/colour-words.js';
import { hexToLab65 } from '../src/core/colour/lab.js';
import { languages, wordsIn } from '../src/words/index.js';
import { colourFamilies, colourTones, finishKinds } from '../src/words/pages/looks.js';

/**
 * K. L. Kelly, "Twenty-two colors of maximum contrast", Color Engineering 3(6), 1965: colours with
 * their ISCC-NBS names; the sRGB values as commonly published (from memory).
 */
const kelly: readonly (readonly [hex: string, name: string, ...families: string[]])[] = [
  ['#f2f3f4', 'white', 'white'],
  ['#222222', 'black', 'black'],
  ['#f3c300', 'vivid yellow', 'yellow'],
  ['#875692', 'strong purple', 'purple'],
  ['#f38400', 'vivid orange', 'orange'],
  ['#a1caf1', 'very light blue', 'blue'],
  ['#be0032', 'vivid red', 'red'],
  ['#c2b280', 'greyish yellow (buff)', 'beige', 'yellow'],
  ['#848482', 'medium grey', 'grey'],
  ['#008856', 'vivid green', 'green'],
  ['#e68fac', 'strong purplish pink', 'pink'],
  ['#0067a5', 'strong blue', 'blue'],
  ['#f99379', 'strong yellowish pink', 'pink'],
  ['#604e97', 'strong violet', 'purple'],
  ['#f6a600', 'vivid orange yellow', 'orange', 'yellow'],
  ['#b3446c', 'strong purplish red', 'red'],
  ['#dcd300', 'vivid greenish yellow', 'yellow'],
  ['#882d17', 'strong reddish brown', 'brown'],
  ['#8db600', 'vivid yellow green', 'yellow-green'],
  ['#654522', 'deep yellowish brown', 'brown'],
  ['#e25822', 'vivid reddish orange', 'orange'],
  ['#2b3d26', 'dark olive green', 'green'],
];

test.each(kelly)('%s, in ISCC-NBS %s, is named so', (hex, _, ...families) => {
  expect(families).toContain(colourWordOf(hexToLab65(hex)).family);
});

/** W3C, CSS Color Module Level 4, named colours whose names are plain words. */
test.each([
  ['#8b0000', 'dark red'],
  ['#ffa500', 'orange'],
  ['#008000', 'green'],
  ['#006400', 'dark green'],
  ['#90ee90', 'light green'],
  ['#9acd32', 'yellow-green'],
  ['#0000ff', 'dark blue'],
  ['#00008b', 'dark blue'],
  ['#add8e6', 'light blue'],
  ['#ffc0cb', 'light pink'],
  ['#d3d3d3', 'light grey'],
  ['#808080', 'grey'],
  ['#696969', 'dark grey'],
  ['#8b4513', 'brown'],
  ['#ffff00', 'yellow'],
  ['#708090', 'greyish blue'],
])('%s is %s', async (hex, said) => {
  const { words } = await wordsIn(['en-GB']);
  expect(words.beadLooks.colour(colourWordOf(hexToLab65(hex)))).toBe(said);
});

test('every colour has a word', () => {
  for (let L = 0; L <= 100; L += 4)
    for (let a = -80; a <= 80; a += 8)
      for (let b = -80; b <= 80; b += 8)
        expect(colourFamilies).toContain(colourWordOf([L, a, b]).family);
});

test('a finish is known by a word in its name, and kept as it is when it is not', () => {
  const of = (finish: string | undefined) => beadLookOf({ hex: '#1a2950', finish });
  expect(of('Matte transparent')).toMatchObject({ finish: 'matt', family: 'blue', tone: 'dark' });
  expect(of('silver lined').finish).toBe('silver-lined');
  expect(of('galvanised').finish).toBe('metallic');
  expect(of('AB').finish).toBe('rainbow');
  expect(of('hex cut')).toMatchObject({ ownFinish: 'hex cut' });
  expect(of(undefined)).toEqual({ family: 'blue', tone: 'dark' });
});

describe.each(languages)('in %s', async (language) => {
  const { words } = await wordsIn([language]);
  const { beadLooks: say } = words;

  test('every colour and finish has a word of its own', () => {
    const colours = colourFamilies.flatMap((family) => [
      say.colour({ family }),
      ...colourTones.map((tone) => say.colour({ family, tone })),
    ]);
    expect(new Set(colours).size).toBe(colours.length);
    const finishes = finishKinds.map((finish) => say.look({ family: 'blue', finish }));
    expect(new Set(finishes).size).toBe(finishes.length);
    for (const one of [...colours, ...finishes]) expect(one).toMatch(/^\S.*\S$|^\S$/u);
  });

  test('what a bead looks like holds its colour', () => {
    const look = { family: 'blue', tone: 'dark', finish: 'matt' } as const;
    expect(say.look(look)).toContain(say.colour(look));
    expect(say.look({ family: 'red', ownFinish: 'hex cut' })).toContain('hex cut');
  });
});
