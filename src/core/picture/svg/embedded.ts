/** Text that stands for other text is looked through this many times; nobody writes more. */
const mostRounds = 6;
/** What may be unpacked of pictures inside, in all, for each letter of the drawing. */
const bodiesPerLetter = 3;

/** Why the pictures inside a drawing cannot be told: they are packed too deep, or too often. */
export class PackedTooDeep extends Error {}

/**
 * The bytes of every `data:` picture (RFC 2397) in the text of an SVG, wherever it stands: in an
 * attribute, a style sheet, an entity or another such text. What the drawing library would decode
 * on the way is decoded first: entities, character references, percent signs, escapes of CSS, and
 * what URLs pass over (WHATWG URL 4.4: tabs and line ends). More may be found than would be drawn.
 *
 * @param entities the drawing's own, by name; their values name no others
 * @throws PackedTooDeep
 */
export function* embedded(
  text: string,
  entities: ReadonlyMap<string, string>,
): Generator<Uint8Array> {
  let budget = bodiesPerLetter * text.length;
  let level = withoutMarks(text);
  for (let round = 0; ; round++) {
    for (const { body, packed } of bodies(level)) {
      budget -= body.length;
      if (budget < 0) throw new PackedTooDeep();
      const bytes = packed ? fromBase64(body) : fromPercent(body);
      if (bytes.length > 0) yield bytes;
    }
    const next = decoded(level, entities);
    if (next === level) return;
    if (round === mostRounds) throw new PackedTooDeep();
    level = next;
  }
}

/** Comments, instructions and the marks of CDATA, between which a text goes on. */
function withoutMarks(text: string): string {
  const parts: string[] = [];
  let from = 0;
  const mark = /<!--|<\?|<!\[CDATA\[|\]\]>/g;
  for (let found = mark.exec(text); found !== null; found = mark.exec(text)) {
    const close = { '<!--': '-->', '<?': '?>' }[found[0]];
    const end = close === undefined ? mark.lastIndex : text.indexOf(close, mark.lastIndex);
    if (end < 0) break;
    parts.push(text.slice(from, found.index));
    from = mark.lastIndex = close === undefined ? end : end + close.length;
  }
  return from === 0 ? text : parts.join('') + text.slice(from);
}

const coded =
  /&#x([0-9a-f]+);|&#([0-9]+);|&([\w.:-]+);|%([0-9a-f]{2})|\\([0-9a-f]{1,6})\s?|\\([^0-9a-f])|[\t\n\f\r]+/gi;

/** The text with each reference and escape put in words once. */
function decoded(text: string, entities: ReadonlyMap<string, string>): string {
  return text.replace(
    coded,
    (whole, hex?: string, number?: string, name?: string, percent?: string, css?: string, escaped?: string) => {
      if (name !== undefined) return entities.get(name) ?? plain.get(name) ?? whole;
      const code = hex ?? percent ?? css;
      if (code !== undefined) return letter(parseInt(code, 16), whole);
      if (number !== undefined) return letter(Number(number), whole);
      return escaped ?? '';
    },
  );
} // prettier-ignore

/** XML 1.0, 4.6. */
const plain = new Map(Object.entries({ amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" }));

/** Only plain letters can be part of what is looked for; bytes behind percent signs stay packed. */
const letter = (point: number, whole: string) =>
  (point >= 0x20 && point < 0x7f) || whole.length > 3
    ? String.fromCharCode(point < 0x7f ? point : 0x20)
    : whole;

interface Body {
  readonly body: string;
  /** In base64; else bytes behind percent signs. */
  readonly packed: boolean;
}

/** What stands behind the first comma of every `data:` in a text (WHATWG Fetch, 6). */
function* bodies(text: string): Generator<Body> {
  const start = /data:/gi;
  const letters = { true: /[\w+/= \t\n\f\r-]*/y, false: /[^"'<>()\s]*/y };
  for (let found = start.exec(text); found !== null; found = start.exec(text)) {
    const comma = text.indexOf(',', start.lastIndex);
    if (comma < 0) return;
    let head = comma;
    while (head > start.lastIndex && /\s/.test(text[head - 1])) head--;
    const packed = /base64$/i.test(text.slice(Math.max(start.lastIndex, head - 6), head));
    const run = letters[`${packed}`];
    run.lastIndex = comma + 1;
    yield { body: run.exec(text)![0], packed };
    // Whatever begins in its head has the same body.
    start.lastIndex = comma + 1;
  }
}

function fromPercent(body: string): Uint8Array {
  const plain = body.replace(/%([0-9a-f]{2})/gi, (_, hex: string) =>
    String.fromCharCode(parseInt(hex, 16)),
  );
  return Uint8Array.from(plain, (one) => one.charCodeAt(0));
}

/** As far as it is base64: what follows the header of a picture does not matter here. */
function fromBase64(body: string): Uint8Array {
  const letters = body.replace(/[\s=]+/g, '');
  try {
    const text = atob(letters.length % 4 === 1 ? letters.slice(0, -1) : letters);
    return Uint8Array.from(text, (one) => one.charCodeAt(0));
  } catch {
    return new Uint8Array(0);
  }
}
