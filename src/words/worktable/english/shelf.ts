/** The shelf of pieces, and how they are kept. */
export const shelf = {
  title: 'The shelf',
  intro: 'Your pieces are kept on this device, in this browser, after every step.',
  empty: 'Nothing lies here yet. A piece comes to the shelf with its first picture.',
  onTable: 'on the table',
  removed: 'Taken off the shelf',
  removedHow: 'These can be put back until you clear them away.',
  open: (title: string) => `Lay ${title} on the table`,
  take: (title: string) => `Take ${title} off the shelf`,
  back: (title: string) => `Put ${title} back on the shelf`,
  takeShort: 'Take off',
  backShort: 'Put back',
  takenOff: (title: string) => `${title} was taken off the shelf.`,
  putBack: (title: string) => `${title} lies on the shelf again.`,
  waits: (title: string) => `${title} is on the shelf.`,
  copyOf: (title: string) => `${title}, second piece`,
  copied: 'The other window keeps its piece. What you do here goes on as a piece of its own.',
  when: (date: string) => `last worked on ${date}`,
  elsewhere: 'This piece is open in another window.',
  refused:
    'This browser keeps nothing, perhaps because the window is a private one. Save the piece as a file before you close it.',
  full: 'This device has no more room. Your last steps are on the table, but are not kept: save the piece as a file now.',
  edition: 'A new edition of this page is ready. Your piece is kept.',
  fileDamaged: (file: string) =>
    `${file}: this piece cannot be opened, since a part of it is missing or damaged.`,
  fileNewer: (file: string) =>
    `${file}: this piece was made by a newer edition of this page. Open the page anew, or ask for an older file.`,
  forClass: 'For a class',
  classHow:
    'Chart and work of every piece that you tick, as one PDF: for each name, from a sheet of its own on; without names once.',
  classNames: 'Names, one a line',
  classSave: 'Save as one PDF',
};
