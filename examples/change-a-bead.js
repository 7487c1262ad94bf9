// Reads a pattern, changes beads by hand, checks it and makes every file again.
//
//   node examples/change-a-bead.js kingfisher/pattern.json kingfisher-changed
import { checkPattern, en, patternReport, problemSentence } from 'rondure';
import { patternFiles, readPattern, writeFolder } from 'rondure/node';

const [, , file = 'kingfisher/pattern.json', folder = 'kingfisher-changed'] = process.argv;

// A chart.svg or chart.png of ours is taken as well: they carry the pattern inside.
const pattern = await readPattern(file);

// Round 1 is the first of `rounds`: one letter for each stitch, in working order. Letters go from
// the most used bead to the least used: here the least used bead fills the middle of the panel.
const [panel] = pattern.panels;
const least = pattern.beads[pattern.beads.length - 1].letter;
panel.rounds[0] = least.repeat(panel.rounds[0].length);
pattern.title = `${pattern.title}, changed`;

const problems = checkPattern(pattern);
for (const problem of problems) console.error(problemSentence(en, problem));
if (problems.length > 0) {
  process.exitCode = 3;
} else {
  await writeFolder(folder, await patternFiles(pattern, en), { force: false });
  const { stitches, beads } = patternReport(pattern);
  console.log(`${stitches} stitches, ${beads} beads`);
}
