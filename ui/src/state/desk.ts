import { computed, signal, type ReadonlySignal, type Signal } from '@preact/signals';
import { readBuild, tryChanges } from '../api/client';
import type { Answer, Build, Finding, GoodAnswer, Stack } from '../api/types';
import type { Changes } from '../lib/history';
import { Latest } from '../lib/latest';
import { drawable, laidOver } from '../lib/parts';
import { inChosen, turnedValues, type TurnedValues } from '../lib/turned';
import { chosenUnits } from './settings';
import { listed, SheetDesk } from './sheetDesk';
import { troubleOf } from './trouble';

/** An answer that takes longer than this, in ms, is waited for in words. */
const LONG = 500;

/** One build on the desk: the saved sheet, what is changed against it and what the server says to that. */
export class Desk extends SheetDesk<Build> {
  readonly good: Signal<GoodAnswer | null> = signal(null);
  readonly findings: Signal<readonly Finding[]> = signal([]);
  readonly inOrder: Signal<boolean> = signal(true);
  readonly waiting: Signal<boolean> = signal(false);
  readonly chosen: Signal<string | null> = signal(null);
  readonly comparing: Signal<boolean> = signal(false);

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

  constructor(id: string) {
    super(id, id);
  }

  /** A value of the sheet, or one that is to stand there, in the units that were chosen. */
  inChosenUnits(key: string, typed: string): string {
    return inChosen(this.turned.value, key, typed, chosenUnits.value);
  }

  protected override readSheet(): Promise<Build> {
    return readBuild(this.id);
  }

  protected override savedValue(key: string): string | undefined {
    return this.saved.value.get(key);
  }

  protected override changed(): void {
    this.await(true);
    this.tries.ask(this.changes.value);
  }

  protected override refused(findings: readonly Finding[]): void {
    this.take({ in_order: false, findings });
  }

  protected override rest(): void {
    const build = this.build.value;
    this.tries.forget();
    this.await(false);
    this.findings.value = build?.findings ?? [];
    this.inOrder.value = build?.answer?.in_order ?? false;
    this.good.value = build?.answer?.in_order ? build.answer : null;
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

  private take(answer: Answer): void {
    this.findings.value = answer.findings;
    this.inOrder.value = answer.in_order;
    if (answer.in_order) {
      this.good.value = answer;
    }
  }
}
