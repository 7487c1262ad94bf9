import type { WorktableWords } from '../index.js';

/** The shelf of pieces, and how they are kept. */
export const shelf: WorktableWords['shelf'] = {
  title: 'Raf',
  intro: 'İşleriniz her adımdan sonra bu cihazda, bu tarayıcıda saklanır.',
  empty: 'Burada henüz bir şey yok. İş, ilk resmiyle rafa gelir.',
  onTable: 'masada',
  removed: 'Raftan alınanlar',
  removedHow: 'Tümüyle kaldırana dek geri konabilirler.',
  open: (title) => `Masaya koy: ${title}`,
  take: (title) => `Raftan al: ${title}`,
  back: (title) => `Rafa geri koy: ${title}`,
  takeShort: 'Al',
  backShort: 'Geri koy',
  takenOff: (title) => `${title} raftan alındı.`,
  putBack: (title) => `${title} yine rafta.`,
  waits: (title) => `${title} rafta duruyor.`,
  copyOf: (title) => `${title}, ikinci iş`,
  copied: 'Öbür pencere işini korur. Burada yaptıklarınız ayrı bir iş olarak sürer.',
  when: (date) => `son çalışma: ${date}`,
  elsewhere: 'Bu iş başka bir pencerede açık.',
  refused:
    'Bu tarayıcı hiçbir şey saklamıyor, belki de pencere gizli olduğu için. Kapatmadan önce işi dosya olarak kaydedin.',
  full: 'Bu cihazda yer kalmadı. Son adımlarınız masada, ama saklanmadı: işi şimdi dosya olarak kaydedin.',
  edition: 'Bu sayfanın yeni sürümü hazır. İşiniz korunur.',
  fileDamaged: (file) => `${file}: bu iş açılamıyor, bir bölümü eksik ya da bozuk.`,
  fileNewer: (file) =>
    `${file}: bu iş, bu sayfanın daha yeni bir sürümüyle yapılmış. Sayfayı yeniden açın ya da daha eski bir dosya isteyin.`,
  forClass: 'Kurs için',
  classHow:
    'İşaretlediğiniz her işin şeması ve örülüşü tek PDF’te: her ad için, hep yeni bir yapraktan başlayarak; ad yoksa bir kez.',
  classNames: 'Adlar, her satıra bir tane',
  classSave: 'Tek PDF olarak kaydet',
};
