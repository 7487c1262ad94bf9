/**
 * Texts in two languages: each word of a catalogue holds both, between marks that no text can
 * hold, wherever the two differ. So sentences may be put together as ever, and be read in either
 * language afterwards. The marks are noncharacters, meant for use inside a program (Unicode, 23.7).
 */
const [opens, parts, closes] = ['\ufdd0', '\ufdd1', '\ufdd2'];

/** A text without the marks, should a file hold them. */
export function plain(text: string): string {
  return text.replace(/[\ufdd0-\ufdd2]/g, '');
}

/** Which of two languages. */
export type Side = 0 | 1;

/** Whether a text differs between its two languages. */
export function isPaired(text: string): boolean {
  return text.includes(opens);
}

/** A text as one of its two languages has it. */
export function onSide(text: string, side: Side): string {
  if (!isPaired(text)) return text;
  let out = '';
  // One entry a pair that is open: which side of it is being read.
  const open: Side[] = [];
  for (const character of text) {
    if (character === opens) open.push(0);
    else if (character === parts) open[open.length - 1] = 1;
    else if (character === closes) open.pop();
    else if (open.every((one) => one === side)) out += character;
  }
  return out;
}

/** Both languages of a text, or the one where they agree. */
export function sides(text: string): readonly string[] {
  return isPaired(text) ? [onSide(text, 0), onSide(text, 1)] : [text];
}

/** Both languages on one line. */
export function flat(text: string): string {
  return isPaired(text) ? sides(text).join(' / ') : text;
}

/**
 * Two catalogues as one that says everything in both languages. Texts among the facts that a
 * function is given may be in both as well.
 */
export function paired<T>(first: T, second: T): T {
  return pair(first, second) as T;
}

function pair(first: unknown, second: unknown): unknown {
  if (typeof first === 'string') {
    return first === second ? first : `${opens}${first}${parts}${String(second)}${closes}`;
  }
  if (typeof first === 'function') {
    const [one, other] = [first, second] as ((...facts: unknown[]) => unknown)[];
    return (...facts: unknown[]) =>
      pair(one(...(on(facts, 0) as unknown[])), other(...(on(facts, 1) as unknown[])));
  }
  if (Array.isArray(first)) {
    return first.map((item, n) => pair(item, (second as unknown[])[n]));
  }
  if (typeof first === 'object' && first !== null) {
    const other = second as Record<string, unknown>;
    return Object.fromEntries(
      Object.entries(first).map(([key, value]) => [key, pair(value, other[key])]),
    );
  }
  return first;
}

/** Facts as a function of one language takes them. */
function on(facts: unknown, side: Side): unknown {
  if (typeof facts === 'string') return onSide(facts, side);
  if (Array.isArray(facts)) return facts.map((fact) => on(fact, side));
  if (typeof facts === 'object' && facts !== null) {
    return Object.fromEntries(Object.entries(facts).map(([key, fact]) => [key, on(fact, side)]));
  }
  return facts;
}
