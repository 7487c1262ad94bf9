import type { WorktableWords } from '../index.js';

/** The step Pages. */
export const pages: WorktableWords['pages'] = {
  step: 'Sayfalar',
  intro: 'Tığın yanında gereken her şey: şema, boncuk dizme listesi, alışveriş listesi.',
  bookletHow: 'Yazdırmak ya da tablette tutmak için bir PDF.',
  zipHow: 'Kitapçık, şemalar, bütün listeler ve tarifin kendisiyle tek bir zip.',
  making: 'Sayfalar çiziliyor …',
  waiting: 'Boncuklar hâlâ seçiliyor …',
  pages: (n) => `${n} sayfa`,
  pageOf: ({ n, of }) => `${of} sayfadan ${n}.`,
  how: 'Nasıl yazdırılır',
  language: 'Dil',
  second: 'Yanında ikinci dil',
  none: 'Yok',
  paper: 'Kâğıt',
  papers: {
    a4: 'A4',
    letter: 'Letter',
  },
  author: 'Kim yaptı',
  licence: 'Alıcılar onunla ne yapabilir',
  date: 'Tarih',
  contact: 'Düzeltmeler nereye yazılır',
  time: 'İş ne kadar sürer',
  lists: 'Listeler',
  listsHow: 'Her biri kaydedileceği gibi.',
  list: {
    'rounds.txt': 'Sıralar',
    'stringing.txt': 'Boncuk dizme listesi',
    'shopping.txt': 'Alışveriş listesi',
    'chart.svg': 'Şema',
  },
  pieces: 'Kaç cüzdan',
  printHow: '%100 ya da “gerçek boyut” ile yazdırın.',
  steps: {
    how: 'nasıl yazdırılır',
  },
};
