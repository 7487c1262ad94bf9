import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { RondureError } from '../src/core/errors.js';
import { decodePalette } from '../src/core/beads/palette/decode.js';
import { readPalette, surveyPalette } from '../src/core/beads/palette/read-palette.js';

const read = (text: string) => readPalette(text, 'beads');
const refusal = (text: string): RondureError => {
  try {
    read(text);
  } catch (error) {
    return error as RondureError;
  }
  throw new Error('it was read');
};
const two = [
  { name: 'sand', hex: '#d9b36a' },
  { name: 'sea', hex: '#123456' },
];
const utf16 = (text: string, little: boolean) => {
  const bytes = Buffer.from(`\uFEFF${text}`, 'utf16le');
  return little ? bytes : bytes.swap16();
};

describe('the bytes of a palette', () => {
  const text = 'name;hex\nmüßig 珊瑚;#d9b36a\n';
  it.each([
    ['UTF-8', Buffer.from(text)],
    ['UTF-8 with a mark', Buffer.from(`\uFEFF${text}`)],
    ['UTF-16, little end first', utf16(text, true)],
    ['UTF-16, big end first', utf16(text, false)],
  ])('are read as %s', (_, bytes) => {
    expect(read(decodePalette(bytes)).beads[0].name).toBe('müßig 珊瑚');
  });

  it('are read as Windows-1252 where they are no UTF-8', () => {
    // ü is FC and the euro sign 80 in the code page (WHATWG Encoding, index-windows-1252).
    const bytes = Uint8Array.from([
      ...Buffer.from('name,hex\ngr'),
      0xfc,
      ...Buffer.from('n '),
      0x80,
    ]);
    const all = Buffer.concat([bytes, Buffer.from(',#00ff00')]);
    expect(read(decodePalette(all)).beads[0].name).toBe('grün €');
  });
});

describe('a CSV without names that we know', () => {
  it('is read by where the colours stand, and a bad row is named', () => {
    const { beads, problems } = surveyPalette(
      'a1;sand;#d9b36a\na2;sea;blau\na3;sky;#88bbee',
      'beads',
    );
    expect(beads.map(({ id }) => id)).toEqual(['a1', 'a3']);
    expect(problems.map(({ code, facts }) => [code, facts.line])).toEqual([['palette-bad-row', 2]]);
  });

  it('may have names in another language', () => {
    const { beads, notes } = read('Nr;Farbe;Name\n7;#d9b36a;Sand\n8;#123456;See');
    expect(beads).toMatchObject([
      { id: '7', name: 'Sand' },
      { id: '8', name: 'See', hex: '#123456' },
    ]);
    expect(notes).toEqual([]);
  });
});

describe('a JSON palette', () => {
  it.each([
    ['a list', JSON.stringify(two)],
    ['a record with a list', JSON.stringify({ title: 'mine', beads: two })],
    [
      'other spellings',
      '\uFEFF [{"Name":"sand","Colour":"D9B36A"},{"name":"sea","color":"#123456"}]',
    ],
  ])('is read from %s', (_, text) => expect(read(text).beads).toMatchObject(two));

  it('may be colours alone, or Lab as a list, with numbers as numbers or as text', () => {
    expect(read('["#d9b36a", "123456"]').beads.map(({ hex }) => hex)).toEqual([
      '#d9b36a',
      '#123456',
    ]);
    const [bead] = read('[{"lab":[53.24,80.09,67.2],"diameterMm":"2,15","grams":20,"id":7}]').beads;
    expect(bead).toMatchObject({ lab: [53.24, 80.09, 67.2], diameterMm: 2.15, grams: 20, id: '7' });
    expect(bead.filled).toEqual(['name', 'size', 'beadsPerGram']);
  });

  it('names the line of each bead that cannot be used', () => {
    const text =
      '{ "note": "[x, {",\n "beads": [\n  {"hex": "#123456"},\n  {"hex": "blau"}, 7,\n  {"hex": "#123456", "name": ["x"]},\n  {\n   "hex": "#111", "price": -1}\n]}';
    const { beads, problems } = surveyPalette(text, 'beads');
    expect(beads).toHaveLength(1);
    expect(problems.map(({ facts }) => facts.line)).toEqual([4, 4, 5, 6]);
  });
});

describe('a GIMP palette', () => {
  // As the GIMP writes it.
  const text =
    'GIMP Palette\nName: Sea\nColumns: 2\n#\n217 179 106\tsand\n 18  52  86\tsea wall 2\n  0   0   0\tUntitled\n';
  it('is read with its names', () => {
    const { beads, size } = read(text);
    expect(size).toBe('11/0');
    expect(beads.map(({ name, hex }) => [name, hex])).toEqual([
      ['sand', '#d9b36a'],
      ['sea wall 2', '#123456'],
      ['#000000', '#000000'],
    ]);
    expect(beads[2].filled).toContain('name');
  });

  it('names its bad lines', () => {
    const { problems } = surveyPalette(`${text}1 2\tshort\n300 0 0 red\n`, 'beads');
    expect(problems.map(({ facts }) => [facts.line, (facts as { got: string }).got])).toEqual([
      [8, '1 2short'],
      [9, '300 0 0 red'],
    ]);
    expect(refusal('GIMP Palette\nName: none\n').code).toBe('palette-empty');
  });
});

it('a palette cut at every place is read or refused in a sentence', () => {
  for (const text of [
    JSON.stringify({ beads: two }),
    'GIMP Palette\n1 2 3\tsea\n9 9 9',
    'id;hex\n"1;2";#123456\n',
  ]) {
    for (let end = 0; end <= text.length; end++) {
      try {
        expect(read(text.slice(0, end)).beads.length).toBeGreaterThan(0);
      } catch (error) {
        expect(error).toBeInstanceOf(RondureError);
      }
    }
  }
});

it('any JSON is read or refused in a sentence', () => {
  fc.assert(
    fc.property(fc.jsonValue(), fc.jsonValue(), (one, other) => {
      try {
        read(JSON.stringify([{ hex: '#123456', name: one, size: other }, other]));
      } catch (error) {
        expect(error).toBeInstanceOf(RondureError);
      }
    }),
    { numRuns: 500 },
  );
});

describe('what spreadsheets and shops write', () => {
  const seen = (text: string) => {
    const { beads, problems } = surveyPalette(text, 'beads');
    return [
      beads.map(({ name, hex }) => `${name} ${hex}`),
      problems.map(({ facts }) => facts.line),
    ];
  };
  const both = [['sand #d9b36a', 'sea #123456'], []];
  it.each([
    ['a line that names the separator', 'sep=;\r\nname;hex\r\nsand;#d9b36a\r\nsea;#123456'],
    ['a title above', 'Beads of the harbour shop\n\nname,hex\nsand,#d9b36a\nsea,#123456'],
    ['red, green and blue apart', 'name,R,G,B\nsand,217,179,106\nsea,18,52,86'],
    ['the same in words', 'Red;Green;Blue;Name\n217;179;106;sand\n18;52;86;sea'],
    ['rgb() and 0x', 'name;colour code\nsand;rgb(217, 179, 106)\nsea;0x123456'],
    ['opaque eight digits', 'name,hex\nsand,#d9b36aff\nsea,#123456FF'],
    ['rgb lists in JSON', '[{"name":"sand","rgb":[217,179,106]},{"name":"sea","hex":"#123456"}]'],
  ])('is read: %s', (_, text) => {
    expect(seen(text)).toEqual(both);
  });

  it('may carry units and currencies', () => {
    const { beads } = read(
      'name;hex;grams;price;diameter\na;#d9b36a;20 g;1,90 €;2,1 mm\nb;#123456;7.5g;£2;2.2mm',
    );
    expect(beads.map(({ grams, price, diameterMm }) => [grams, price, diameterMm])).toEqual([
      [20, 1.9, 2.1],
      [7.5, 2, 2.2],
    ]);
    const { beads: more } = read('name,hex,price\na,#d9b36a,$1.90\nb,#123456,"1,90 EUR"\n');
    expect(more.map(({ price }) => price)).toEqual([1.9, 1.9]);
    expect(refusal('name,hex,grams\na,#d9b36a,"1,200"').facts).toMatchObject({ got: '1,200' });
    expect(refusal('name,hex,price\na,#d9b36a,$').facts).toMatchObject({ got: '$' });
  });

  it('keeps the lines of faults right under a title, and red above 255 is one', () => {
    expect(seen('My beads\n\nname,R,G,B\nsand,217,179,106\nsea,300,1,2')).toEqual([
      ['sand #d9b36a'],
      [5],
    ]);
  });

  it.each([
    ['PK\u0003\u0004…', 'spreadsheet'],
    ['%PDF-1.7', 'pdf'],
    ['<!DOCTYPE html><table>', 'page'],
    ['{\\rtf1 name,hex}', 'richText'],
  ])('is told from what is no plain text: %s', (text, kind) => {
    expect(refusal(text)).toMatchObject({ code: 'palette-not-text', facts: { kind } });
  });

  it('a chart names the first fault and how many more there are', () => {
    const { message } = refusal('hex\n#12\n#d9b36a\nblau\n');
    expect(message).toMatch(
      /^Line 2 of beads: .* One more cell cannot be used: rondure beads beads lists/,
    );
    expect(refusal('hex\n#12\n#d9b36a\n').message).not.toMatch(/more/);
  });
});

describe('a column of jars', () => {
  const ids = (text: string) => {
    const { beads, notes } = readPalette(text, 'x.csv');
    return { ids: beads.map(({ id }) => id), notes: notes.map(({ code }) => code) };
  };
  it.each(['Jar', 'Box', 'No.', 'Tube', 'Number'])(
    '%s is the id where it tells beads apart',
    (jar) => {
      const text = `${jar},Name,Colour\n7,wheat,wheat\n9,night,navy\n`;
      expect(ids(text)).toEqual({ ids: ['7', '9'], notes: [] });
    },
  );
  it.each(['Jar', 'Box', 'No.', 'Tube', 'Number'])('%s is none where beads share one', (jar) => {
    const text = `${jar},Name,Colour\n7,wheat,wheat\n7,night,navy\n`;
    expect(ids(text)).toEqual({ ids: ['1', '2'], notes: ['palette-jars-shared'] });
    const open = `${jar},Name,Colour\n7,wheat,wheat\n,night,navy\n`;
    expect(ids(open)).toEqual({ ids: ['1', '2'], notes: ['palette-jars-shared'] });
  });
  it('beside an id it is not used, and without names it is looked at as well', () => {
    const both = 'Box,Code,Colour\n7,op-1,wheat\n7,op-2,navy\n';
    expect(ids(both)).toEqual({ ids: ['op-1', 'op-2'], notes: ['palette-columns-ignored'] });
    const bare = 'Box 1,wheat,#f5deb3\nBox 1,night,#101030\n';
    expect(ids(bare)).toEqual({ ids: ['1', '2'], notes: ['palette-jars-shared'] });
    expect(readPalette(bare, 'x.csv').beads.map(({ name }) => name)).toEqual(['wheat', 'night']);
    expect(() => ids('id,Colour\n7,wheat\n7,navy\n')).toThrow(/7/);
  });
});

// W3C, CSS Color Module Level 4, "Named Colors" (a few, typed from memory; culori is what is used).
it.each([
  ['white', '#ffffff'],
  ['Navy', '#000080'],
  ['wheat', '#f5deb3'],
  ['rebecca purple', '#663399'],
  ['dark slate grey', '#2f4f4f'],
])('the colour name %s is %s', (name, hex) => {
  expect(readPalette(`name,colour\na,${name}\n`, 'x.csv').beads[0].hex).toBe(hex);
});
