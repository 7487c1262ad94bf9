import type { WorktableWords } from '../index.js';

/** The shelf of pieces, and how they are kept. */
export const shelf: WorktableWords['shelf'] = {
  title: 'Das Regal',
  intro: 'Die Stücke werden nach jedem Schritt auf diesem Gerät aufbewahrt, in diesem Browser.',
  empty: 'Hier liegt noch nichts. Ein Stück kommt mit seinem ersten Bild ins Regal.',
  onTable: 'auf dem Tisch',
  removed: 'Aus dem Regal genommen',
  removedHow: 'Diese lassen sich zurücklegen, bis sie weggeräumt werden.',
  open: (title) => `${title} auf den Tisch legen`,
  take: (title) => `${title} aus dem Regal nehmen`,
  back: (title) => `${title} ins Regal zurücklegen`,
  takeShort: 'Herausnehmen',
  backShort: 'Zurücklegen',
  takenOff: (title) => `${title} wurde aus dem Regal genommen.`,
  putBack: (title) => `${title} liegt wieder im Regal.`,
  waits: (title) => `${title} liegt im Regal.`,
  copyOf: (title) => `${title}, zweites Stück`,
  copied:
    'Das andere Fenster behält sein Stück. Was hier geschieht, geht als eigenes Stück weiter.',
  when: (date) => `zuletzt bearbeitet am ${date}`,
  elsewhere: 'Dieses Stück ist in einem anderen Fenster offen.',
  refused:
    'Dieser Browser bewahrt nichts auf, vielleicht weil das Fenster ein privates ist. Das Stück vor dem Schließen als Datei speichern.',
  full: 'Auf diesem Gerät ist kein Platz mehr. Die letzten Schritte liegen auf dem Tisch, sind aber nicht aufbewahrt: das Stück jetzt als Datei speichern.',
  edition: 'Eine neue Ausgabe dieser Seite ist da. Das Stück bleibt erhalten.',
  fileDamaged: (file) =>
    `${file}: Dieses Stück lässt sich nicht öffnen, ein Teil davon fehlt oder ist beschädigt.`,
  fileNewer: (file) =>
    `${file}: Dieses Stück stammt von einer neueren Ausgabe dieser Seite. Die Seite neu öffnen oder um eine ältere Datei bitten.`,
  forClass: 'Für einen Kurs',
  classHow:
    'Zählplan und Arbeitsfolge jedes angekreuzten Stücks als ein PDF: für jeden Namen, immer auf einem neuen Blatt; ohne Namen einmal.',
  classNames: 'Namen, je Zeile einer',
  classSave: 'Als ein PDF speichern',
};
