import type { Bead } from '../../core/beads/bead.js';
import { errorSentence, warningSentence } from '../../core/errors.js';
import { beadsInStock } from '../../core/beads/amounts.js';
import { nearPairs, sameColours, sameNames } from '../../core/beads/palette/alike.js';
import type { PaletteSurvey } from '../../core/beads/palette/read-palette.js';
import type { Words } from '../../words/index.js';

/** What `beads` tells. */
export interface BeadsResult extends Omit<PaletteSurvey, 'format'> {
  where: string;
  format: PaletteSurvey['format'] | 'photo';
  folder: string | undefined;
  files: string[];
}

/** Version of the object printed by `beads --json`. */
export const beadsSchema = 1;
/** Lines of a list before `--json` has to be asked for the rest. */
const mostLines = 20;
const wideName = 40;

/** The palette as one JSON object with stable keys. */
export function beadsJson(result: BeadsResult, words: Words): string {
  const { beads } = result;
  const ids = (places: readonly number[]) => places.map((place) => beads[place].id);
  const object = {
    schema: 'rondure-beads',
    version: beadsSchema,
    source: result.where,
    format: result.format,
    folder: result.folder ?? null,
    files: result.files,
    beads,
    sameColour: sameColours(beads).map(ids),
    sameName: sameNames(beads).map(ids),
    near: nearPairs(beads).map(({ pair, difference }) => ({
      ids: ids(pair),
      ciede2000: Number(difference.toFixed(4)),
    })),
    problems: result.problems.map((one) => ({
      code: one.code,
      line: one.facts.line,
      message: errorSentence(words, one),
      facts: one.facts,
    })),
    warnings: result.notes.map((one) => ({ ...one, message: warningSentence(words, one) })),
  };
  return `${JSON.stringify(object, null, 2)}\n`;
}

/** The palette for a person: a table, what was filled in, and what to look at. */
export function beadsText(result: BeadsResult, words: Words): string {
  const said = words.beads;
  const { beads, where } = result;
  const format = said.formats[result.format];
  const lines = [said.heading({ where, count: beads.length, format })];
  if (beads.length > 0) lines.push(...table(beads, words));
  const filled = filledLines(beads, words);
  if (filled.length > 0) lines.push('', said.filledHead, ...filled);
  const name = (place: number) => said.bead(beads[place]);
  const group = (places: readonly number[]) => `  ${places.map(name).join(said.and)}`;
  const list = (head: string, all: readonly string[]) => {
    if (all.length === 0) return;
    lines.push('', head, ...all.slice(0, mostLines));
    if (all.length > mostLines) lines.push(`  ${said.more(all.length - mostLines)}`);
  };
  list(said.sameColourHead, sameColours(beads).map(group));
  list(said.sameNameHead, sameNames(beads).map(group));
  const near = nearPairs(beads).map(({ pair: [one, other], difference }) => {
    const facts = { one: name(one), other: name(other), difference: difference.toFixed(1) };
    return `  ${said.near(facts)}`;
  });
  list(said.nearHead({ count: near.length }), near);
  for (const note of result.notes) lines.push('', `${said.note} ${warningSentence(words, note)}`);
  const { folder, files } = result;
  if (folder !== undefined) lines.push('', said.written({ folder, files }));
  return `${lines.join('\n')}\n`;
}

function table(beads: readonly Bead[], words: Words): string[] {
  const rows = beads.map((bead) => [
    shortened(bead.id),
    shortened(bead.name),
    bead.hex,
    bead.finish ?? '',
    bead.size ?? '',
    inStock(bead, words),
  ]);
  const all = [[...words.beads.tableHead], ...rows];
  const wide = all[0].map((_, column) =>
    all.reduce((most, row) => Math.max(most, row[column].length), 0),
  );
  const used = (column: number) => rows.some((row) => row[column] !== '');
  return all.map((row) => {
    const cells = row.map((cell, column) => (used(column) ? `  ${cell.padEnd(wide[column])}` : ''));
    return cells.join('').trimEnd();
  });
}

/** The count where it is given, else what the grams are in beads. */
function inStock(bead: Bead, words: Words): string {
  const { count, grams } = bead;
  if (count !== undefined) return words.beads.count(count);
  return grams === undefined ? '' : words.beads.grams({ grams, beads: beadsInStock(bead) });
}

function shortened(text: string): string {
  const all = Array.from(text);
  return all.length > wideName ? `${all.slice(0, wideName - 1).join('')}…` : text;
}

/** A line for each column that was filled in, with the values taken from the table of sizes. */
function filledLines(beads: readonly Bead[], words: Words): string[] {
  const said = words.beads;
  const lines: string[] = [];
  for (const column of ['id', 'name', 'size', 'diameterMm', 'beadsPerGram'] as const) {
    const open = beads.filter((bead) => bead.filled.includes(column));
    if (open.length === 0) continue;
    const values =
      column === 'id'
        ? [said.fromRow]
        : column === 'name'
          ? [said.fromColour]
          : [...new Set(open.map((bead) => said.value({ column, value: bead[column] ?? '' })))];
    const all = open.length === beads.length;
    lines.push(`  ${said.filled({ column, count: open.length, all, values })}`);
  }
  return lines;
}
