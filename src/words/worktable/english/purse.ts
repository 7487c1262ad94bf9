/** The step Purse: both sides in their frame. */
export const purse = {
  step: 'Purse',
  label: 'The purse as it hangs, with a coin and a ruler beside it',
  back: 'The back',
  backHow:
    'Choose Back below the purse, then the step Picture: the picture of the back is laid for itself.',
  plain: 'Or one bead all over',
  frame: 'The frame',
  width: 'Width',
  height: 'Height',
  corner: 'Corner radius',
  hinges: 'Between the hinges',
  channel: 'Depth of the channel',
  holes: 'From hole to hole',
  bare: 'Bare rounds',
  mm: 'mm',
  frameHow:
    'Measure where the rim will lie: across, and from the line between the hinges to the top.',
  fixing: 'How it is fixed',
  fits: (n: string) => `It fits already: ${n} rounds hang in this frame.`,
  fitNow: ({ before, after }: { before: string; after: string }) =>
    `The panel fits its frame now. Rounds: ${before} → ${after}.`,
  sits: 'How it sits',
  worn: ({ panel, frame }: { panel: string; frame: string }) =>
    `The panel hangs ${panel} mm wide in a frame ${frame} mm wide.`,
  inFrame: ({ n, round, bare }: { n: string; round: string; bare: string }) =>
    `In the frame: ${n} stitches of round ${round}. Rounds bare under it: ${bare}.`,
  hingesAt: ({ left, right }: { left: string; right: string }) =>
    `The hinges come between stitches ${left} on the left and ${right} on the right.`,
  seam: ({ n, mm }: { n: string; mm: string }) => `Sewn together below: ${n} stitches, ${mm} mm.`,
  holesHow: ({ spaces, stitches, more }: { spaces: string; stitches: string; more: string }) =>
    `About ${spaces} spaces between holes: stitches to a space ${stitches}, one more in ${more} of them.`,
  lining: 'The lining',
  liningHow: ({ cut, seam }: { cut: string; seam: string }) =>
    `Cut the cloth ${cut} mm across; its seam runs at ${seam} mm. The template is in the booklet.`,
  size: 'True size',
  cardHow:
    'Hold a bank card against the screen and pull until the box is as large. It holds for this screen.',
  cardBox: 'as large as a bank card',
  steps: {
    frame: 'purse frame',
    back: 'back of the purse',
    fit: 'fit the panel to the frame',
  },
};
