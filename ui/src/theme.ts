// Day and night: what the system says, unless the owner has chosen.

import { keep, kept } from './device';

export const THEMES = ['system', 'light', 'dark'] as const;
export type Theme = (typeof THEMES)[number];

export function keptTheme(): Theme {
  const theme = kept<string>('theme');
  return THEMES.find((known) => known === theme) ?? 'system';
}

export function applyTheme(theme: Theme): void {
  if (theme === 'system') delete document.documentElement.dataset.theme;
  else document.documentElement.dataset.theme = theme;
}

export function keepTheme(theme: Theme): void {
  keep('theme', theme);
  applyTheme(theme);
}
