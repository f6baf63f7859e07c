import type { Job } from '../api/proofTypes';

export const underWay = (job: Job): boolean => job.state === 'waiting' || job.state === 'running';

/** The later word of two about one job: one that is over stays so, whatever arrives after that. */
const later = (known: Job | undefined, told: Job): Job => (known && !underWay(known) && underWay(told) ? known : told);

/** A job as told; one that is new goes to the front. */
export function withJob(all: readonly Job[], job: Job): readonly Job[] {
  const known = all.find((j) => j.id === job.id);
  return known ? all.map((j) => (j.id === job.id ? later(known, job) : j)) : [job, ...all];
}

/**
 * All jobs as the server listed them. What was told while the list was on its way may be later than the list: jobs that came since then stay, those
 * that ended since then have ended. One that was there before and is not in the list is gone.
 *
 * @param before as they were when the list was asked for
 */
export function withList(before: readonly Job[], now: readonly Job[], list: readonly Job[]): readonly Job[] {
  const listed = list.map((job) => later(now.find((j) => j.id === job.id), job));
  const has = (jobs: readonly Job[], job: Job): boolean => jobs.some((j) => j.id === job.id);
  return [...now.filter((job) => !has(before, job) && !has(list, job)), ...listed];
}
