import { signal } from '@preact/signals';
import { cancelJob, readJobs, startJob } from '../api/proofClient';
import type { Job, ProveWish } from '../api/proofTypes';
import { listen } from './events';
import { troubleOf, type Trouble } from './trouble';

/** Newest first; the same on every page of the shop. */
export const jobs = signal<readonly Job[]>([]);
export const jobTrouble = signal<Trouble | null>(null);
/** How often all jobs were read: after that, one that is not among them is gone. */
export const readAnew = signal(0);

export const underWay = (job: Job): boolean => job.state === 'waiting' || job.state === 'running';

/** A job as told; one that is new goes to the front. An older word that comes late does not put one back that is over. */
export function withJob(all: readonly Job[], job: Job): readonly Job[] {
  const known = all.find((j) => j.id === job.id);
  if (known && !underWay(known) && underWay(job)) {
    return all;
  }
  return known ? all.map((j) => (j.id === job.id ? job : j)) : [job, ...all];
}

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
    jobs.value = await readJobs();
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
