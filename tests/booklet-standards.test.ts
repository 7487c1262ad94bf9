import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { patternText } from '../src/core/pattern/serialise.js';
import { panelSheet } from './support/panel-sheet.js';
import { tool } from './support/poppler.js';
import { inProcess } from './support/run.js';

// ISO 14289-1:2014 (PDF/UA-1) and ISO 19005-2:2011 (PDF/A-2), clauses from memory; read by qpdf,
// which shares no code with the writer.
const folder = mkdtempSync(join(tmpdir(), 'rondure-standards-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

type Value = string | number | boolean | null | Value[] | { [key: string]: Value };
type Dictionary = Record<string, Value>;
let objects: Map<string, { value?: Value; stream?: { dict: Dictionary } }>;
let raw: string;
let metadata: string;

const dictionaryOf = (name: string): Dictionary => {
  const one = objects.get(name)!;
  return (one.stream?.dict ?? one.value) as Dictionary;
};
const resolved = (value: Value | undefined): Value | undefined =>
  typeof value === 'string' && objects.has(`obj:${value}`)
    ? ((objects.get(`obj:${value}`)!.stream?.dict ?? objects.get(`obj:${value}`)!.value) as Value)
    : value;
const all = (type: string, key = '/Type'): Dictionary[] =>
  [...objects.keys()].map(dictionaryOf).filter((one) => one?.[key] === type);
const root = () => dictionaryOf(`obj:${String(dictionaryOf('trailer')['/Root'])}`);

const { pattern } = panelSheet({ wedges: 6, rounds: 6 }, 3, { title: 'Fish & <chips>' });
const from = join(folder, 'pattern.json');
writeFileSync(from, patternText(pattern));

describe.each([
  { command: 'booklet', language: 'en-GB', figures: 3, faces: 3, tables: 8 },
  { command: 'lining', language: 'uk', figures: 4, faces: 2, tables: 0 },
  { command: 'lining', language: 'ja', figures: 4, faces: 2, tables: 0 },
  { command: 'swatch', language: 'de', figures: 4, faces: 2, tables: 0 },
  { command: 'swatch', language: 'ja', figures: 4, faces: 2, tables: 0 },
])('$command in $language', ({ command, language, figures: least, faces, tables }) => {
  beforeAll(async () => {
    const file = join(folder, `${command}-${language}.pdf`);
    const what = command === 'swatch' ? '--guide' : from;
    const argv = [command, what, '--language', language, '-o', file];
    expect(await inProcess(...argv)).toMatchObject({ code: 0, err: '' });
    const said = JSON.parse(tool('qpdf', ['--json=2', file]).toString()) as {
      qpdf: [unknown, Record<string, { value?: Value; stream?: { dict: Dictionary } }>];
    };
    objects = new Map(Object.entries(said.qpdf[1]));
    raw = tool('qpdf', ['--qdf', '--object-streams=disable', file, '-']).toString('latin1');
    metadata = Buffer.from(/<x:xmpmeta[^]*<\/x:xmpmeta>/.exec(raw)![0], 'latin1').toString('utf8');
  }, 600_000);

  test('it names both standards in its metadata (14289-1, 5; 19005-2, 6.6.4)', () => {
    expect(metadata).toMatch(/<pdfuaid:part>1<\/pdfuaid:part>/);
    expect(metadata).toMatch(/<pdfaid:part>2<\/pdfaid:part>/);
    expect(metadata).toMatch(/<pdfaid:conformance>A<\/pdfaid:conformance>/);
    // A name that PDF/A does not know is described (19005-2, 6.6.2.3.3).
    expect(metadata).toContain('<pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>');
  });

  test('the metadata are a plain stream with the title, shown in the window (14289-1, 7.1; 19005-2, 6.6.2.1)', () => {
    const stream = resolved(root()['/Metadata']) as Dictionary;
    expect(stream['/Type']).toBe('/Metadata');
    expect(stream['/Filter']).toBeUndefined();
    const titles: Record<string, string> = {
      'swatch de': '>Die eigene Masche messen',
      'swatch ja': '>自分の目を測る',
    };
    const title = titles[`${command} ${language}`] ?? 'Fish &amp; &lt;chips&gt;';
    expect(metadata).toContain(`${title}</rdf:li>`);
    const viewer = resolved(root()['/ViewerPreferences']) as Dictionary;
    expect(viewer['/DisplayDocTitle']).toBe(true);
  });

  test('it is tagged, marks nothing as suspect, and says its language (14289-1, 7.1 and 7.2)', () => {
    const marked = resolved(root()['/MarkInfo']) as Dictionary;
    expect(marked['/Marked']).toBe(true);
    expect(marked['/Suspects'] ?? false).toBe(false);
    expect(root()['/StructTreeRoot']).toBeDefined();
    expect(String(root()['/Lang'])).toMatch(new RegExp(`${language}$`));
  });

  test('figures have words in their place (14289-1, 7.3) and heads of tables a scope (7.5)', () => {
    const figures = all('/Figure', '/S');
    expect(figures.length).toBeGreaterThanOrEqual(least);
    const alts = figures.map((figure) => String(resolved(figure['/Alt'])));
    for (const alt of alts) expect(alt).toMatch(/^[ub]:.{11,}/);
    const heads = all('/TH', '/S');
    expect(heads.length).toBeGreaterThanOrEqual(tables);
    for (const head of heads) expect(JSON.stringify(head)).toMatch(/Scope|\/A/);
  });

  test('only standard kinds of parts are used, so no role map is needed (14289-1, 7.1)', () => {
    const kinds = new Set(
      [...objects.keys()]
        .map(dictionaryOf)
        .filter((one) => typeof one?.['/S'] === 'string' && one['/P'] !== undefined)
        .map((one) => String(one['/S'])),
    );
    // ISO 32000-1, 14.8.4.
    const standard =
      '/Document /Sect /H1 /H2 /P /Span /Table /TR /TH /TD /L /LI /Lbl /LBody /Figure';
    for (const kind of kinds) expect(standard.split(' ')).toContain(kind);
  });

  test('every font is embedded and says which letters it draws (14289-1, 7.21.4.1 and 7.21.7)', () => {
    const descriptors = all('/FontDescriptor');
    expect(descriptors.length).toBeGreaterThanOrEqual(faces);
    for (const one of descriptors) expect(one['/FontFile2'] ?? one['/FontFile3']).toBeDefined();
    const fonts = all('/Type0', '/Subtype');
    expect(fonts.length).toBe(descriptors.length);
    for (const font of fonts) expect(font['/ToUnicode']).toBeDefined();
  });

  test('colours mean sRGB: one output intent with a profile (19005-2, 6.2.3)', () => {
    const [intent, ...more] = (root()['/OutputIntents'] as Value[]).map(resolved) as Dictionary[];
    expect(more).toEqual([]);
    expect(intent['/S']).toBe('/GTS_PDFA1');
    const profile = resolved(intent['/DestOutputProfile']) as Dictionary;
    expect(profile['/N']).toBe(3);
  });

  test('nothing is encrypted, scripted or layered; the file has an identity (19005-2, 6.1.3, 6.5.1, 6.9)', () => {
    const trailer = dictionaryOf('trailer');
    expect(trailer['/Encrypt']).toBeUndefined();
    expect(trailer['/ID']).toHaveLength(2);
    expect(raw).not.toMatch(/\/JavaScript|\/OCProperties|\/Launch|\/LZWDecode/);
  });
});
