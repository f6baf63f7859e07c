import { computed, effect, signal, type ReadonlySignal, type Signal } from '@preact/signals';
import { readResult, startJob } from '../api/proofClient';
import type { Job, StudyWish } from '../api/proofTypes';
import { withJob } from '../lib/jobList';
import { followJobs, jobs, readAnew } from './jobs';
import { troubleOf, type Trouble } from './trouble';

/** One question to the server that takes a while, and its last answer. */
export class Work<T> {
  readonly result: Signal<T | null> = signal(null);
  readonly trouble: Signal<Trouble | null> = signal(null);
  private readonly asked: Signal<string | null> = signal(null);
  private fetched: string | null = null;

  readonly job: ReadonlySignal<Job | undefined> = computed(() => jobs.value.find((j) => j.id === this.asked.value));

  /**
   * @param wish what is asked, at the moment it is asked
   * @param shared whether the newest of its kind is taken over, whoever asked for it
   */
  constructor(private readonly wish: () => StudyWish, private readonly shared = false) {}

  /** Fetches answers as they come until the answer to this call is called. */
  follow(): () => void {
    followJobs();
    const lost = effect(() => {
      // Work does not outlive the server: one that was started anew is asked again.
      if (readAnew.value > 0 && this.asked.peek() !== null && this.job.peek() === undefined && this.result.peek() === null) {
        void this.ask();
      }
    });
    const adopted = effect(() => {
      const { kind, build } = this.wish();
      const newest = this.shared ? jobs.value.find((j) => j.kind === kind && j.build === build) : undefined;
      if (newest) {
        this.asked.value = newest.id;
      }
    });
    const fetched = effect(() => {
      const job = this.job.value;
      if (job?.state === 'done' && this.fetched !== job.id) {
        this.fetched = job.id;
        void this.fetch(job.id);
      }
    });
    return () => {
      lost();
      adopted();
      fetched();
    };
  }

  async ask(): Promise<void> {
    try {
      const job = await startJob(this.wish());
      jobs.value = withJob(jobs.value, job);
      this.asked.value = job.id;
      this.trouble.value = null;
    } catch (reason) {
      this.trouble.value = troubleOf(reason, () => void this.ask());
    }
  }

  private async fetch(id: string): Promise<void> {
    try {
      this.result.value = await readResult<T>(id);
    } catch (reason) {
      this.trouble.value = troubleOf(reason, () => void this.ask());
    }
  }
}
