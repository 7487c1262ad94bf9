import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count } = numbersIn('pl');

/** The order of the work, and what stands on its pages. */
export const work: PageWords['booklet']['work'] = {
  contents: 'Spis treści',
  glance: 'Praca w skrócie',
  steps: {
    gather: 'Przygotować koraliki, nić i narzędzia',
    swatch: 'Zrobić próbkę i ją zmierzyć',
    string: (f) => (f.lengths === 1 ? 'Nawlec koraliki' : `Nawlec odcinek ${f.length}`),
    rounds: (f) =>
      f.first === f.last
        ? `Przerobić okrążenie ${f.first}`
        : `Przerobić okrążenia od ${f.first} do ${f.last}`,
    again: 'Zrobić ten sam panel jeszcze raz',
    seam: 'Zszyć panele',
    frame: 'Umocować portmonetkę w biglu',
    lining: 'Wszyć podszewkę',
  },
  print: 'Przed drukowaniem',
  printText: (f) =>
    `Drukować w skali 100 %, bez dopasowania do strony. Każdy bok tego kwadratu musi mieć ${f.side}. Jeśli nie ma, nic, co w tej broszurze jest w rzeczywistej wielkości, nie jest dokładne: ustawić w drukarce 100 % lub „rozmiar rzeczywisty” i wydrukować ponownie.`,
  stop: 'Stop',
  seePage: (f) => `Zobacz stronę ${f.page}.`,
  part: 'Nawlekanie i szydełkowanie',
  heads: { string: 'Koraliki do nawleczenia', total: 'Razem', grams: 'g', count: 'Koraliki' },
  tick: (f) =>
    `Każdy wiersz${f.brackets ? ' i każde powtórzenie części w nawiasach' : ''} ma kratkę: odhaczyć ją, gdy jej koraliki są na nici. Ponad 20 jednakowych koralików podzielono po dziesięć. Suma za wierszem liczy koraliki tego odcinka do jego końca.`,
  twoBoxes: 'Z dwóch kratek obok siebie każdy panel ma swoją.',
  roundsTick:
    'Cienka pionowa kreska oddziela kliny. Kratkę odhaczyć, gdy okrążenie jest gotowe; suma obejmuje wszystkie dotąd przerobione koraliki.',
  mixed: (f) =>
    `${count(f.beads)}/${count(f.stitches)} oznacza ${count(f.beads)} koralików w ${count(f.stitches)} oczkach; pozostałe są puste.`,
  round: (round) => `Okr. ${round}`,
  working: {
    part: 'Schemat tak, jak widać przy pracy',
    note: (f) =>
      `To jest strona, na którą patrzy się podczas szydełkowania, obrócona tak, jak leży w ręce: początek jest u góry, a praca biegnie ${f.hand === 'right' ? 'w lewo' : 'w prawo'}, od szydełka.${f.mirrored ? ' Koraliki leżą z tyłu, dlatego obraz jest odwrócony względem gotowej portmonetki.' : ''}`,
    wedges: 'Liczby w kółkach liczą kliny w kierunku pracy.',
    hook: 'szydełko',
    use: 'Podczas szydełkowania iść za schematem takim, jak widać przy pracy; gotowy panel przyłożyć do schematu strony z koralikami.',
  },
  sector: {
    name: (f) => (f.from === f.to ? `klin ${f.from}` : `kliny od ${f.from} do ${f.to}`),
    how: 'Blade koraliki po bokach należą do sąsiednich klinów. Liczby stoją przed pierwszym oczkiem każdego okrążenia.',
  },
  time: (f) => `Czas: ${f.time}`,
  rights: {
    title: 'Prawa',
    none: 'Ta broszura nie podaje autora ani licencji. Używać jej tylko na własny użytek, dopóki osoba, od której pochodzi, nie powie, co jeszcze wolno.',
    authorOnly: (f) =>
      `Autor wzoru: ${f.author}; licencji nie podano. Zapytać przed przekazaniem wzoru dalej lub sprzedażą tego, co się według niego zrobi.`,
    contact: 'Poprawki',
    contactText: (f) => `Błąd albo coś niejasnego? Napisać: ${f.contact}.`,
  },
  yours: {
    title: 'Moja portmonetka',
    madeFor: 'Dla kogo',
    begun: 'Początek',
    finished: 'Koniec',
    swatch: 'Moja próbka',
    bead: 'Koraliki',
    thread: 'Nić',
    hook: 'Szydełko',
    after: (f) => `Szerokość po ${f.rounds} okrążeniach`,
    notes: 'Notatki',
  },
  alt: {
    square: 'Kwadrat do sprawdzenia wydruku.',
    photo: 'Fotografia gotowej pracy.',
    purse: (f) => `Rysunek zamkniętej portmonetki w biglu: ${f.panel}.`,
    working:
      'Schemat panelu tak, jak widać przy pracy. Lista okrążeń mówi to samo słowami, a materiały objaśniają litery.',
    sector: (f) => `Schemat powiększony, ${f.wedges}. Lista okrążeń mówi to samo słowami.`,
  },
  listing: {
    size: 'Wielkość',
    level: 'Poziom',
    beads: 'Koraliki',
    tools: 'Potrzebne są też',
    file: 'W pliku',
    fileText: (f) =>
      `Jeden PDF, stron: ${f.pages}, ${f.paper}, ${f.languages}. Można go przeszukiwać i odczytać na głos; każdy koralik ma literę, więc nie trzeba rozróżniać kolorów.`,
    digital: 'To jest wzór do pobrania i wydrukowania. Koraliki i narzędzia nie są dołączone.',
  },
};
