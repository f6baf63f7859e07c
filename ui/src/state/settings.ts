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

/** What a person chose; without a choice every sheet is shown in its own units. */
export const chosenUnits = signal<UnitChoice | null>(remembered<UnitChoice>('hotday.units', ['metric', 'us', 'mixed']));
const sheetUnits = signal<UnitChoice>('metric');

/** In which units one of several builds is shown: the person's choice, or else its sheet's own. */
export const unitsOf = (own: UnitChoice): UnitChoice => chosenUnits.value ?? own;

/** Those of the sheet that is looked at. */
export const units = computed<UnitChoice>(() => unitsOf(sheetUnits.value));

/** With null the sheet's own again. */
export function chooseUnits(choice: UnitChoice | null): void {
  chosenUnits.value = choice;
  remember('hotday.units', choice ?? '');
}

/** The units of the sheet that is looked at, for whoever has not chosen. */
export function suggestUnits(choice: UnitChoice): void {
  sheetUnits.value = choice;
}

export const theme = signal<Theme>(remembered<Theme>('hotday.theme', ['auto', 'light', 'dark']) ?? 'auto');

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
