import { useSyncExternalStore } from 'react';

export type Theme = 'day' | 'night' | 'device';
const key = 'fq.theme';
const listeners = new Set<() => void>();

export function currentTheme(): Theme {
  const kept = localStorage.getItem(key);
  return kept === 'day' || kept === 'night' ? kept : 'device';
}

/** Puts the theme on the page; `device` leaves the choice to the device's own setting. */
export function applyTheme(theme: Theme = currentTheme()): void {
  if (theme === 'device') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = theme;
}

export function setTheme(theme: Theme): void {
  if (theme === 'device') localStorage.removeItem(key);
  else localStorage.setItem(key, theme);
  applyTheme(theme);
  for (const listener of listeners) listener();
}

export function useTheme(): Theme {
  return useSyncExternalStore((listener) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  }, currentTheme);
}
