/**
 * The line, from 1, on which each entry begins of the list that a valid JSON text is or holds as
 * `beads` (or `colors`, `colours`) in its outer record: JSON.parse does not tell.
 */
export function linesOfEntries(text: string): number[] {
  const lines: number[] = [];
  let line = 1;
  let depth = 0;
  let listDepth = 0;
  let key = '';
  let awaiting = false;
  const outerIsList = text.trimStart().startsWith('[');
  for (let at = 0; at < text.length; at++) {
    const mark = text[at];
    if (mark === '\n') line++;
    if (/\s/.test(mark)) continue;
    if (awaiting && mark !== ']') {
      lines.push(line);
      awaiting = false;
    }
    if (mark === '"') {
      const end = closingQuote(text, at);
      if (depth === 1) key = text.slice(at + 1, end);
      at = end;
    } else if (mark === '[' || mark === '{') {
      depth++;
      const ours = outerIsList ? depth === 1 : depth === 2 && /^(beads|colou?rs)$/.test(key);
      if (mark === '[' && ours && listDepth === 0) {
        listDepth = depth;
        awaiting = true;
      }
    } else if (mark === ']' || mark === '}') {
      if (depth === listDepth) return lines;
      depth--;
    } else if (mark === ',' && depth === listDepth) {
      awaiting = true;
    }
  }
  return lines;
}

function closingQuote(text: string, open: number): number {
  let at = open + 1;
  while (at < text.length && text[at] !== '"') at += text[at] === '\\' ? 2 : 1;
  return at;
}
