import { signal } from '@preact/signals';
import { cancelJob, readJobs, startJob } from '../api/proofClient';
import type { Job, ProveWish } from '../api/proofTypes';
import { withJob, withList } from '../lib/jobList';
import { listen } from './events';
import { troubleOf, type Trouble } from './trouble';

/** Newest first; the same on every page of the shop. */
export const jobs = signal<readonly Job[]>([]);
export const jobTrouble = signal<Trouble | null>(null);
/** How often all jobs were read: after that, one that is not among them is gone. */
export const readAnew = signal(0);

async function asked(question: () => Promise<void>): Promise<void> {
  try {
    await question();
    jobTrouble.value = null;
  } catch (reason) {
    // Work is asked for by a hand, never by itself.
    jobTrouble.value = { ...troubleOf(reason, () => void asked(question)), away: false };
  }
}

export const start = (wish: ProveWish): Promise<void> =>
  asked(async () => {
    jobs.value = withJob(jobs.value, await startJob(wish));
  });

export const cancel = (id: string): Promise<void> =>
  asked(async () => {
    jobs.value = withJob(jobs.value, await cancelJob(id));
  });

async function readAll(): Promise<void> {
  try {
    const before = jobs.value;
    const list = await readJobs();
    jobs.value = withList(before, jobs.value, list);
    readAnew.value++;
    jobTrouble.value = null;
  } catch (reason) {
    jobTrouble.value = troubleOf(reason, () => void readAll());
  }
}

let followed = false;

/** Keeps the jobs as the server has them, from the first call on. */
export function followJobs(): void {
  if (followed) {
    return;
  }
  followed = true;
  listen('job', (job) => {
    jobs.value = withJob(jobs.value, job as Job);
  });
  listen('joined', () => void readAll());
}
