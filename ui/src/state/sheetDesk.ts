import { computed, signal, type ReadonlySignal, type Signal } from '@preact/signals';
import { saveChanges } from '../api/client';
import type { Change, Finding } from '../api/types';
import { back, BLANK, forth, grow, sameChanges, step, type Changes, type History } from '../lib/history';
import type { UnitChoice } from '../lib/units';
import { dropDraft, keepDraft, readDraft } from './draft';
import { suggestUnits } from './settings';
import { troubleOf, type Trouble } from './trouble';

/** Presses of one arrow key closer than this, in ms, are one step of undo. */
const ONE_MOVE = 900;

export interface Conflict {
  readonly message: string;
}

/** A sheet as it was read. */
export interface Read {
  readonly version: string;
  readonly units: UnitChoice;
}

/** Changes to one saved sheet: undone and done again, kept over a reload, saved only over what was read. What comes of them is the business of each desk. */
export abstract class SheetDesk<R extends Read> {
  readonly build: Signal<R | null> = signal(null);
  readonly history: Signal<History> = signal(BLANK);
  /** What a hand is moving right now, not yet a step of undo. */
  readonly live: Signal<Changes> = signal({});
  readonly saving: Signal<boolean> = signal(false);
  readonly trouble: Signal<Trouble | null> = signal(null);
  /** Why the last save did not come about, though nothing is wrong with the sheet. */
  readonly unsaved: Signal<Trouble | null> = signal(null);
  readonly told: Signal<string> = signal('');
  readonly conflict: Signal<Conflict | null> = signal(null);

  readonly changes: ReadonlySignal<Changes> = computed(() => ({ ...this.history.value.now, ...this.live.value }));

  private grownBy = '';
  private grownAt = 0;

  /** @param draft what unsaved work is kept under */
  constructor(readonly id: string, private readonly draft: string) {}

  protected abstract readSheet(): Promise<R>;

  /** What stands in the saved sheet; a change to it is none. */
  protected abstract savedValue(key: string): string | undefined;

  /** Something is changed. */
  protected abstract changed(): void;

  /** Nothing is changed: what was read with the sheet stands. */
  protected abstract rest(): void;

  /** The server does not take the changes. */
  protected abstract refused(findings: readonly Finding[]): void;

  async open(): Promise<void> {
    const draft = readDraft(this.draft);
    if (!(await this.read(() => void this.open()))) {
      return;
    }
    if (draft) {
      this.history.value = draft.history;
      if (draft.version !== this.build.value?.version) {
        this.told.value = 'The saved sheet has changed since; your changes lie over the new one.';
      }
      this.ask();
    }
  }

  /** The sheet was written, here or elsewhere. */
  async heard(version: string): Promise<void> {
    const build = this.build.value;
    if (!build || this.saving.value || build.version === version) {
      return;
    }
    if (Object.keys(this.changes.value).length > 0) {
      this.conflict.value = { message: 'The sheet was saved elsewhere just now, while you have changes here that are not saved. Nothing of yours is lost.' };
    } else if (await this.read(() => void this.heard(version))) {
      this.told.value = 'Changed elsewhere; read again.';
    }
  }

  /** The line to the server is there again, as after the tab was hidden: what was told meanwhile is caught up with. */
  async catchUp(): Promise<void> {
    if (!this.build.value || this.saving.value) {
      return;
    }
    try {
      await this.heard((await this.readSheet()).version);
    } catch (reason) {
      this.trouble.value = troubleOf(reason, () => void this.catchUp());
    }
  }

  /** Moves without a step of undo, as long as the pointer is down. */
  drag(changes: Changes): void {
    if (!sameChanges(this.live.value, changes)) {
      this.live.value = changes;
      this.ask();
    }
  }

  drop(): void {
    const moved = this.live.value;
    this.live.value = {};
    this.change(moved);
  }

  cancelDrag(): void {
    this.live.value = {};
    this.ask();
  }

  /** @param move names a run of presses that make one step of undo together */
  change(patch: Changes, move = ''): void {
    const next = this.merged(patch);
    const { now } = this.history.value;
    if (sameChanges(next, now)) {
      return;
    }
    const time = Date.now();
    const together = move !== '' && move === this.grownBy && time - this.grownAt < ONE_MOVE;
    this.grownBy = move;
    this.grownAt = time;
    this.put(together ? grow(this.history.value, next) : step(this.history.value, next));
  }

  takeBack(key: string): void {
    const { [key]: _, ...rest } = this.history.value.now;
    this.put(step(this.history.value, rest));
  }

  undo(): void {
    this.grownBy = '';
    this.put(back(this.history.value));
  }

  redo(): void {
    this.grownBy = '';
    this.put(forth(this.history.value));
  }

  async save(): Promise<void> {
    const build = this.build.value;
    if (!build || this.saving.value) {
      return;
    }
    this.saving.value = true;
    this.unsaved.value = null;
    const again = (): void => void this.save();
    try {
      const result = await saveChanges(this.id, build.version, listed(this.history.value.now));
      if (result.kind === 'saved') {
        this.clear();
        await this.read(() => void this.catchUp());
        this.told.value = 'Saved.';
      } else if (result.kind === 'changed-elsewhere') {
        this.conflict.value = { message: result.message };
      } else if (result.kind === 'not-written') {
        this.unsaved.value = { message: `Not saved; your changes stay here. ${result.message}`, away: false, again };
      } else {
        this.refused(result.findings);
        this.told.value = 'Not saved; put them right first.';
      }
    } catch (reason) {
      // Saved again by a hand only: nobody likes to be surprised by a file.
      this.unsaved.value = { ...troubleOf(reason, again), away: false };
    } finally {
      this.saving.value = false;
    }
  }

  /** The sheet was changed elsewhere: read it again, with the own changes over it or without them. */
  async settle(keep: boolean): Promise<void> {
    if (!keep) {
      this.clear();
    }
    this.conflict.value = null;
    if (await this.read(() => void this.settle(keep))) {
      this.put({ ...this.history.value, now: this.merged(this.history.value.now) });
      this.told.value = keep ? 'Read again; your changes lie over it.' : 'Read again; your changes are gone.';
    }
  }

  private async read(again: () => void): Promise<boolean> {
    try {
      const build = await this.readSheet();
      suggestUnits(build.units);
      this.build.value = build;
      this.trouble.value = null;
      this.rest();
      return true;
    } catch (reason) {
      this.trouble.value = troubleOf(reason, again);
      return false;
    }
  }

  private clear(): void {
    this.history.value = BLANK;
    this.live.value = {};
    dropDraft(this.draft);
  }

  private put(history: History): void {
    this.history.value = history;
    this.told.value = '';
    if (Object.keys(history.now).length === 0) {
      this.unsaved.value = null;
    }
    keepDraft(this.draft, { version: this.build.value?.version ?? '', history });
    this.ask();
  }

  /** What equals the saved sheet is no change. */
  private merged(patch: Changes): Changes {
    const all = { ...this.history.value.now, ...patch };
    return Object.fromEntries(Object.entries(all).filter(([key, value]) => this.savedValue(key) !== value));
  }

  protected ask(): void {
    if (Object.keys(this.changes.value).length === 0) {
      this.rest();
    } else {
      this.changed();
    }
  }
}

export function listed(changes: Changes): readonly Change[] {
  return Object.entries(changes).map(([key, value]) => ({ key, value }));
}
