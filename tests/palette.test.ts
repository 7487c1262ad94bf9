import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { RondureError, warningSentence } from '../src/core/errors.js';
import { readPalette } from '../src/core/beads/palette/read-palette.js';
import { beadSizes, parseSize, sizeOf } from '../src/core/beads/palette/sizes.js';
import { en } from '../src/words/index.js';

const read = (text: string, size?: string) =>
  readPalette(text, 'beads.csv', size === undefined ? {} : { size });

function refusal(text: string, size?: string): RondureError {
  try {
    read(text, size);
  } catch (error) {
    if (error instanceof RondureError) return error;
    throw error;
  }
  throw new Error('it was read');
}

describe('bead sizes', () => {
  it('are the trade’s', () => {
    // Common practice, no source: outer diameter in mm and beads per gram, middle figures.
    expect(beadSizes.map((s) => [s.name, s.diameterMm, s.lengthMm, s.beadsPerGram])).toEqual([
      ['15/0', 1.5, 1.1, 275],
      ['13/0', 1.7, 1.15, 235],
      ['11/0', 2.1, 1.5, 110],
      ['11/0 cylinder', 1.65, 1.3, 195],
      ['10/0', 2.25, 1.65, 85],
      ['8/0', 3.05, 2.1, 36],
      ['6/0', 4.0, 2.9, 14],
    ]);
    for (const size of beadSizes) {
      for (const [middle, [low, high]] of [
        [size.diameterMm, size.diameterRangeMm],
        [size.lengthMm, size.lengthRangeMm],
        [size.holeMm, size.holeRangeMm],
        [size.beadsPerGram, size.beadsPerGramRange],
      ] as const) {
        expect(middle).toBeGreaterThanOrEqual(low);
        expect(middle).toBeLessThanOrEqual(high);
      }
    }
  });

  it.each([
    // Glass of 2.5 g/cm³; a rounded bead fills 0.8 of its tube, a cylinder 0.95.
    ['13/0', 0.8],
    ['11/0', 0.8],
    ['11/0 cylinder', 0.95],
    ['10/0', 0.8],
    ['8/0', 0.8],
  ])('weigh what glass weighs: %s to 10 %%', (name, filled) => {
    const { diameterMm: d, holeMm, lengthMm, beadsPerGram } = sizeOf(name);
    const volume = (Math.PI / 4) * (d ** 2 - holeMm ** 2) * lengthMm * filled;
    expect(1000 / (2.5 * volume) / beadsPerGram).toBeGreaterThan(0.9);
    expect(1000 / (2.5 * volume) / beadsPerGram).toBeLessThan(1.1);
  });

  it('string to lengths that 17 and 23 beads an inch give', () => {
    // Common practice, no source: 17 beads of 11/0 and 23 of 15/0 to the inch.
    expect(sizeOf('11/0').lengthMm * 17).toBeCloseTo(25.4, 0);
    expect(sizeOf('15/0').lengthMm * 23).toBeCloseTo(25.4, 0);
  });

  it.each([
    ['11/0', '11/0'],
    ['11', '11/0'],
    ['11o', '11/0'],
    ['11°', '11/0'],
    [' 11-0 ', '11/0'],
    ['Size 8/0', '8/0'],
    ['11/0 round', '11/0'],
    ['11/0 Cylinder', '11/0 cylinder'],
    ['11 cyl.', '11/0 cylinder'],
    ['15O', '15/0'],
  ])('are read: %j is %s', (text, size) => expect(parseSize(text)).toBe(size));

  it.each(['', '12/0', '2.1mm', '11/0 square', '-11', '8/0 cylinder', '11/00'])(
    'refuse %j',
    (text) => expect(() => parseSize(text)).toThrow(/11\/0 cylinder/),
  );
});

describe('a palette', () => {
  it('needs only a colour; the rest is filled from the table and told', () => {
    const { beads, size, diameterMm, notes } = read('hex\n#D9B36A\n08f\n');
    expect({ size, diameterMm, notes }).toEqual({ size: '11/0', diameterMm: 2.1, notes: [] });
    expect(beads).toMatchObject([
      {
        id: '1',
        name: '#d9b36a',
        hex: '#d9b36a',
        size: '11/0',
        diameterMm: 2.1,
        beadsPerGram: 110,
      },
      { id: '2', hex: '#0088ff' },
    ]);
    expect(beads[0].filled).toEqual(['id', 'name', 'size', 'diameterMm', 'beadsPerGram']);
    expect(Object.keys(beads[0])).not.toContain('grams');
  });

  it('gives every column', () => {
    const { beads } = read(
      'id,name,hex,finish,size,diameterMm,beadsPerGram,grams,count,price,packGrams\n' +
        'op-07,barley,#d9b36a,opaque,11/0,2.15,112,20,2100,1.9,10\n',
    );
    expect(beads[0]).toEqual({
      id: 'op-07',
      name: 'barley',
      hex: '#d9b36a',
      lab: beads[0].lab,
      finish: 'opaque',
      size: '11/0',
      diameterMm: 2.15,
      beadsPerGram: 112,
      grams: 20,
      count: 2100,
      price: 1.9,
      packGrams: 10,
      filled: [],
    });
  });

  it.each([
    ['semicolons and decimal commas', 'name;colour;diameter\nsand;#d9b36a;2,15\nsea;#123456;2,05'],
    ['tabs', 'name\tcolor\tDiameter mm\nsand\t#d9b36a\t2.15\nsea\t123456\t2,05'],
    [
      'a byte order mark and CRLF',
      '\uFEFFNAME, Hex ,Diameter (mm)\r\nsand,#D9B36A,2.15\r\nsea,#123456,2.05\r\n',
    ],
    ['old line ends', 'name,hex,diameterMm\rsand,#d9b36a,2.15\rsea,#123456,2.05'],
    [
      'quotes, blank lines and spaces',
      '\n"name","hex","diameterMm"\n\n "sand"," #d9b36a ",2.15\n,,\nsea,#123456,2.05\n',
    ],
    ['other columns', 'shelf,name,hex,diameterMm\n1,sand,#d9b36a,2.15\n2,sea,#123456,2.05'],
  ])('is read with %s', (_, text) => {
    const { beads, diameterMm } = read(text.replace(' "sand"', '"sand"'));
    expect(beads.map(({ hex }) => hex)).toEqual(['#d9b36a', '#123456']);
    expect(beads.map(({ name }) => name)).toEqual(['sand', 'sea']);
    expect(beads.map((bead) => bead.diameterMm)).toEqual([2.15, 2.05]);
    expect(diameterMm).toBe(2.05);
  });

  it('is read without column names where every row has a colour', () => {
    expect(read('#d9b36a\n#123456').beads.map(({ hex }) => hex)).toEqual(['#d9b36a', '#123456']);
    expect(read('#d9b36a;sand\n#123456;sea').beads.map(({ name }) => name)).toEqual([
      'sand',
      'sea',
    ]);
    expect(read('7,sand,d9b36a\n8,sea,123456').beads).toMatchObject([
      { id: '7', name: 'sand', hex: '#d9b36a' },
      { id: '8', name: 'sea', hex: '#123456' },
    ]);
    expect(read('100200,sand,d9b36a\n100201,sea,123456').beads[0].id).toBe('100200');
  });

  it('keeps names with separators, quotes and other scripts', () => {
    const { beads } = read(
      'name,hex\n"sand, ""wet""",#d9b36a\nкорал 珊瑚,#ff7f50\n"two\nlines",#000000',
    );
    expect(beads.map(({ name }) => name)).toEqual(['sand, "wet"', 'корал 珊瑚', 'two lines']);
  });

  it('takes a colour column with names beside one of hex for the names', () => {
    for (const text of ['colour,hex\nsand,#d9b36a', 'hex,colour\n#d9b36a,sand']) {
      const { beads, notes } = read(text);
      expect(beads[0]).toMatchObject({ name: 'sand', hex: '#d9b36a' });
      expect(notes).toEqual([]);
    }
  });

  it('takes measured L, a, b as they are', () => {
    // sRGB red in CIE L*a*b* under D65 is 53.24, 80.09, 67.20 in the usual tables (two decimals).
    const { beads } = read('name;L;a;b\nred;53,24;80,09;67,20');
    expect(beads[0].lab).toEqual([53.24, 80.09, 67.2]);
    const [r, g, b] = [1, 3, 5].map((at) => parseInt(beads[0].hex.slice(at, at + 2), 16));
    expect(r).toBeGreaterThanOrEqual(254);
    expect(Math.max(g, b)).toBeLessThanOrEqual(4);
    const both = read('hex,L,a,b\n#ff0000,50,0,0').beads[0];
    expect(both).toMatchObject({ hex: '#ff0000', lab: [50, 0, 0] });
  });

  it('allows equal colours, and keeps the order of the file', () => {
    expect(read('name,hex\na,#000000\nb,#000000').beads.map(({ name }) => name)).toEqual([
      'a',
      'b',
    ]);
  });

  it('gives ids that nobody has', () => {
    const ids = read('id,hex\n2,#000000\n,#111111\n,#222222').beads.map(({ id }) => id);
    expect(ids).toEqual(['2', 'row-2', '3']);
    expect(new Set(ids).size).toBe(3);
  });
});

describe('sizes in a palette', () => {
  const mixed =
    'name,hex,size\na,#000000,8/0\nb,#111111,11\nc,#222222,11o\nd,#333333,\ne,#444444,15/0';

  it('are the commonest; the others are left out with a word', () => {
    const { beads, size, notes } = read(mixed);
    expect(size).toBe('11/0');
    expect(beads.map(({ name }) => name)).toEqual(['b', 'c', 'd']);
    expect(notes).toHaveLength(1);
    expect(warningSentence(en, notes[0])).toBe(
      '2 beads of the palette (size 8/0, 15/0) left out: the panel is worked in 11/0. Use --size to choose another size.',
    );
  });

  it('are the one asked for; a bead without a size has it too', () => {
    const { beads, size, diameterMm } = read(mixed, '8');
    expect([size, diameterMm]).toEqual(['8/0', 3.05]);
    expect(beads.map(({ name }) => name)).toEqual(['a', 'd']);
    expect(beads[1]).toMatchObject({ size: '8/0', diameterMm: 3.05, beadsPerGram: 36 });
  });

  it('that we do not know need a diameter, and may be asked for by name', () => {
    const own = 'name,hex,size,diameterMm\na,#000000,9/0,2.6\nb,#111111,11/0,';
    expect(read(own, '9/0')).toMatchObject({ size: '9/0', diameterMm: 2.6 });
    expect(read(own, '9/0').beads[0]).toMatchObject({ name: 'a', filled: ['id'] });
    expect(refusal('hex,size\n#000000,9/0').facts).toMatchObject({
      line: 2,
      column: 'size',
      got: '9/0',
    });
  });

  it('that no bead has are refused, and unknown ones too', () => {
    const error = refusal('hex,size\n#000000,8/0', '11/0');
    expect(error).toMatchObject({ code: 'palette-no-bead-of-size', facts: { found: ['8/0'] } });
    expect(refusal('hex\n#000000', 'huge').code).toBe('size-unknown');
  });
});

describe('a bad palette', () => {
  it.each([
    ['nothing', '', 'palette-empty'],
    ['blank lines', '\n \n', 'palette-empty'],
    ['names only', 'id,name,hex\n', 'palette-empty'],
    ['no colours', 'id,name\n1,sand\n', 'palette-no-colour-column'],
    ['HTML', '<!doctype html><title>Beads</title>', 'palette-not-text'],
    ['JSON cut short', '[{"hex": "#123456"', 'palette-not-json'],
    ['JSON without beads', '{"hex": "#123456"}', 'palette-no-beads-in-json'],
    ['bytes', '\u0089PNG\u0000\u0001\u0002', 'palette-no-colour-column'],
    ['half of Lab', 'L,a\n1,2', 'palette-no-colour-column'],
    ['ids twice', 'id,hex\nx,#000000\ny,#111111\nx,#222222', 'palette-id-twice'],
  ])('with %s is refused', (_, text, code) => {
    const error = refusal(text);
    expect(error.code).toBe(code);
    expect(error.message).toContain('beads.csv');
    expect(error.message).not.toMatch(/\p{Cc}/u);
  });

  it.each([
    [3, 'hex', 'herring', 'name,hex\na,#000000\nb,herring'],
    [2, 'hex', '#12345', 'hex\n#12345'],
    // The column is named as the maker named it.
    [2, 'Colour', 'herring', 'Name,Colour\na,herring'],
    [4, 'hex', '', 'name,hex\n\na,#000000\nb,'],
    // A quoted name over two lines must not shift the numbers of the lines below it.
    [4, 'hex', 'x', 'name,hex\n"a\na",#000000\nb,x'],
    [2, 'diameterMm', '-2', 'hex,diameterMm\n#000000,-2'],
    [2, 'diameterMm', '0', 'hex,diameterMm\n#000000,0'],
    [2, 'diameterMm', '2.1in', 'hex,diameterMm\n#000000,2.1in'],
    [2, 'beadsPerGram', '1e3', 'hex,beadsPerGram\n#000000,1e3'],
    [2, 'grams', '-1', 'hex,grams\n#000000,-1'],
    [2, 'price', 'Infinity', 'hex,price\n#000000,Infinity'],
    [2, 'L', '101', 'L,a,b\n101,0,0'],
    [2, 'a', '', 'L,a,b\n50,,0'],
    [2, 'b', '200', 'L;a;b\n50;0;200'],
    [3, 'name', 'ab', 'hex;name\n#000000;x\n#000000;a\u0007b'],
    [2, 'name', 'abc', 'hex;name\n#000000;a\u202Eb\u2066c'],
    [2, 'name', 'n'.repeat(40), `hex;name\n#000000;${'n'.repeat(201)}`],
    [2, 'id', 'n'.repeat(40), `hex;id\n#000000;${'n'.repeat(201)}`],
  ])('names line %i and column %s', (line, column, got, text) => {
    const error = refusal(text);
    expect(error).toMatchObject({ code: 'palette-bad-row', facts: { line, column, got } });
    expect(error.message).toMatch(new RegExp(`^Line ${line} of beads\\.csv: ${column} is `));
  });

  it('names the line of a quotation mark that is never closed', () => {
    const error = refusal('name,hex\na,#000000\n"b,#111111\nc,#222222\n');
    expect(error).toMatchObject({ code: 'palette-bad-row', facts: { line: 3 } });
  });

  it('says which columns it does not use', () => {
    const { notes } = read('shelf,hex,row\n1,#000000,2');
    expect(notes.map((note) => warningSentence(en, note))).toEqual([
      "The palette's columns shelf, row are not used.",
    ]);
  });

  it('never fails in another way, whatever the text', () => {
    const bits = [
      'hex',
      'name',
      'size',
      'L',
      'a',
      'b',
      ',',
      ';',
      '\t',
      '\n',
      '"',
      '#123456',
      '11/0',
      '2,1',
      ' ',
      '=1',
    ];
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...bits), { maxLength: 30 }), (parts) => {
        try {
          const { beads, diameterMm } = read(parts.join(''));
          expect(beads.length).toBeGreaterThan(0);
          expect(diameterMm).toBeGreaterThan(0);
        } catch (error) {
          expect(error).toBeInstanceOf(RondureError);
        }
      }),
      { numRuns: 1500 },
    );
  });

  it('of any beads comes back as it was, through a CSV writer', () => {
    const bead = fc.record({
      name: fc
        .string({ minLength: 1, maxLength: 30 })
        .map((text) => `n${text.replace(/[\p{Cc}\s]/gu, '')}`),
      hex: fc
        .integer({ min: 0, max: 0xffffff })
        .map((all) => `#${all.toString(16).padStart(6, '0')}`),
      grams: fc.integer({ min: 0, max: 5000 }).map((tenths) => tenths / 10),
    });
    fc.assert(
      fc.property(
        fc.array(bead, { minLength: 1 }),
        fc.constantFrom(',', ';', '\t'),
        (rows, delimiter) => {
          const { beads } = read(Papa.unparse(rows, { delimiter }));
          expect(beads.map(({ name, hex, grams }) => ({ name, hex, grams }))).toEqual(rows);
        },
      ),
      { numRuns: 100 },
    );
  });
});

describe('the palettes of ours', () => {
  const folder = new URL('../palettes/', import.meta.url);
  const files = readdirSync(folder).filter((file) => file.endsWith('.csv'));

  it('are three', () => expect(files).toHaveLength(3));

  it.each(files)(
    '%s is read without a note, every bead with a name and an id of its own',
    (file) => {
      const { beads, notes } = readPalette(readFileSync(new URL(file, folder), 'utf8'), file);
      expect(notes).toEqual([]);
      expect(beads.length).toBeGreaterThan(7);
      for (const { filled } of beads) expect(filled).not.toContain('name');
      expect(new Set(beads.map(({ id }) => id)).size).toBe(beads.length);
    },
  );
});
