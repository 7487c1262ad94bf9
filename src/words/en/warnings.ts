/** One sentence for each warning code: what was noticed, and the cure. */
export const warnings = {
  'polygon-stretches': (f: { increase: string; lean: number }) =>
    `With the increase in the ${f.increase} stitch and a lean of ${f.lean} the corners of a polygon drift from round to round: the drawn outline is only a rough guide; --outline circle fits better.`,
  'panel-cups': (f: { wedges: number; flatWedges: number }) =>
    `${f.wedges} wedges are too few for this stitch to lie flat (about ${f.flatWedges} would): the panel will cup. Use more wedges, a wider stitch or a lower round.`,
  'panel-ruffles': (f: { wedges: number; flatWedges: number }) =>
    `${f.wedges} wedges are too many for this stitch to lie flat (about ${f.flatWedges} would): the rim will ruffle. Use fewer wedges, a narrower stitch or a higher round.`,
  'stitch-smaller-than-bead': (f: { what: 'width' | 'height'; gotMm: number; beadMm: number }) =>
    `A stitch ${f.what} of ${f.gotMm} mm is less than nine tenths of the bead (${f.beadMm} mm): the beads will not fit side by side. Measure a swatch, or use smaller beads.`,
};
