/** Words of the picture that shows what lean does. */
export const compare = {
  titleOf: (f: { panel?: string }) =>
    f.panel === undefined ? 'What lean does' : `What lean does: ${f.panel}`,
  description: 'The same picture charted without lean and with it.',
  picture: 'The picture',
  leaned: 'Charted without lean',
  leanedNote:
    'The wedge lines turn from round to round. A chart that leaves this out comes off the hook like this.',
  upright: 'Charted with lean',
  uprightNote: 'Here every round is turned back by just as much. This is the panel you make.',
};
