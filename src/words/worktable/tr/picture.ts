import type { WorktableWords } from '../index.js';

/** The step Picture. */
export const picture: WorktableWords['picture'] = {
  step: 'Resim',
  invite: 'Panele kendi resminizi koyun',
  inviteHow: 'Herhangi bir yere bırakın, yapıştırın ya da:',
  drop: 'Resmi panele koymak için bırakın',
  yours: 'Sizin resminiz',
  sampleNote: 'Bu bizim örneğimiz. Her şeyi üzerinde deneyin.',
  local: 'Resminiz bu cihazda kalır. Hiçbir yere hiçbir şey gönderilmez.',
  moveHow:
    'Resmi panelin altında sürükleyin. Tekerlek ya da iki parmak boyunu değiştirir, yuvarlak tutamak döndürür.',
  size: 'Boy',
  sizeUnit: '%',
  turned: 'Dönüş',
  turnedUnit: '°',
  across: 'Sağa',
  down: 'Aşağı',
  mm: 'mm',
  lies: 'Nasıl duruyor',
  liesHow: {
    subject:
      'Düz zeminden ayrılan konu, kenarın içine sığdığı kadar büyük olur; ayrılan bir şey yoksa resim paneli doldurur.',
    fill: 'Resim panelin tamamını kaplar; kenardan taşan kesilir.',
    fit: 'Uzun kenar paneli boydan boya geçer: köşeler kesilir, uzun kenarların yanında zemin kalır.',
    inside: 'Hiçbir şey kesilmez; resmin çevresinde zemin kalır.',
  },
  kind: 'Nedir',
  kindHow: 'Çizimde koyu çizgi boncuğu kazanır; fotoğrafta her boncuk ortalama rengi alır.',
  kindDecided: ({ art }) => (art === 'photo' ? 'Fotoğraf sayıldı.' : 'Çizim sayıldı.'),
  around: 'Çevresi ve arkası',
  groundAuto: 'Ona uyan',
  cutOutHow: 'Düz zemini kaldırır; üstündeki konu kendi boncukları üzerinde durur.',
  white: 'Beyaz',
  bare: 'Boş, boncuksuz',
  aroundHow: 'Resmin bittiği ya da altını gösterdiği yerde görünen.',
  mind: 'Kaybolmaması gereken',
  mindHow:
    'Panelde bir gözün ya da gaganın üstünden fırçayla geçin: boncukları daha özenle seçilir.',
  mindSize: 'Fırça',
  mindKeys:
    'Klavyeyle: oklar fırçayı sıra boyunca ve sıradan sıraya götürür, boşluk işaretler, virgül ve nokta onu küçültür ve büyütür. Shift ile oklar giderken işaretler. Esc fırçayı bırakır.',
  mindThere: ({ place }) => `${place}; işaretli`,
  opening: 'Resim açılıyor …',
  noPicture:
    'Bu şema resmi olmadan geldi. Boncukları olduğu gibi kalır; yenisini koymak için bir resim açın.',
  steps: {
    move: 'resmi taşıma',
    size: 'resmin boyu',
    turn: 'resmi döndürme',
    place: 'resmi yerleştirme',
    open: 'resim açma',
    art: 'resmin türü',
    background: 'zemin',
    mind: 'kaybolmaması gerekeni işaretle',
  },
};
