import type { WorktableWords } from '../index.js';

/** An empty chart to colour by hand, and its photo read back. */
export const coloured: WorktableWords['coloured'] = {
  title: 'Elle boyama',
  how: 'Bu panelin boş şemasını basın, kalemlerle boyayın ve fotoğrafını geri okutun.',
  saved: (name) => `${name} kaydedildi. %100 boyutta basın, boyayın ve fotoğrafıyla dönün.`,
  which: 'Boyadığınız şema',
  whichHow: 'Dilimler ve sıralar sayfasının üstünde yazar.',
  blank: ({ title, wedges, rounds }) => `${title}: ${wedges} dilim, ${rounds} sıra`,
  openBlank: 'Başka bir boş şema aç',
  colours: 'Renkler, en çok',
  photo: 'Fotoğrafı',
  photoHow:
    'Sayfanın tamamı, düz ve eşit ışıkta, dört köşe işaretiyle. Fotoğrafı buraya bırakın ya da:',
  choose: 'Fotoğraf seç',
  drop: 'Fotoğrafı okumak için bırakın',
  goOn: ({ name, n, of }) => `${name} ile sürdür, ${n} / ${of}`,
  reading: 'Boyalı şema okunuyor …',
  stop: 'Durdur',
  noCorners:
    'Köşelerdeki dört yuvarlak işaret bulunamadı: sayfanın tamamını düz ve net, dört işaret de görünecek biçimde çekin ve yukarıda doğru şemanın seçili olduğuna bakın.',
  notColoured:
    'Boyalı göz bulunamadı: yukarıda doğru şemanın seçili olduğuna ve gözlerin iyice kapatıldığına bakın.',
  blankTaken: 'Bu, boş şemanın kendisi; şimdi o seçili. Eksik olan, fotoğrafı.',
  uneven:
    'Sayfada gölge var, başka gözler de yanlış okunmuş olabilir: panele göz gezdirin ya da sayfayı eşit ışıkta yeniden çekin.',
  many: 'Çok sayıda göz şüpheli. Doğru şemanın seçilmiş olduğuna bakın.',
  count: ({ n, of }) => `${n} / ${of}`,
  place: ({ round, wedge, place }) => `${round}. sıra, ${wedge}. dilim, içinde ${place}. ilmek`,
  reasons: {
    between: 'Rengi iki boncuğun arasında.',
    uneven: 'İki renkli.',
    unlike: 'Rengi sayfadaki hiçbir renge benzemiyor.',
    partly: 'Yalnızca bir kısmı boyalı.',
    outside: 'Fotoğrafın dışında kalıyor.',
  },
  patch: 'Gözün çevresinin fotoğrafı; gözün kenarı çizili',
  ask: 'Bu hangisi?',
  asRead: 'böyle okundu',
  white: 'Beyaz bırakıldı',
  other: 'Başka bir boncuk',
  rest: 'Kalanını okunduğu gibi al',
  keysHow: (n) => `Tuşlar: 1 ile ${n} arası seçer, sol ok geri döner.`,
  done: 'Bütün gözler belirlendi',
  counts: ({ coloured, white }) => `Boyalı gözler: ${coloured}. Beyazlar: ${white}.`,
  whiteAsk: 'Beyaz gözler',
  whiteOpen: 'Henüz belirlenmedi',
  whiteHow: 'Belirlenmeyenler fırçayla konabilir.',
  lay: 'Masaya koy',
  laid: (title) => `“${title}” masada. Geri al, önceden orada duranı getirir.`,
  steps: {
    read: 'boyalı şemayı okuma',
  },
};
