import type { PageWords } from '../index.js';

/** How one booklet of a pattern differs from another. */
export const edition: PageWords['booklet']['edition'] = {
  grey: 'für Schwarz-Weiß-Druck',
  large: 'Großdruck',
  left: 'für die linke Hand',
  right: 'für die rechte Hand',
  mirrored:
    'Diese Ausgabe ist nicht für die Hand, für die die Anleitung gemacht wurde, sondern für die andere: Runden, Listen und Zahlen sind dieselben, und das Bild wird zu seinem Spiegelbild. Buchstaben und Ziffern im Bild wären seitenverkehrt; dafür braucht man eine Anleitung, die für diese Hand gemacht ist.',
  fills:
    'Ohne Farben hat jede Perle einen Grauton und, wenn es viele verschiedene Perlen sind, auch ein Zeichen neben ihrem Buchstaben: zwei Striche, vier Punkte oder keines. Die Namen nennen die Farbe.',
};

/** What stands for pictures where the booklet is read aloud. */
export const alt: PageWords['booklet']['alt'] = {
  panel: (f) => `Bild des gehäkelten Teils, Perlenseite: ${f.panel}`,
  chart:
    'Zählplan des Teils. Die Rundenliste sagt dasselbe in Worten, und beim Material sind die Buchstaben erklärt.',
  lining: 'Schnittvorlage des Futters in Originalgröße, mit ihren Zeichen.',
};
