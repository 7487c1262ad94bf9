import type { English } from './spelling.js';

/** Seam, frame and lining. */
export const making = ({ colour }: English) => ({
  panels: 'The panels',
  two: 'Work both panels, each by its own chart and list. Let them lie damp and flat under a cloth until dry, if your beads and thread can bear it. Then measure them at the widest place, over the outer edges of the beads, and note it: the lining is cut by it.',
  one: 'Work the same panel a second time, by the same chart and list: a purse has two equal panels. Let them lie damp and flat under a cloth until dry, if your beads and thread can bear it. Then measure them at the widest place, over the outer edges of the beads, and note it: the lining is cut by it.',
  ends: 'Ends: with a needle run the tails of ring, joins and last round through five or six stitches on the side without beads, then back through two or three, and cut them off.',
  wrong: 'If a bead is wrong',
  wrongText:
    'Noticed soon: take the work back to it. Noticed later: break the wrong bead (goggles on, a cloth over it) and sew the right one on with a fine needle and the same thread; so too where a bead is missing.',
  seam: 'The seam',
  /** `framed`: what lies in the frame is known, and told beside it. */
  oneSeam: (f: { framed: boolean }) =>
    `Lay the panels on one another, beads on both outsides and both pictures upright. Mark the first stitch of the last round in each, pin 12 o’clock to 12 o’clock and 6 o’clock to 6 o’clock, then the places between. Leave the top open for the frame${f.framed ? '' : ', usually a little less than half of the rim'}. Sew stitch to stitch, under both loops, with strong nylon or polyester thread about three times as long as the seam, from one hinge down around 6 o’clock to the other${f.framed ? '.' : '; finish 5 to 10 mm below each hinge.'}`,
  pairs: 'Stitches of the last round that meet',
  frame: 'The frame',
  frameText:
    'Find the middle of the frame and of the open rim on each side and pin middle to middle. Sew from the middle outward to both hinges, through every hole of a frame with holes; a frame with a channel is glued as its maker says, one side after the other, and packed with paper cord.',
  /** Where no frame is known. */
  frameEase: 'The rim is usually up to 10 % longer than the rail, and eased in evenly.',
  lining: 'The lining',
  liningText:
    'The lining template in this booklet is at true size. Measure your finished panel before you cut, and draw the seam line wider or narrower by what it differs.',
  /** Where its steps are drawn on the sheets of the lining. */
  liningShown:
    'The lining template in this booklet is at true size and shows step by step how the lining goes in.',
  noTemplate:
    'A panel of this size is outside what the lining template serves: lay the finished panel on the cloth, draw around it, and add 5 mm for the seam.',
  washing: 'Washing and care',
  washingText: `Wipe the purse with a damp cloth rather than wash it: painted and coated beads can lose their ${colour} in washing and dry cleaning, and a metal frame can rust.`,
});
