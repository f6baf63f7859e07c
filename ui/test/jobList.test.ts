import { describe, expect, it } from 'vitest';
import type { Job } from '../src/api/proofTypes';
import { withJob, withList } from '../src/lib/jobList';

const job = (id: string, state: Job['state'], share = 0): Job =>
  ({ id, kind: 'intervals', build: 'heron', state, what: null, share, running_s: 0, findings: [], message: null });

describe('the jobs of a shop', () => {
  it('takes a new one to the front and a known one in its place', () => {
    const two = withJob(withJob([], job('a', 'waiting')), job('b', 'waiting'));
    expect(two.map((j) => j.id)).toEqual(['b', 'a']);
    expect(withJob(two, job('a', 'running', 0.5))).toEqual([job('b', 'waiting'), job('a', 'running', 0.5)]);
  });

  it('is not set back by a word or a list that was on its way when it ended', () => {
    const ended = [job('a', 'done', 1)];
    expect(withJob(ended, job('a', 'running', 0.9))).toEqual(ended);
    const before = [job('a', 'running', 0.5)];
    expect(withList(before, ended, [job('b', 'waiting'), job('a', 'running', 0.9)])).toEqual([job('b', 'waiting'), job('a', 'done', 1)]);
  });

  it('keeps what came while the list was on its way, and an answer that comes later still does not set it back', () => {
    const told = withJob([], job('a', 'done', 1));
    const read = withList([], told, []);
    expect(read).toEqual([job('a', 'done', 1)]);
    expect(withJob(read, job('a', 'waiting'))).toEqual([job('a', 'done', 1)]);
  });

  it('is else what the server listed, without those it does not have any more', () => {
    const known = [job('b', 'running'), job('a', 'done', 1)];
    expect(withList(known, known, [job('b', 'failed')])).toEqual([job('b', 'failed')]);
  });
});
