/** What goes wrong on the page alone; all else says itself by the sentences of the core. */
export const errors = {
  nothingToOpen:
    'There is no picture in what was pasted or dropped. Copy a picture, or drop a picture file.',
  pictureNotRead: (name: string) =>
    `${name} could not be read here. Save it as JPEG or PNG, and open that.`,
  workerEnded: 'Choosing beads stopped. Reload the page.',
};
