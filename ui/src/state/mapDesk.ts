import { signal, type Signal } from '@preact/signals';
import { readRun, saveMap, tryMap } from '../api/proofClient';
import type { MapWish, Remark, RunDetail, RunMap } from '../api/proofTypes';
import { Latest } from '../lib/latest';
import { wishOf } from '../lib/mapping';
import { troubleOf, type Trouble } from './trouble';

type Chosen = Pick<RunMap, 'time' | 'channels' | 'facts'>;

/** The map of one recording while somebody works on it; every change is tried at once, nothing written until it is saved. */
export class MapDesk {
  readonly run: Signal<RunDetail | null> = signal(null);
  readonly chosen: Signal<Chosen | null> = signal(null);
  readonly changed: Signal<boolean> = signal(false);
  readonly recording: Signal<RunDetail['recording']> = signal(null);
  readonly findings: Signal<readonly Remark[]> = signal([]);
  readonly saving: Signal<boolean> = signal(false);
  readonly told: Signal<string> = signal('');
  readonly trouble: Signal<Trouble | null> = signal(null);
  /** Why the last save did not come about, though nothing is wrong with the map. */
  readonly unsaved: Signal<Trouble | null> = signal(null);
  readonly conflict: Signal<string | null> = signal(null);

  private readonly tries = new Latest<MapWish, RunDetail>(
    (wish) => tryMap(this.name, wish),
    (run) => {
      this.recording.value = run.recording;
      this.findings.value = run.findings;
      this.trouble.value = null;
    },
    (reason) => {
      this.trouble.value = troubleOf(reason, () => this.change({}));
    },
  );

  constructor(readonly name: string) {}

  async open(): Promise<void> {
    try {
      this.take(await readRun(this.name));
      this.conflict.value = null;
      this.trouble.value = null;
    } catch (reason) {
      this.trouble.value = troubleOf(reason, () => void this.settle(true));
    }
  }

  /** The map was changed elsewhere: read it again, with the own choices over it or without them. */
  async settle(keep: boolean): Promise<void> {
    const { value: mine } = this.chosen;
    await this.open();
    if (keep && mine) {
      this.change(mine);
    }
  }

  change(part: Partial<Chosen>): void {
    const chosen = this.chosen.value;
    const run = this.run.value;
    if (chosen && run) {
      this.chosen.value = { ...chosen, ...part };
      this.changed.value = true;
      this.told.value = '';
      this.tries.ask(wishOf(run.version, this.chosen.value));
    }
  }

  remap(next: (channels: RunMap['channels']) => RunMap['channels']): void {
    this.change({ channels: next(this.chosen.value?.channels ?? []) });
  }

  async save(): Promise<void> {
    const { value: run } = this.run;
    const { value: chosen } = this.chosen;
    if (!run || !chosen || this.saving.value) {
      return;
    }
    this.saving.value = true;
    this.unsaved.value = null;
    const again = (): void => void this.save();
    try {
      const answer = await saveMap(this.name, wishOf(run.version, chosen));
      if (answer.kind === 'saved') {
        this.take(answer.run);
        this.told.value = 'Map saved.';
      } else if (answer.kind === 'changed-elsewhere') {
        this.conflict.value = answer.message;
      } else if (answer.kind === 'not-written') {
        this.unsaved.value = { message: `Not saved; your choices stay here. ${answer.message}`, away: false, again };
      } else {
        this.findings.value = answer.findings;
        this.told.value = 'Not saved; put the faults right first.';
      }
    } catch (reason) {
      this.unsaved.value = { ...troubleOf(reason, again), away: false };
    } finally {
      this.saving.value = false;
    }
  }

  private take(run: RunDetail): void {
    this.tries.forget();
    this.run.value = run;
    this.chosen.value = run.map;
    this.changed.value = false;
    this.recording.value = run.recording;
    this.findings.value = run.findings;
  }
}
