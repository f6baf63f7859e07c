import type { Job } from '../api/proofTypes';

export const underWay = (job: Job): boolean => job.state === 'waiting' || job.state === 'running';

/** The later word of two about one job: one that is over stays so, whatever arrives after that. */
const later = (known: Job | undefined, told: Job): Job => (known && !underWay(known) && underWay(told) ? known : told);

/** A job as told; one that is new goes to the front. */
export function withJob(all: readonly Job[], job: Job): readonly Job[] {
  const known = all.find((j) => j.id === job.id);
  return known ? all.map((j) => (j.id === job.id ? later(known, job) : j)) : [job, ...all];
}

/** All jobs as the server listed them. The list may be older than what was told while it was on its way; a job it does not have is gone. */
export const withList = (all: readonly Job[], list: readonly Job[]): readonly Job[] =>
  list.map((job) => later(all.find((j) => j.id === job.id), job));
