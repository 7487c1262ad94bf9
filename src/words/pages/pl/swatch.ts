import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, form, short } = numbersIn('pl');

/** What stands on the guide to a swatch. */
export const swatch: PageWords['swatch'] = {
  guide: {
    title: 'Zmierzyć swoje oczko',
    describe:
      'Jak zrobić i zmierzyć próbkę, z miernikiem obrotu, na którym się ją kładzie; drukować w skali 100%.',
    intro:
      'Każda ręka robi inne oczko. Mały panel na próbę, próbka, mówi, jak wysokie, szerokie i pochylone jest Twoje, tak aby schemat i gotowy wymiar pasowały do ręki.',
    steps: (f) => [
      {
        head: 'Zrobić.',
        text: `Nawlec na kłębek ${count(f.beads)} ${form(f.beads, { one: 'koralik', few: 'koraliki', many: 'koralików', other: 'koralika' })} (${f.size}) w jednym kolorze i zrobić próbkę nicią i szydełkiem do portmonetki: okrążenia: ${f.rounds}, kliny: ${f.wedges}, koralik w każdym oczku (ostatni arkusz mówi, jak się robi oczko), dodawanie w ${{ first: 'pierwszym', middle: 'środkowym', last: 'ostatnim' }[f.increase]} oczku każdego klina, ${f.construction === 'spiral' ? 'po spirali' : 'każde okrążenie zamknięte'}, ${f.hand === 'right' ? 'prawą' : 'lewą'} ręką. Po okrążeniu ${f.fromRound} zaznaczyć nić 1 m od szydełka.`,
      },
      {
        head: 'Zaznaczyć.',
        text: `W okrążeniu ${f.fromRound} i w okrążeniu ${f.toRound} założyć pętelkę z jaskrawej nici na pierwsze oczko klina ${f.markedWedge}${f.markedWedge === 1 ? ' (pierwsze oczko okrążenia)' : ''}.`,
      },
      {
        head: 'Obejrzeć.',
        text: 'Zwilżyć, wygładzić dłonią, zostawić do wyschnięcia. Czy leży płasko? Jeśli staje jak miseczka albo brzeg faluje, zapisać to i pominąć krok 4.',
      },
      {
        head: 'Szerokość.',
        text: 'Najszersze miejsce, po zewnętrznych krawędziach koralików, suwmiarką albo między dwoma pionowymi klockami.',
      },
      {
        head: 'Wzdłuż brzegu.',
        text: `Pośrodku klina ${f.rimWedge} ułożyć nić wzdłuż ostatniego okrążenia na długości 50 mm, po środkach koralików, i policzyć oczka od środka do środka koralika. Połówki się liczą.`,
      },
      {
        head: 'Obrót.',
        text: `Położyć próbkę na mierniku, koralikami do góry, dziurką na krzyżyku, zaznaczonym oczkiem okrążenia ${f.fromRound} na linii 0. Przyłożyć linijkę od krzyżyka przez zaznaczone oczko okrążenia ${f.toRound}: odczytać stopnie oraz to, czy są w kierunku pracy, czy przeciw niemu.`,
      },
      {
        head: 'Nić.',
        text: `Ile oczek dał ten metr, od końca okrążenia ${f.fromRound} do chwili, gdy znak doszedł do szydełka?`,
      },
      { head: 'Koraliki.', text: 'Nawlec 50 koralików, zsunąć je, zmierzyć rząd.' },
    ],
    write: 'Zapisać',
    blanks: (f) => [
      'płasko, miseczka czy fale',
      'szerokość, mm',
      'oczka na 50 mm brzegu',
      `obrót, okrążenia ${f.fromRound} do ${f.toRound}, stopnie`,
      'w kierunku pracy czy przeciw',
      'oczka z 1 m nici',
      '50 koralików, mm',
      'oczko 1 do 3 (ostatni arkusz)',
    ],
    then: 'Potem podać te liczby, razem z tym, co mówi krok 1, tam, gdzie powstaje schemat: w programie pod „Panel”, „Moje oczko”.',
    stitchTitle: 'Oczko',
    stitchIntro:
      'Wziąć to, którym będzie robiona portmonetka, i przy nim zostać: o wymiarze decydują nić, szydełko, nitki oczka i ręka. Próbka w jednym z nich nic nie mówi o innych. Jego numer zapisać na pierwszym arkuszu.',
    ways: {
      'both-loops': 'Półsłupek (w terminach USA single crochet), pod obie nitki',
      'bead-side-loop': 'To samo pod jedną nitkę, tę po stronie koralików',
      slip: 'Oczko zamykające',
    },
    gaugeTitle: 'Miernik obrotu',
    gaugeAlt:
      'Koło ze stopniami, u góry 0 i u dołu 180, w kierunku pracy i przeciw niemu; pośrodku okrążenia i kliny, na których kładzie się próbkę.',
    round: (r) => `okrążenie ${r}`,
    lean: (lean) => `przesunięcie ${short(lean, 2)}`,
    with: 'w kierunku pracy',
    against: 'przeciw kierunkowi pracy',
    scale:
      'Drukować w skali 100%, bez dopasowania do strony. Zmierzyć kwadraty: jeśli różnią się o więcej niż pół milimetra, wydrukować jeszcze raz bez skalowania.',
    read: `Szare: okrążenia i kliny zwykłego oczka, żeby ułożyć próbkę na środku. Poza skalą: gdzie wypada zaznaczone oczko przy przesunięciu 0, ${short(0.25, 2)} i ${short(0.5, 1)} oczka.`,
  },
};
