/*
 * Two sets of files that differ in every file and in their names. As a program of its own, with the
 * number of a set and a folder: writes that set there with `force`; with a folder alone: writes one
 * and the other in turn until it is stopped, and says so on standard output before the first.
 */
import { writeFolder } from '../../dist/node/output/output-folder.js';

const pattern = (title) => JSON.stringify({ format: 'rondure-pattern', version: 1, title });

export const twoSets = [
  new Map([
    ['pattern.json', pattern('the first')],
    ['chart.png', new Uint8Array(600_000).fill(1)],
    ['rounds.txt', 'R1 (7 stitches): 7A\n'],
    ['worked.png', new Uint8Array(40_000).fill(3)],
  ]),
  new Map([
    ['pattern.json', pattern('the second')],
    ['chart.png', new Uint8Array(700_000).fill(2)],
    ['chart.svg', '<svg/>'.repeat(2000)],
    ['materials.csv', 'letter,name\nA,red\n'],
    ['rounds.txt', 'R1 (6 stitches): 6B\n'],
  ]),
];

if (process.argv[1]?.endsWith('two-sets.js')) {
  const [first, folder] = process.argv.slice(2);
  if (folder !== undefined) await writeFolder(folder, twoSets[Number(first)], { force: true });
  else {
    process.stdout.write('.');
    for (let n = 0; ; n++) await writeFolder(first, twoSets[n % 2], { force: true });
  }
}
