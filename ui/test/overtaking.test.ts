import { describe, expect, it } from 'vitest';
import { Overtaking } from '../src/lib/overtaking';

interface Pending {
  readonly question: number;
  readonly piece: (piece: string) => void;
  readonly end: () => void;
  readonly fail: () => void;
  readonly stop: AbortSignal;
}

/** Two pieces are enough. */
function bench() {
  const sent: Pending[] = [];
  const told: string[] = [];
  const ended: [number, boolean][] = [];
  const failures: unknown[] = [];
  const overtaking = new Overtaking<number, string>(
    (question, piece, stop) => new Promise((resolve, reject) => {
      stop.addEventListener('abort', () => reject(new Error('stopped')));
      sent.push({ question, piece, end: resolve, fail: () => reject(new Error('gone')), stop });
    }),
    (piece, question) => {
      told.push(`${question}${piece}`);
      return piece === 'b';
    },
    (question, isLast) => ended.push([question, isLast]),
    (reason) => failures.push(reason),
  );
  return { sent, told, ended, failures, overtaking };
}

const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

describe('overtaking', () => {
  it('lets a question under way tell enough before the latest takes its place', async () => {
    const { sent, told, ended, overtaking } = bench();
    [1, 2, 3].forEach((q) => overtaking.ask(q));
    expect(sent.map((s) => s.question)).toEqual([1]);
    sent[0]?.piece('a');
    await settled();
    expect(sent).toHaveLength(1);
    sent[0]?.piece('b');
    await settled();
    expect(sent.map((s) => s.question)).toEqual([1, 3]);
    expect(sent[0]?.stop.aborted).toBe(true);
    sent[0]?.piece('c');
    sent[1]?.piece('a');
    sent[1]?.end();
    await settled();
    expect(told).toEqual(['1a', '1b', '3a']);
    expect(ended).toEqual([[3, true]]);
  });

  it('is overtaken at once when enough was told already', async () => {
    const { sent, overtaking } = bench();
    overtaking.ask(1);
    sent[0]?.piece('b');
    overtaking.ask(2);
    await settled();
    expect(sent.map((s) => s.question)).toEqual([1, 2]);
  });

  it('drops what is no longer asked and goes on after it', async () => {
    const { sent, told, failures, overtaking } = bench();
    overtaking.ask(1);
    overtaking.forget();
    sent[0]?.piece('a');
    await settled();
    overtaking.ask(2);
    sent[1]?.piece('a');
    await settled();
    expect(told).toEqual(['2a']);
    expect(failures).toEqual([]);
  });

  it('tells a failure only of the latest', async () => {
    const { sent, failures, overtaking } = bench();
    overtaking.ask(1);
    overtaking.ask(2);
    sent[0]?.fail();
    await settled();
    expect(failures).toEqual([]);
    sent[1]?.fail();
    await settled();
    expect(failures).toHaveLength(1);
  });
});
