import { computed, effect, signal } from '@preact/signals';
import type { UnitChoice } from '../lib/units';

export type Theme = 'auto' | 'light' | 'dark';

function remembered<T extends string>(key: string, allowed: readonly T[]): T | null {
  try {
    const value = window.localStorage.getItem(key);
    return allowed.find((a) => a === value) ?? null;
  } catch {
    return null;
  }
}

function remember(key: string, value: string): void {
  try {
    window.localStorage.setItem(key, value);
  } catch {
    // A browser that keeps nothing still shows everything.
  }
}

const chosenUnits = remembered<UnitChoice>('hotday.units', ['metric', 'us', 'mixed']);

export const units = signal<UnitChoice>(chosenUnits ?? 'metric');
export const theme = signal<Theme>(remembered<Theme>('hotday.theme', ['auto', 'light', 'dark']) ?? 'auto');

let chosen = chosenUnits !== null;

export function chooseUnits(choice: UnitChoice): void {
  chosen = true;
  units.value = choice;
  remember('hotday.units', choice);
}

/** The sheet's own units, until a person has chosen. */
export function suggestUnits(choice: UnitChoice): void {
  if (!chosen) {
    units.value = choice;
  }
}

export function chooseTheme(choice: Theme): void {
  theme.value = choice;
  remember('hotday.theme', choice);
}

const printing = signal(false);
window.addEventListener('beforeprint', () => { printing.value = true; });
window.addEventListener('afterprint', () => { printing.value = false; });

effect(() => {
  document.documentElement.dataset['theme'] = printing.value ? 'light' : theme.value;
});

const darkDevice = window.matchMedia('(prefers-color-scheme: dark)');
const deviceDark = signal(darkDevice.matches);
darkDevice.addEventListener('change', (event) => { deviceDark.value = event.matches; });

/** What is on the screen or the paper now; pictures painted dot by dot follow it. */
export const shownTheme = computed<'light' | 'dark'>(() => {
  if (printing.value) {
    return 'light';
  }
  return theme.value === 'auto' ? (deviceDark.value ? 'dark' : 'light') : theme.value;
});
