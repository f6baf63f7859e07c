import { describe, expect, it } from 'vitest';
import { Latest } from '../src/lib/latest';

interface Pending {
  readonly question: number;
  readonly answer: () => void;
  readonly fail: () => void;
}

function bench() {
  const sent: Pending[] = [];
  const answers: [number, boolean][] = [];
  const failures: unknown[] = [];
  const latest = new Latest<number, number>(
    (question) => new Promise((resolve, reject) => {
      sent.push({ question, answer: () => resolve(question * 10), fail: () => reject(new Error('gone')) });
    }),
    (answer, _, isLast) => answers.push([answer, isLast]),
    (reason) => failures.push(reason),
  );
  return { sent, answers, failures, latest };
}

const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

describe('latest', () => {
  it('has one question under way and sends only the latest of the rest', async () => {
    const { sent, answers, latest } = bench();
    [1, 2, 3, 4].forEach((q) => latest.ask(q));
    expect(sent.map((s) => s.question)).toEqual([1]);
    sent[0]?.answer();
    await settled();
    expect(sent.map((s) => s.question)).toEqual([1, 4]);
    sent[1]?.answer();
    await settled();
    expect(answers).toEqual([[10, false], [40, true]]);
  });

  it('drops an answer to what is no longer asked', async () => {
    const { sent, answers, latest } = bench();
    latest.ask(1);
    latest.forget();
    latest.ask(2);
    sent[0]?.answer();
    await settled();
    sent[1]?.answer();
    await settled();
    expect(answers).toEqual([[20, true]]);
  });

  it('goes on after a failure and tells only of the last', async () => {
    const { sent, answers, failures, latest } = bench();
    latest.ask(1);
    latest.ask(2);
    sent[0]?.fail();
    await settled();
    expect(failures).toEqual([]);
    sent[1]?.answer();
    await settled();
    expect(answers).toEqual([[20, true]]);
    latest.ask(3);
    sent[2]?.fail();
    await settled();
    expect(failures).toHaveLength(1);
  });
});
