import { signal } from '@preact/signals';

/** Whether the table is light or dark: as the reader chose, else as the device is set. */
export const theme = signal<'light' | 'dark'>('light');

const key = 'rondure-theme';

export function startTheme(): void {
  const device = matchMedia('(prefers-color-scheme: dark)');
  const wanted = () => {
    const kept = read();
    return kept ?? (device.matches ? 'dark' : 'light');
  };
  show(wanted());
  device.addEventListener('change', () => show(wanted()));
}

export function setTheme(wanted: 'light' | 'dark'): void {
  try {
    localStorage.setItem(key, wanted);
  } catch {
    // a browser that keeps nothing: it holds until the page is closed
  }
  show(wanted);
}

function show(wanted: 'light' | 'dark'): void {
  theme.value = wanted;
  document.documentElement.dataset.theme = wanted;
}

function read(): 'light' | 'dark' | undefined {
  try {
    const kept = localStorage.getItem(key);
    return kept === 'light' || kept === 'dark' ? kept : undefined;
  } catch {
    return undefined;
  }
}
