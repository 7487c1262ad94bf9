import type { PageWords } from '../index.js';

/** Seam, frame and lining. */
export const making: PageWords['booklet']['making'] = {
  panels: 'Die Teile',
  two: 'Beide Teile häkeln, jedes nach seinem eigenen Zählplan und seiner Liste. Wenn Perlen und Garn es vertragen, beide feucht und flach unter einem Tuch liegen lassen, bis sie trocken sind. Danach an der breitesten Stelle messen, über die Außenkanten der Perlen, und das Maß notieren: Nach ihm wird das Futter zugeschnitten.',
  one: 'Dasselbe Teil noch einmal häkeln, nach demselben Zählplan und derselben Liste: Eine Börse hat zwei gleiche Teile. Wenn Perlen und Garn es vertragen, beide feucht und flach unter einem Tuch liegen lassen, bis sie trocken sind. Danach an der breitesten Stelle messen, über die Außenkanten der Perlen, und das Maß notieren: Nach ihm wird das Futter zugeschnitten.',
  ends: 'Fadenenden: Die Enden von Ring, Ansätzen und letzter Runde mit der Nadel auf der Seite ohne Perlen durch fünf oder sechs Maschen ziehen, durch zwei oder drei zurück, dann abschneiden.',
  wrong: 'Wenn eine Perle falsch ist',
  wrongText:
    'Bald bemerkt: bis dorthin auftrennen. Später bemerkt: die falsche Perle zerbrechen (Schutzbrille auf, ein Tuch darüber) und die richtige mit feiner Nadel und demselben Garn annähen; ebenso, wo eine Perle fehlt.',
  seam: 'Die Naht',
  oneSeam: (f) =>
    `Die Teile aufeinanderlegen, Perlen auf beiden Außenseiten und beide Bilder aufrecht. In jedem die erste Masche der letzten Runde markieren, 12 Uhr auf 12 Uhr und 6 Uhr auf 6 Uhr stecken, dann die Stellen dazwischen. Oben für den Bügel offen lassen${f.framed ? '' : ', meist etwas weniger als die Hälfte des Randes'}. Masche an Masche nähen, unter beiden Maschengliedern, mit starkem Nylon- oder Polyesterfaden, etwa dreimal so lang wie die Naht, von einem Scharnier hinunter über 6 Uhr zum anderen${f.framed ? '.' : '; 5 bis 10 mm unter jedem Scharnier enden.'}`,
  pairs: 'Maschen der letzten Runde, die aufeinandertreffen',
  frame: 'Der Bügel',
  frameText:
    'Die Mitte des Bügels und des offenen Randes auf jeder Seite suchen und Mitte auf Mitte stecken. Von der Mitte nach außen zu beiden Scharnieren nähen, durch jedes Loch eines Bügels mit Löchern; ein Bügel mit Rinne wird nach den Angaben seines Herstellers geklebt, eine Seite nach der anderen, und mit Papierkordel ausgefüllt.',
  frameEase:
    'Der Rand ist meist bis zu 10 % länger als der Bügel; diese Mehrweite beim Annähen gleichmäßig verteilen.',
  lining: 'Das Futter',
  liningText:
    'Die Schnittvorlage für das Futter in diesem Heft ist in Originalgröße. Vor dem Zuschneiden das fertige Teil messen und die Nahtlinie um den Unterschied weiter oder enger zeichnen.',
  liningShown:
    'Die Schnittvorlage für das Futter in diesem Heft ist in Originalgröße und zeigt Schritt für Schritt, wie das Futter hineinkommt.',
  noTemplate:
    'Für ein Teil dieser Größe gibt es keine Schnittvorlage: das fertige Teil auf den Stoff legen, den Umriss nachzeichnen und 5 mm für die Naht zugeben.',
  washing: 'Waschen und Pflege',
  washingText:
    'Die Börse lieber mit einem feuchten Tuch abwischen als waschen: Bemalte und beschichtete Perlen können beim Waschen und in der Reinigung ihre Farbe verlieren, und ein Metallbügel kann rosten.',
};
