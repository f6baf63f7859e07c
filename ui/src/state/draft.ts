import { BLANK, type History } from '../lib/history';

/** Unsaved work on one build, kept over a reload of the page. */
export interface Draft {
  readonly version: string;
  readonly history: History;
}

const name = (id: string): string => `hotday.draft.${id}`;

export function readDraft(id: string): Draft | null {
  try {
    const text = window.sessionStorage.getItem(name(id));
    const draft = text === null ? null : (JSON.parse(text) as Partial<Draft>);
    return draft?.history?.now ? { version: draft.version ?? '', history: { ...BLANK, ...draft.history } } : null;
  } catch {
    return null;
  }
}

export function keepDraft(id: string, draft: Draft): void {
  try {
    window.sessionStorage.setItem(name(id), JSON.stringify(draft));
  } catch {
    // Without a store the work lives as long as the page.
  }
}

export function dropDraft(id: string): void {
  try {
    window.sessionStorage.removeItem(name(id));
  } catch {
    // Nothing was kept.
  }
}
