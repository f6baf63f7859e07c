import { computed, effect, signal, type ReadonlySignal, type Signal } from '@preact/signals';
import { readResult, startJob } from '../api/proofClient';
import type { Job, StudyWish } from '../api/proofTypes';
import { sentence } from './desk';
import { followJobs, jobs, withJob } from './jobs';

/** One question to the server that takes a while, and its last answer. */
export class Work<T> {
  readonly result: Signal<T | null> = signal(null);
  readonly trouble: Signal<string | null> = signal(null);
  private readonly asked: Signal<string | null> = signal(null);
  private fetched: string | null = null;

  readonly job: ReadonlySignal<Job | undefined> = computed(() => jobs.value.find((j) => j.id === this.asked.value));

  constructor(private readonly wish: StudyWish) {}

  /** Fetches answers as they come until the answer to this call is called. */
  follow(): () => void {
    followJobs();
    return effect(() => {
      const job = this.job.value;
      if (job?.state === 'done' && this.fetched !== job.id) {
        this.fetched = job.id;
        void this.fetch(job.id);
      }
    });
  }

  async ask(): Promise<void> {
    try {
      const job = await startJob(this.wish);
      jobs.value = withJob(jobs.value, job);
      this.asked.value = job.id;
      this.trouble.value = null;
    } catch (reason) {
      this.trouble.value = sentence(reason);
    }
  }

  private async fetch(id: string): Promise<void> {
    try {
      this.result.value = await readResult<T>(id);
    } catch (reason) {
      this.trouble.value = sentence(reason);
    }
  }
}
