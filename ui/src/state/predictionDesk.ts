import { signal, type Signal } from '@preact/signals';
import { readBuild, tryChanges } from '../api/client';
import type { Intervals, RoadMap, Sensitivity } from '../api/predictionTypes';
import type { Answer, Build, Change } from '../api/types';
import { listen } from './events';
import { suggestUnits } from './settings';
import { troubleOf, type Trouble } from './trouble';
import { Work } from './work';

/** What the saved sheet of one build predicts, and what other values would change. */
export class PredictionDesk {
  readonly build: Signal<Build | null> = signal(null);
  readonly trouble: Signal<Trouble | null> = signal(null);
  readonly intervals: Work<Intervals>;
  readonly map: Work<RoadMap>;
  readonly matters: Work<Sensitivity>;
  /** Later ones of a key replace earlier ones. */
  readonly whatIf: Signal<readonly Change[]> = signal([]);
  readonly answer: Signal<Answer | null> = signal(null);
  readonly whatIfTrouble: Signal<Trouble | null> = signal(null);
  private mattersAsked = false;

  constructor(readonly id: string) {
    this.intervals = new Work(() => ({ kind: 'intervals', build: id }));
    this.map = new Work(() => ({ kind: 'map', build: id }));
    this.matters = new Work(() => ({ kind: 'sensitivity', build: id }));
  }

  /** Follows the server until the answer is called. */
  follow(): () => void {
    const ends = [
      this.intervals.follow(),
      this.map.follow(),
      this.matters.follow(),
      listen('sheet', ({ build }) => build === this.id && void this.load()),
      listen('joined', () => void this.catchUp()),
    ];
    void this.load();
    return () => ends.forEach((end) => end());
  }

  /** The line to the server is there again: a sheet that was saved meanwhile is read. */
  private async catchUp(): Promise<void> {
    const known = this.build.value?.version;
    try {
      if (known !== undefined && (await readBuild(this.id)).version !== known) {
        await this.load();
      }
    } catch (reason) {
      this.trouble.value = troubleOf(reason, () => void this.load());
    }
  }

  async load(): Promise<void> {
    try {
      const build = await readBuild(this.id);
      suggestUnits(build.units);
      this.build.value = build;
      this.trouble.value = null;
      if (build.answer?.in_order) {
        void this.intervals.ask();
        void this.map.ask();
        if (this.mattersAsked) {
          void this.matters.ask();
        }
        void this.tryAll();
      }
    } catch (reason) {
      this.trouble.value = troubleOf(reason, () => void this.load());
    }
  }

  rank(): void {
    this.mattersAsked = true;
    void this.matters.ask();
  }

  suppose(change: Change): void {
    this.whatIf.value = [...this.whatIf.value.filter((c) => c.key !== change.key), change];
    void this.tryAll();
  }

  drop(key: string): void {
    this.whatIf.value = this.whatIf.value.filter((c) => c.key !== key);
    void this.tryAll();
  }

  private async tryAll(): Promise<void> {
    const asked = this.whatIf.value;
    if (asked.length === 0) {
      this.answer.value = null;
      return;
    }
    try {
      const answer = await tryChanges(this.id, asked);
      if (asked === this.whatIf.value) {
        this.answer.value = answer;
        this.whatIfTrouble.value = null;
      }
    } catch (reason) {
      this.whatIfTrouble.value = troubleOf(reason, () => void this.tryAll());
    }
  }
}
