import { signal, type Signal } from '@preact/signals';
import { readRun, readTrace } from '../api/proofClient';
import type { PossibleChannel, RecordedChannel } from '../api/proofTypes';
import { Pyramid } from '../lib/pyramid';
import type { Span } from '../lib/span';
import { troubleOf, type Trouble } from './trouble';

/** One channel of a recording, ready to be drawn. */
export interface Recorded {
  readonly channel: string;
  readonly unit: string;
  readonly time_s: Float64Array;
  readonly line: Pyramid;
}

const NOTHING: Span = { from: 0, to: 1 };

/** What is shown of one recording: a stretch of time, the same for all its plots, and its channels as recorded. */
export class TraceDesk {
  readonly whole: Signal<Span> = signal(NOTHING);
  readonly span: Signal<Span> = signal(NOTHING);
  readonly pointed: Signal<number | null> = signal(null);
  readonly channels: Signal<readonly RecordedChannel[]> = signal([]);
  readonly possible: Signal<readonly PossibleChannel[]> = signal([]);
  readonly shown: Signal<readonly string[]> = signal([]);
  readonly read: Signal<readonly Recorded[]> = signal([]);
  readonly trouble: Signal<Trouble | null> = signal(null);

  private known = false;

  constructor(readonly run: string) {}

  /** Asks which channels there are. */
  async open(show: readonly string[]): Promise<void> {
    try {
      const run = await readRun(this.run);
      this.channels.value = run.recording?.channels ?? [];
      this.possible.value = run.possible;
      for (const channel of show.filter((c) => this.channels.value.some((known) => known.channel === c))) {
        void this.show(channel, true);
      }
      this.trouble.value = null;
    } catch (reason) {
      this.trouble.value = troubleOf(reason, () => void this.open(show));
    }
  }

  async show(channel: string, on: boolean): Promise<void> {
    this.shown.value = on ? [...this.shown.value.filter((c) => c !== channel), channel] : this.shown.value.filter((c) => c !== channel);
    if (!on || this.read.value.some((r) => r.channel === channel)) {
      return;
    }
    try {
      const { unit, time_s, values } = await readTrace(this.run, channel);
      this.reach(time_s);
      this.read.value = [...this.read.value.filter((r) => r.channel !== channel), { channel, unit, time_s, line: new Pyramid(values) }];
      this.trouble.value = null;
    } catch (reason) {
      this.shown.value = this.shown.value.filter((c) => c !== channel);
      this.trouble.value = troubleOf(reason, () => void this.show(channel, true));
    }
  }

  /** The whole reaches as far as anything drawn; who sees the whole goes on seeing it. */
  reach(time_s: ArrayLike<number>): void {
    const [from, to] = [time_s[0], time_s[time_s.length - 1]];
    if (from === undefined || to === undefined) {
      return;
    }
    const old = this.whole.peek();
    const all = this.span.peek().from === old.from && this.span.peek().to === old.to;
    this.whole.value = this.known ? { from: Math.min(old.from, from), to: Math.max(old.to, to) } : { from, to: Math.max(to, from + 1) };
    this.known = true;
    if (all) {
      this.span.value = this.whole.value;
    }
  }

  title(channel: string): string {
    return this.possible.value.find((p) => p.channel === channel)?.title ?? channel.replaceAll('_', ' ');
  }
}
