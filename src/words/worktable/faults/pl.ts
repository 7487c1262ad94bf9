import type { FaultWords } from './english.js';

export const pl: FaultWords = {
  shape: (f) =>
    `Ta miara panelu może wynosić od ${f.least} do ${f.most}: zmienić ją w kroku Panel.`,
  corners:
    'Panel z rogami wymaga przybierania w pierwszym lub ostatnim oczku każdego klina: wybrać je albo okrągły brzeg.',
  notOurs: (f) =>
    `Plik ${f.name} nie zawiera dobrego wzoru Rondure: otworzyć inną kopię albo zrobić wzór od nowa z obrazu.`,
  notOursAt: (f) =>
    `Plik ${f.name} nie jest dobrym wzorem Rondure (miejsce ${f.place}): otworzyć inną kopię albo zrobić wzór od nowa z obrazu.`,
  tooNew: (f) =>
    `Plik ${f.name} zapisało nowsze Rondure: wczytać tę stronę ponownie i otworzyć go jeszcze raz.`,
  noLetter: (f) =>
    `Najwięcej kolorów koralików we wzorze: ${f.most}. Ten ma już wszystkie, najpierw połączyć dwa z nich.`,
  beadsTyped: (f) =>
    `„${f.got}” nie da się odczytać jako koralików: pisać odcinki, na przykład 3A 2B 1A.`,
  beadsNone: 'Nie podano koralików: pisać odcinki, na przykład 3A 2B 1A.',
  beadsMany: (f) => `Podano ponad ${f.most} koralików, więcej, niż mieści panel: sprawdzić liczby.`,
  measured: (f) =>
    `Jedna z miar nie może być dobra: z tymi koralikami leży między ${f.least} a ${f.most}. Zmierzyć jeszcze raz, sprawdzić okrążenia, kliny i rozmiar koralików.`,
  turn: 'Zaznaczone oczko przesuwałoby się bardziej, niż oczka mogą się pochylać: sprawdzić kierunek i w każdym okrążeniu zaznaczyć pierwsze oczko tego samego klina.',
  pointsFew:
    'Punkty nie pokazują, jak skręcają oczka: wskazać pierwsze oczko klina w ostatnim okrążeniu i w którymś bliżej środka.',
  pointsLine: 'Punkty nie mówią, jak leży panel: rozłożyć te na brzegu dookoła.',
  pointsLean:
    'Według tych punktów oczka pochylałyby się bardziej, niż mogą: sprawdzić okrążenie i klin każdego punktu oraz to, czy zdjęcie pokazuje koraliki.',
  nothingMeasured: 'Nic jeszcze nie zmierzono: wpisać co najmniej jedną miarę.',
  across: (f) =>
    `Panel z tego oczka może mieć od ${f.least} do ${f.most} mm (2 do 80 okrążeń): wybrać inny rozmiar albo inne koraliki.`,
  nothingToBead:
    'Żadne oczko nie miałoby koralika, bo obraz nie sięga panelu: przeciągnąć go pod panel albo wybrać koralik na to, co wokół.',
  stock: (f) =>
    `W słoiczkach brakuje koralików na ten panel: ${f.missing}. Pozwolić na więcej kolorów albo zmniejszyć panel.`,
  stockBuy: (f) =>
    `W słoiczkach brakuje koralików na ten panel: ${f.missing}. Dokupić ${f.beads} szt. ${f.name} albo zmniejszyć panel.`,
  stockPlain: (f) =>
    `Gładki tył wymaga ${f.needed} szt. ${f.name}, a słoiczek może dać ${f.most}: wybrać inny koralik na tył albo zmniejszyć panele.`,
  colour: (f) => `„${f.got}” nie jest kolorem: zapisać go sześcioma znakami, na przykład d9b36a.`,
  noBeadLeft: 'Nie ma już koralika do wyboru: pominąć ich mniej.',
  keptMany: (f) =>
    `Koralików, które muszą być użyte: ${f.kept}; dozwolonych kolorów: ${f.most}. Pozwolić na więcej kolorów albo zachować mniej koralików.`,
  letterMissing: (f) =>
    `Pismo stron nie ma znaku „${f.character}”: usunąć go z tytułu i z nazw koralików.`,
  size: (f) =>
    `Rozmiar koralików „${f.got}” nie jest znany: użyć jednego z ${f.known} albo podać średnicę każdego koralika.`,
  paletteEmpty: (f) =>
    `Plik ${f.name} nie zawiera koralików: potrzebny jest wiersz z nazwami kolumn i wiersz na każdy koralik, przynajmniej z jego kolorem.`,
  paletteColumn: (f) =>
    `Plik ${f.name} nie ma kolumny kolorów: nazwać jedną kolumnę hex, z kolorami takimi jak #d9b36a.`,
  paletteNoTable: (f) => `Plik ${f.name} nie jest zwykłą tabelą: otworzyć go i zapisać jako CSV.`,
  paletteUnread: (f) =>
    `Pliku ${f.name} nie da się odczytać: zapisać go ponownie w programie, który go zapisał.`,
  paletteLong: (f) =>
    `Plik ${f.name} jest za długi (najwyżej ${f.most}): zostawić koraliki, które mogą się przydać.`,
  paletteSize: (f) =>
    `Plik ${f.name} nie ma koralików w rozmiarze ${f.size}, tylko ${f.found}: wybrać jeden z tych rozmiarów.`,
  paletteRow: (f) =>
    `Wiersz ${f.line} pliku ${f.name}: „${f.got}” się tam nie nadaje. Poprawić i otworzyć plik ponownie.`,
  paletteTwice: (f) =>
    `Wiersz ${f.line} pliku ${f.name} powtarza oznaczenie „${f.id}” z wiersza ${f.first}: dać każdemu koralikowi własne.`,
  jarsNone: (f) =>
    `Na ${f.name} nie widać koralików na białym papierze: położyć kupki osobno na białym papierze, w równym świetle, i zrobić zdjęcie z góry.`,
  jarsGrid: (f) =>
    `Koraliki na ${f.name} nie leżą w ${f.rows} rzędach po ${f.columns}: sprawdzić obie liczby i zostawić między kupkami papier na szerokość palca.`,
  fileEmpty: (f) => `Plik ${f.name} jest pusty: skopiować lub pobrać go jeszcze raz.`,
  fileBig: (f) =>
    `Plik ${f.name} jest za duży, czytane jest najwyżej ${f.most} MB: zapisać mniejszą kopię.`,
  format: (f) =>
    `Plik ${f.name} nie jest obrazem, który da się tu odczytać: zapisać go jako JPEG lub PNG i otworzyć ten plik.`,
  damaged: (f) =>
    `Plik ${f.name} jest ucięty lub uszkodzony: skopiować lub pobrać go jeszcze raz albo otworzyć i zapisać w programie do obrazów.`,
  pixels: (f) =>
    `Plik ${f.name} ma ${f.width} × ${f.height} pikseli, a czytane jest najwyżej ${f.most} milionów: zapisać mniejszą kopię; 2000 na bok w zupełności wystarczy.`,
  invisible: (f) =>
    `Na ${f.name} nic nie widać, bo wszystko jest przezroczyste: zapisać go z włączonymi warstwami.`,
  drawing: (f) =>
    `Plik ${f.name} jest za ciężki do narysowania: zapisać go jako PNG w programie do rysowania i otworzyć ten plik.`,
  marks: (f) =>
    `Na ${f.name} nie widać czterech okrągłych znaków w rogach schematu: sfotografować całą stronę, płasko i ostro, z czterema czystymi znakami w kadrze.`,
  uncoloured: (f) =>
    `Na ${f.name} żadne pole schematu nie jest pokolorowane: sprawdzić, czy to właściwe zdjęcie.`,
  frameReach: (f) =>
    `Żaden panel nie pasuje do bigla tej szerokości: z tym oczkiem może mieć od ${f.least} do ${f.most} mm.`,
  frameWide: (f) =>
    `Bigiel jest za szeroki na panel o tylu okrążeniach (${f.rounds}): wziąć od ${f.from} do ${f.to}.`,
  frameRail: (f) =>
    `Szyna bigla jest za długa na panel o tylu okrążeniach (${f.rounds}): sprawdzić szerokość i wysokość bigla albo dodać okrążeń.`,
  lining: (f) => `Na tę miarę podszewki nie ma miejsca: może mieć od ${f.least} do ${f.most} mm.`,
  undo: 'Z tymi koralikami się nie da: cofnąć ostatni krok i spróbować inaczej.',
};
