import type { WorktableWords } from '../index.js';

/** Help while working: where one is, what is wrong, notes, time, and a colour that runs out. */
export const mending: WorktableWords['mending'] = {
  findTitle: 'Gdzie jestem?',
  findHow: 'Dotykać koralików, które teraz schodzą z nici, najpierw tego najbliżej szydełka.',
  findNone: 'Tak nie idą nigdzie. Spojrzeć na ten dotknięty jako ostatni.',
  findMore: (n) => `Pasujące miejsca: ${n}. Dotknąć następnego koralika.`,
  found: (f) => `Następne jest oczko ${f.stitch} okrążenia ${f.round}, w klinie ${f.wedge}.`,
  foundSlips: (n) => `Koraliki inne tam niż na liście: ${n}.`,
  goThere: 'Dalej od tego miejsca',
  jumped: (f) => `Przejście tutaj od oczka ${f.stitch} okrążenia ${f.round}.`,
  checkTitle: 'Czy się zgadza?',
  checkHow: (after) =>
    after === '0'
      ? 'Tak ma wyglądać nić, koralik nawleczony jako pierwszy jest na początku.'
      : `Tak ma wyglądać nić za sprawdzonymi koralikami: ${after}.`,
  checkRight: 'Moja wygląda tak samo',
  readStrung: (after) =>
    after === '0'
      ? 'Jeśli nie, dotykać tego, co na niej naprawdę jest, najpierw koralika nawleczonego jako pierwszy.'
      : `Jeśli nie, dotykać tego, co na niej naprawdę jest, począwszy za koralikiem ${after}.`,
  wrongTitle: 'Coś się nie zgadza',
  readComing:
    'Dotykać koralików tak, jak naprawdę schodzą z nici, najpierw tego najbliżej szydełka.',
  agree: (n) => `Jak na liście, koralików: ${n}.`,
  tooMany: 'To nie ten kawałek nici albo czytany od drugiego końca.',
  notHere: 'Te koraliki tu nie pasują. Może praca jest w innym miejscu.',
  slip: {
    missing: (f) =>
      `Za koralikiem ${f.after}: brakuje ${f.wanted} (okrążenie ${f.round}, oczko ${f.stitch})`,
    extra: (f) =>
      `Za koralikiem ${f.after}: ${f.got} za dużo (okrążenie ${f.round}, przed oczkiem ${f.stitch})`,
    other: (f) =>
      `Za koralikiem ${f.after}: ${f.got} zamiast ${f.wanted} (okrążenie ${f.round}, oczko ${f.stitch})`,
    swap: (f) =>
      `Za koralikiem ${f.after}: ${f.got} w złej kolejności, ma być ${f.wanted} (okrążenie ${f.round}, oczko ${f.stitch})`,
  },
  ways: {
    missing:
      'Brakuje: przerobić to oczko bez koralika i przyszyć koralik później cienką igłą i tą samą nicią.',
    extra:
      'Za dużo: rozgnieść koralik płaskimi szczypcami, gdy przyjdzie na niego kolej. Założyć okulary ochronne, trzymać szmatkę nad koralikiem i szczypcami, zebrać odłamki i sprawdzić palcami, czy nić nie jest nacięta.',
    other:
      'Inny kolor: rozgnieść zły koralik, gdy przyjdzie na niego kolej, przerobić oczko bez koralika i później przyszyć właściwy.',
    swap: 'Zła kolejność: potraktować je jak dwa koraliki innego koloru albo przerobić, jak są, jeśli nikt tego nie zobaczy.',
  },
  broken: 'Stłuczone szkło tnie nić i skórę i pryska w oczy: nigdy bez okularów ochronnych.',
  takeOff: (after) => `Zdjęte wszystkie za koralikiem ${after}`,
  mendLater: 'Zostawić, naprawić przy szydełku',
  noteThem: 'Zanotować przy oczkach',
  here: {
    sewOn: (letter) =>
      `Tu brakuje ${letter}: przerobić oczko bez koralika, koralik przyszyć później.`,
    extra: (letters) => `Najpierw zdjąć z nici: ${letters}.`,
  },
  ten: 'Po dziesięć',
  takeBack: 'Cofnąć jeden',
  typeThem: 'Albo wpisać, na przykład 3A 2B',
  addTyped: 'Dołóż je',
  typedWrong: (letters) => `Tylko liczby i te litery: ${letters}`,
  tapped: (n) => `Podane koraliki: ${n}`,
  notes: 'Notatki',
  noteAt: (f) => `Notatka przy oczku ${f.stitch} okrążenia ${f.round}`,
  noteHow: 'Dotknąć oczka robótki, żeby przypiąć do niego notatkę.',
  noteLine: (f) => `Okrążenie ${f.round}, oczko ${f.stitch}: ${f.text}`,
  sewOnLine: (f) => `Okrążenie ${f.round}, oczko ${f.stitch}: przyszyć ${f.letter}, ${f.name}.`,
  sewn: 'Przyszyty',
  takeAway: 'Usunąć',
  sewOnTitle: 'Koraliki do przyszycia',
  timeTitle: 'Czas i koszt',
  time: (f) => `${f.h} godz. ${f.min} min`,
  timeHow:
    'Czas liczy się od dotknięcia do dotknięcia; przerwa dłuższa niż dwie minuty się nie liczy.',
  hourly: 'Ile warta jest godzina',
  cost: { beads: 'Koraliki', thread: 'Nić', time: 'Czas', sum: 'Razem', unknown: 'cena nieznana' },
  costHow: 'Za jedną sztukę każdego panelu, w pieniądzach cen koralików.',
  outTitle: 'Kończy się kolor',
  outHow:
    'Co nawleczone, zostaje. Od wybranego okrążenia przychodzi inny koralik, a wszystkie listy się zmieniają.',
  outWhich: 'Który kolor',
  outFrom: 'Od okrążenia',
  outPanels: 'W którym panelu',
  outAll: 'We wszystkich',
  outNeeds: (n) => `Koraliki potrzebne od tego miejsca: ${n}`,
  outInJar: (n) => `w słoiku: ${n}`,
  outNone: 'Od tego okrążenia ten kolor już nie występuje.',
  outDone: (f) => `Od okrążenia ${f.round} jest ${f.to} zamiast ${f.from}.`,
  practice: 'Panel do ćwiczeń',
  practiceHow:
    'Cztery okrążenia do nauki, własnym oczkiem i własnymi koralikami: oba oczka każdego dodania mają swój kolor, pierwsze oczko każdego okrążenia też. Strony zrobią z niego osobną książeczkę.',
  steps: { runsOut: 'inny koralik tam, gdzie się kończy' },
};
