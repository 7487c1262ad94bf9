/** The step Picture. */
export const picture = {
  step: 'Picture',
  /** The one plain invitation beside the sample. */
  invite: 'Put your own picture on the panel',
  inviteHow: 'Drop it anywhere, paste it, or:',
  drop: 'Let go to lay the picture on the panel',
  yours: 'Your picture',
  sampleNote: 'This is our sample. Try everything on it.',
  local: 'Your picture stays on this device. Nothing is sent anywhere.',
  moveHow:
    'Drag the picture under the panel. Turn the wheel or pinch to size it; pull the round handle to turn it.',
  size: 'Size',
  sizeUnit: '%',
  turned: 'Turned',
  turnedUnit: '°',
  across: 'To the right',
  down: 'Down',
  mm: 'mm',
  lies: 'How it lies',
  liesHow: {
    subject:
      'What stands on a plain ground is as large as it goes inside the rim; where nothing stands out, the picture fills the panel.',
    fill: 'The picture covers the whole panel; what stands out of the rim is cut off.',
    fit: 'The longer side goes right across: the corners are cut off, and along the long sides lies ground.',
    inside: 'Nothing is cut off; all round the picture lies ground.',
  },
  kind: 'What it is',
  kindHow: 'In a drawing, dark lines win a bead; in a photo every bead takes the middle colour.',
  kindDecided: ({ art }: { art: 'photo' | 'drawing' }): string =>
    art === 'photo' ? 'Taken as a photo.' : 'Taken as a drawing.',
  around: 'Around and behind it',
  groundAuto: 'What suits it',
  cutOutHow: 'Takes a plain ground away, so that what stands on it lies on beads of its own.',
  white: 'White',
  bare: 'Bare, no beads',
  aroundHow: 'What shows where the picture ends or lets the ground through.',
  mind: 'What must not be lost',
  mindHow: 'Brush over an eye or a beak on the panel: its beads are chosen with more care.',
  mindSize: 'Brush',
  mindKeys:
    'By keyboard: the arrows move the brush along the round and from round to round, Space brushes, comma and full stop make it smaller and larger. With Shift, the arrows brush as they go. Esc puts the brush away.',
  mindThere: ({ place }: { place: string }) => `${place}; brushed over`,
  opening: 'Opening the picture …',
  noPicture:
    'This chart came without its picture. Its beads stay as they are; open a picture to lay a new one.',
  steps: {
    move: 'move the picture',
    size: 'size the picture',
    turn: 'turn the picture',
    place: 'lay the picture',
    open: 'open a picture',
    art: 'kind of picture',
    background: 'background',
    mind: 'brush over what must not be lost',
  },
};
