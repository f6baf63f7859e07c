import { computed, effect, signal, type ReadonlySignal, type Signal } from '@preact/signals';
import { judge, readSchedule } from '../api/scheduleClient';
import type { Aim, CaseFigures, Conditioning, Curve, Designed, Piece, Question, Report, ScheduleRead, ScheduleValue } from '../api/scheduleTypes';
import type { Finding } from '../api/types';
import { pointsOf, type Point } from '../lib/curve';
import { amount, type Unit } from '../lib/units';
import type { Changes } from '../lib/history';
import { Overtaking } from '../lib/overtaking';
import { listen } from './events';
import { units } from './settings';
import { listed, SheetDesk } from './sheetDesk';
import { troubleOf } from './trouble';
import { Work } from './work';

/** Figures of one case, and of which question they are. */
export interface Row {
  readonly figures: CaseFigures;
  readonly of: number;
}

/** How far the judgement is that is under way. */
export interface Progress {
  readonly told: number;
  readonly cases: number;
}

/** What the compressor's rules do, and with which question. */
export interface Ruled {
  readonly rules: Conditioning;
  readonly findings: readonly Finding[];
  readonly of: number;
}

interface Asked extends Question {
  readonly number: number;
}

const mapOf = (values: readonly ScheduleValue[]): ReadonlyMap<string, string> => new Map(values.map((v) => [v.key, v.typed]));

/** The fan schedule of one build: the saved one, what is changed against it, what that does, and the one that was designed. */
export class ScheduleDesk extends SheetDesk<ScheduleRead> {
  readonly aim: Signal<Aim> = signal('balanced');
  /** Case by case; those of an older question until newer ones come. */
  readonly rows: Signal<readonly (Row | undefined)[]> = signal([]);
  readonly report: Signal<Report | null> = signal(null);
  /** What the saved schedule does. */
  readonly saved: Signal<Report | null> = signal(null);
  readonly findings: Signal<readonly Finding[]> = signal([]);
  /** Null until it is known, and for a vehicle without air conditioning. */
  readonly ruled: Signal<Ruled | null> = signal(null);
  readonly inOrder: Signal<boolean> = signal(true);
  /** Null when nothing is under way. */
  readonly progress: Signal<Progress | null> = signal(null);
  readonly number: Signal<number> = signal(0);
  readonly reported: Signal<number> = signal(0);
  readonly vehicle: Signal<number | null> = signal(null);
  /** Which of the others is held beside the figures. */
  readonly beside: Signal<'sheet' | 'designed'> = signal('sheet');
  readonly design: Work<Designed>;

  readonly savedValues: ReadonlySignal<ReadonlyMap<string, string>> = computed(() => mapOf(this.build.value?.values ?? []));
  readonly designed: ReadonlySignal<Designed | null> = computed(() => {
    const result = this.design.result.value;
    return result && (this.vehicle.value === null || result.vehicle === this.vehicle.value) ? result : null;
  });
  readonly designedValues: ReadonlySignal<ReadonlyMap<string, string>> = computed(() => mapOf(this.designed.value?.values ?? []));
  /** Those the server made of what was sent last and was in order: what is left open may follow from what is changed. */
  private readonly made: Signal<ReadonlyMap<string, string>> = signal(new Map());
  /** Cases there are, and how many of them are enough of an answer to a position the hand has left. */
  private cases = 0;
  private first = 0;
  private readonly page = Math.random().toString(36).slice(2);
  private readonly judging: Overtaking<Asked, Piece>;

  constructor(id: string) {
    super(id, `${id} schedule`);
    this.design = new Work<Designed>(() => ({ kind: 'schedule', build: id, aim: this.aim.value, units: units.value }), true);
    this.judging = new Overtaking(
      ({ number: _, ...question }, piece, stop) => judge(id, question, piece, stop),
      (piece, question) => this.take(piece, question),
      (_, isLast) => this.end(isLast),
      (reason) => {
        this.progress.value = null;
        this.trouble.value = troubleOf(reason, () => this.ask());
      },
    );
  }

  /** Follows the server until the answer is called. */
  follow(): () => void {
    void this.open();
    const asked = effect(() => {
      void units.value;
      void this.aim.value;
      if (this.build.peek()?.in_order) {
        this.saved.value = null;
        this.ask();
      }
    });
    const shown = effect(() => {
      if (this.designed.value) {
        this.beside.value = 'designed';
      }
    });
    const ends = [
      this.design.follow(),
      asked,
      shown,
      listen('sheet', ({ build, version }) => build === this.id && void this.heard(version)),
      listen('joined', () => void this.catchUp()),
    ];
    return () => {
      this.judging.forget();
      ends.forEach((end) => end());
    };
  }

  /** What stands at a key now, in the hand, changed or saved; empty where there is nothing. */
  typed(key: string): string {
    return this.changes.value[key] ?? this.made.value.get(key) ?? this.savedValues.value.get(key) ?? '';
  }

  /** All that is said of the schedule as it stands. */
  said(): readonly Finding[] {
    const ruled = this.ruled.value;
    return this.inOrder.value && ruled?.of === this.reported.value ? [...this.findings.value, ...ruled.findings] : this.findings.value;
  }

  /** A curve as it is drawn: where what was typed cannot be, as it was before. */
  points({ key, unit }: Curve): readonly Point[] {
    return pointsOf(this.typed(key), unit) ?? pointsOf(this.made.value.get(key) ?? '', unit) ?? pointsOf(this.savedValues.value.get(key) ?? '', unit) ?? [];
  }

  /** A single value in a unit of the page; null where there is none to draw. */
  value(key: string, unit: Unit): number | null {
    return amount(this.typed(key), unit) ?? amount(this.made.value.get(key) ?? '', unit);
  }

  /** Everything of the designed schedule in place of what the sheet has. */
  layDesigned(): void {
    const designed = this.designedValues.value;
    const gone = [...this.savedValues.value.keys()].filter((key) => !designed.has(key));
    this.change({ ...Object.fromEntries(designed), ...Object.fromEntries(gone.map((key) => [key, ''])) });
  }

  protected override readSheet(): Promise<ScheduleRead> {
    return readSchedule(this.id);
  }

  protected override savedValue(key: string): string | undefined {
    return this.savedValues.value.get(key);
  }

  protected override changed(): void {
    this.judge(this.changes.value);
  }

  protected override rest(): void {
    this.findings.value = this.build.value?.findings ?? [];
    this.inOrder.value = this.build.value?.in_order ?? false;
    this.made.value = this.savedValues.value;
    if (this.inOrder.value) {
      this.judge({});
    }
  }

  protected override refused(findings: readonly Finding[]): void {
    this.findings.value = findings;
  }

  private judge(changes: Changes): void {
    this.number.value++;
    this.progress.value ??= { told: 0, cases: this.cases };
    this.judging.ask({ page: this.page, aim: this.aim.value, units: units.value, changes: listed(changes), number: this.number.value });
  }

  /** Whether that is enough to go on to a newer question. */
  private take(piece: Piece, question: Asked): boolean {
    if ('in_order' in piece) {
      if (!piece.in_order) {
        this.inOrder.value = false;
        this.findings.value = piece.findings;
        return true;
      }
      this.inOrder.value = true;
      this.trouble.value = null;
      this.made.value = mapOf(piece.values);
      return false;
    }
    if ('cases' in piece) {
      this.vehicle.value = piece.vehicle;
      this.cases = piece.cases;
      this.first = piece.first;
      this.progress.value = { told: 0, cases: piece.cases };
      return false;
    }
    if ('report' in piece) {
      this.takeReport(piece.report, question);
      return true;
    }
    if ('air_conditioning' in piece) {
      this.ruled.value = { rules: piece.air_conditioning, findings: piece.findings, of: question.number };
      return true;
    }
    const rows = [...this.rows.value];
    rows[piece.index] = { figures: piece, of: question.number };
    this.rows.value = rows;
    const told = (this.progress.value?.told ?? 0) + 1;
    this.progress.value = { told, cases: this.cases };
    return told >= this.first;
  }

  private takeReport(report: Report, question: Asked): void {
    this.report.value = report;
    this.reported.value = question.number;
    this.findings.value = report.findings;
    if (question.changes.length === 0) {
      this.saved.value = report;
    }
  }

  private end(isLast: boolean): void {
    if (!isLast) {
      return;
    }
    this.progress.value = null;
    // What the saved schedule does is held beside: it is asked once, after what somebody waits for.
    if (this.saved.value === null && this.inOrder.value && Object.keys(this.changes.value).length > 0) {
      this.baseline();
    }
  }

  private baseline(): void {
    void judge(this.id, { page: `${this.page} saved`, aim: this.aim.value, units: units.value, changes: [] }, (piece) => {
      if ('report' in piece) {
        this.saved.value = piece.report;
      }
    }, new AbortController().signal).catch(() => undefined);
  }
}
