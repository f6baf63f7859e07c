import { computed, signal, type ReadonlySignal, type Signal } from '@preact/signals';
import { readBuild, saveChanges, tryChanges } from '../api/client';
import type { Answer, Build, Change, Finding, GoodAnswer, Stack } from '../api/types';
import { back, BLANK, forth, grow, sameChanges, step, type Changes, type History } from '../lib/history';
import { Latest } from '../lib/latest';
import { drawable, laidOver } from '../lib/parts';
import { inChosen, turnedValues, type TurnedValues } from '../lib/turned';
import { dropDraft, keepDraft, readDraft } from './draft';
import { chosenUnits, suggestUnits } from './settings';
import { troubleOf, type Trouble } from './trouble';

/** An answer that takes longer than this, in ms, is waited for in words. */
const LONG = 500;
/** Presses of one arrow key closer than this, in ms, are one step of undo. */
const ONE_MOVE = 900;

export interface Conflict {
  readonly message: string;
}

/** One build on the desk: the saved sheet, what is changed against it and what the server says to that. */
export class Desk {
  readonly build: Signal<Build | null> = signal(null);
  readonly history: Signal<History> = signal(BLANK);
  /** What a hand is moving right now, not yet a step of undo. */
  readonly live: Signal<Changes> = signal({});
  readonly good: Signal<GoodAnswer | null> = signal(null);
  readonly findings: Signal<readonly Finding[]> = signal([]);
  readonly inOrder: Signal<boolean> = signal(true);
  readonly waiting: Signal<boolean> = signal(false);
  readonly saving: Signal<boolean> = signal(false);
  readonly trouble: Signal<Trouble | null> = signal(null);
  /** Why the last save did not come about, though nothing is wrong with the sheet. */
  readonly unsaved: Signal<Trouble | null> = signal(null);
  readonly told: Signal<string> = signal('');
  readonly conflict: Signal<Conflict | null> = signal(null);
  readonly chosen: Signal<string | null> = signal(null);
  readonly comparing: Signal<boolean> = signal(false);

  readonly changes: ReadonlySignal<Changes> = computed(() => ({ ...this.history.value.now, ...this.live.value }));
  readonly stack: ReadonlySignal<Stack | null> = computed(() => {
    const good = this.good.value;
    return good && laidOver(good.stack, { ...drawable(this.history.value.now, this.findings.value), ...this.live.value });
  });
  readonly savedStack: ReadonlySignal<Stack | null> = computed(() => {
    const answer = this.build.value?.answer;
    return answer?.in_order ? answer.stack : null;
  });
  readonly saved: ReadonlySignal<ReadonlyMap<string, string>> = computed(
    () => new Map(this.build.value?.values.map((v) => [v.key, v.typed])),
  );
  readonly assumed: ReadonlySignal<ReadonlyMap<string, string>> = computed(
    () => new Map(this.build.value?.assumptions.map((a) => [a.key, a.value])),
  );

  private readonly turned: ReadonlySignal<TurnedValues> = computed(() =>
    turnedValues([
      ...(this.build.value?.values ?? []),
      ...(this.build.value?.assumptions ?? []).map((a) => ({ ...a, typed: a.value })),
      ...(this.good.value?.changed ?? []),
    ]),
  );

  private timer: number | undefined;
  private grownBy = '';
  private grownAt = 0;

  private readonly tries = new Latest<Changes, Answer>(
    (changes) => tryChanges(this.id, listed(changes)),
    (answer, _, isLast) => {
      this.take(answer);
      this.await(!isLast);
      this.trouble.value = null;
    },
    (reason) => {
      this.await(false);
      this.trouble.value = troubleOf(reason, () => this.ask());
    },
  );

  constructor(readonly id: string) {}

  async open(): Promise<void> {
    const draft = readDraft(this.id);
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

  /** A value of the sheet, or one that is to stand there, in the units that were chosen. */
  inChosenUnits(key: string, typed: string): string {
    return inChosen(this.turned.value, key, typed, chosenUnits.value);
  }

  /** The line to the server is there again, as after the tab was hidden: what was told meanwhile is caught up with. */
  async catchUp(): Promise<void> {
    if (!this.build.value || this.saving.value) {
      return;
    }
    try {
      await this.heard((await readBuild(this.id)).version);
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
        this.take({ in_order: false, findings: result.findings });
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
      const build = await readBuild(this.id);
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
    dropDraft(this.id);
  }

  private put(history: History): void {
    this.history.value = history;
    this.told.value = '';
    if (Object.keys(history.now).length === 0) {
      this.unsaved.value = null;
    }
    keepDraft(this.id, { version: this.build.value?.version ?? '', history });
    this.ask();
  }

  /** What equals the saved sheet is no change. */
  private merged(patch: Changes): Changes {
    const all = { ...this.history.value.now, ...patch };
    return Object.fromEntries(Object.entries(all).filter(([key, value]) => this.saved.value.get(key) !== value));
  }

  private ask(): void {
    if (Object.keys(this.changes.value).length === 0) {
      this.tries.forget();
      this.rest();
      return;
    }
    this.await(true);
    this.tries.ask(this.changes.value);
  }

  private await(answer: boolean): void {
    window.clearTimeout(this.timer);
    if (answer) {
      this.timer = window.setTimeout(() => {
        this.waiting.value = true;
      }, LONG);
    } else {
      this.waiting.value = false;
    }
  }

  /** Nothing is changed: what was read with the sheet stands. */
  private rest(): void {
    const build = this.build.value;
    this.await(false);
    this.findings.value = build?.findings ?? [];
    this.inOrder.value = build?.answer?.in_order ?? false;
    this.good.value = build?.answer?.in_order ? build.answer : null;
  }

  private take(answer: Answer): void {
    this.findings.value = answer.findings;
    this.inOrder.value = answer.in_order;
    if (answer.in_order) {
      this.good.value = answer;
    }
  }
}

function listed(changes: Changes): readonly Change[] {
  return Object.entries(changes).map(([key, value]) => ({ key, value }));
}
