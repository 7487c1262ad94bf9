import type { FaultWords } from './english.js';

export const de: FaultWords = {
  shape: (f) =>
    `Dieses Maß des Teils kann ${f.least} bis ${f.most} sein: Ändern Sie es bei „Teil“.`,
  corners:
    'Ein Teil mit Ecken braucht die Zunahme in der ersten oder letzten Masche jedes Keils: Wählen Sie das, oder einen runden Rand.',
  notOurs: (f) =>
    `${f.name} enthält kein brauchbares Muster von Rondure: Öffnen Sie eine andere Kopie, oder machen Sie es neu aus dem Bild.`,
  notOursAt: (f) =>
    `${f.name} ist kein brauchbares Muster von Rondure (bei ${f.place}): Öffnen Sie eine andere Kopie, oder machen Sie es neu aus dem Bild.`,
  tooNew: (f) =>
    `${f.name} wurde von einem neueren Rondure geschrieben: Laden Sie diese Seite neu, und öffnen Sie die Datei noch einmal.`,
  noLetter: (f) =>
    `Ein Muster hat höchstens ${f.most} Perlenfarben, und dieses hat sie alle: Legen Sie zuerst zwei zusammen.`,
  beadsTyped: (f) =>
    `„${f.got}“ lässt sich nicht als Perlen lesen: Schreiben Sie Folgen wie 3A 2B 1A.`,
  beadsNone: 'Es sind keine Perlen angegeben: Schreiben Sie Folgen wie 3A 2B 1A.',
  beadsMany: (f) =>
    `Es sind mehr als ${f.most} Perlen angegeben, mehr als ein Teil fasst: Prüfen Sie die Zahlen.`,
  measured: (f) =>
    `Eines der Maße kann nicht stimmen: Mit diesen Perlen liegt es zwischen ${f.least} und ${f.most}. Messen Sie noch einmal, und prüfen Sie Runden, Keile und Perlengröße.`,
  turn: 'Die markierte Masche würde weiter wandern, als Maschen sich neigen können: Prüfen Sie die Richtung, und markieren Sie in jeder Runde die erste Masche desselben Keils.',
  pointsFew:
    'Die Punkte zeigen nicht, wie die Maschen sich drehen: Zeigen Sie auf die erste Masche eines Keils in der letzten Runde und in einer weiter innen.',
  pointsLine: 'Die Punkte legen nicht fest, wie das Teil liegt: Verteilen Sie die am Rand ringsum.',
  pointsLean:
    'Nach diesen Punkten würden die Maschen sich weiter neigen, als sie können: Prüfen Sie Runde und Keil jedes Punktes, und ob das Foto die Perlen zeigt.',
  nothingMeasured: 'Noch ist nichts gemessen: Tragen Sie wenigstens ein Maß ein.',
  across: (f) =>
    `Ein Teil aus dieser Masche kann ${f.least} bis ${f.most} mm groß sein (2 bis 80 Runden): Wählen Sie eine andere Größe oder andere Perlen.`,
  nothingToBead:
    'Keine Masche bekäme eine Perle, weil das Bild das Teil nicht erreicht: Ziehen Sie es unter das Teil, oder wählen Sie eine Perle für das, was darum liegt.',
  stock: (f) =>
    `In den Dosen fehlen ${f.missing} Perlen für dieses Teil: Erlauben Sie mehr Farben, oder machen Sie das Teil kleiner.`,
  stockBuy: (f) =>
    `In den Dosen fehlen ${f.missing} Perlen für dieses Teil: Kaufen Sie ${f.beads} von ${f.name}, oder machen Sie das Teil kleiner.`,
  stockPlain: (f) =>
    `Die einfarbige Rückseite braucht ${f.needed} Perlen ${f.name}, und die Dose gibt ${f.most} her: Wählen Sie eine andere Perle für die Rückseite, oder machen Sie die Teile kleiner.`,
  colour: (f) =>
    `„${f.got}“ ist keine Farbe: Schreiben Sie sie mit sechs Zeichen, zum Beispiel d9b36a.`,
  noBeadLeft: 'Es bleibt keine Perle zur Wahl: Lassen Sie weniger weg.',
  keptMany: (f) =>
    `Perlen, die vorkommen müssen: ${f.kept}; erlaubte Farben: ${f.most}. Erlauben Sie mehr Farben, oder behalten Sie weniger Perlen.`,
  letterMissing: (f) =>
    `Die Schrift der Seiten hat kein „${f.character}“: Lassen Sie es im Titel und in den Namen der Perlen weg.`,
  size: (f) =>
    `Die Perlengröße „${f.got}“ ist nicht bekannt: Nehmen Sie eine von ${f.known}, oder geben Sie den Durchmesser jeder Perle an.`,
  paletteEmpty: (f) =>
    `${f.name} enthält keine Perlen: Es braucht eine Zeile mit Spaltennamen und für jede Perle eine Zeile, wenigstens mit ihrer Farbe.`,
  paletteColumn: (f) =>
    `${f.name} hat keine Spalte mit Farben: Nennen Sie eine Spalte hex, mit Farben wie #d9b36a.`,
  paletteNoTable: (f) =>
    `${f.name} ist keine einfache Tabelle: Öffnen Sie die Datei, und speichern Sie sie als CSV.`,
  paletteUnread: (f) =>
    `${f.name} lässt sich nicht lesen: Speichern Sie die Datei noch einmal in dem Programm, das sie geschrieben hat.`,
  paletteLong: (f) =>
    `${f.name} ist zu lang (höchstens ${f.most}): Behalten Sie die Perlen, die in Frage kommen.`,
  paletteSize: (f) =>
    `${f.name} hat keine Perlen der Größe ${f.size}, nur ${f.found}: Wählen Sie eine dieser Größen.`,
  paletteRow: (f) =>
    `Zeile ${f.line} von ${f.name}: „${f.got}“ ist dort nicht zu gebrauchen. Verbessern Sie es, und öffnen Sie die Datei noch einmal.`,
  paletteTwice: (f) =>
    `Zeile ${f.line} von ${f.name} hat wieder die Kennung „${f.id}“ der Zeile ${f.first}: Geben Sie jeder Perle eine eigene.`,
  jarsNone: (f) =>
    `Auf ${f.name} sind keine Perlen auf weißem Papier zu sehen: Legen Sie Häufchen mit Abstand auf weißes Papier, in gleichmäßigem Licht, und fotografieren Sie von oben.`,
  jarsGrid: (f) =>
    `Die Perlen auf ${f.name} liegen nicht in ${f.rows} Reihen zu ${f.columns}: Prüfen Sie beide Zahlen, und lassen Sie eine Fingerbreite Papier zwischen den Häufchen.`,
  fileEmpty: (f) => `${f.name} ist leer: Kopieren oder laden Sie die Datei noch einmal.`,
  fileBig: (f) =>
    `${f.name} ist zu groß, gelesen werden höchstens ${f.most} MB: Speichern Sie eine kleinere Kopie.`,
  format: (f) =>
    `${f.name} ist kein Bild, das hier gelesen wird: Speichern Sie es als JPEG oder PNG, und öffnen Sie das.`,
  damaged: (f) =>
    `${f.name} ist abgeschnitten oder beschädigt: Kopieren oder laden Sie die Datei noch einmal, oder öffnen und speichern Sie sie neu in einem Bildprogramm.`,
  pixels: (f) =>
    `${f.name} hat ${f.width} × ${f.height} Bildpunkte, und höchstens ${f.most} Millionen werden gelesen: Speichern Sie eine kleinere Kopie; 2000 je Seite sind reichlich.`,
  invisible: (f) =>
    `Auf ${f.name} ist nichts zu sehen, weil alles durchsichtig ist: Speichern Sie es mit eingeschalteten Ebenen.`,
  drawing: (f) =>
    `${f.name} zu zeichnen dauert zu lange oder braucht zu viel Platz: Speichern Sie es in einem Zeichenprogramm als PNG, und öffnen Sie das.`,
  marks: (f) =>
    `Die vier runden Eckmarken der Vorlage sind auf ${f.name} nicht zu finden: Fotografieren Sie die ganze Seite, flach und scharf, mit allen vier Marken sauber im Bild.`,
  uncoloured: (f) =>
    `Auf ${f.name} ist kein Feld der Vorlage ausgemalt: Prüfen Sie, ob es das richtige Foto ist.`,
  frameReach: (f) =>
    `Kein Teil passt zu einem Bügel dieser Breite: Mit dieser Masche kann er ${f.least} bis ${f.most} mm breit sein.`,
  frameWide: (f) =>
    `Der Bügel ist zu breit für ein Teil von ${f.rounds} Runden: Nehmen Sie ${f.from} bis ${f.to} Runden.`,
  frameRail: (f) =>
    `Die Schiene des Bügels ist zu lang für ein Teil von ${f.rounds} Runden: Prüfen Sie Breite und Höhe des Bügels, oder nehmen Sie mehr Runden.`,
  lining: (f) =>
    `Für dieses Maß des Futters ist kein Platz: Es kann ${f.least} bis ${f.most} mm sein.`,
  undo: 'Das geht mit diesen Perlen nicht: Nehmen Sie den letzten Schritt zurück, und versuchen Sie es anders.',
};
