import { ask, AwayError, build, good, sending, sent, ServerError } from './client';
import type { Piece, Question, ScheduleRead } from './scheduleTypes';

export async function readSchedule(id: string): Promise<ScheduleRead> {
  return good(await ask(`${build(id)}/schedule`));
}

/** Hands over what a schedule does piece by piece, as each is found. */
export async function judge(id: string, question: Question, piece: (piece: Piece) => void, stop: AbortSignal): Promise<void> {
  const wish = sending('POST', { ...question, changes: sent(question.changes) });
  const response = await ask(`${build(id)}/schedule/judge`, { ...wish, signal: stop });
  if (!response.ok || !response.body) {
    await good(response);
    return;
  }
  let whole = false;
  for await (const line of lines(response.body)) {
    const told = JSON.parse(line) as Piece;
    whole ||= 'report' in told || ('in_order' in told && !told.in_order);
    piece(told);
  }
  if (!whole && !stop.aborted) {
    throw new ServerError('The judgement ended before it was whole.');
  }
}

async function* lines(body: ReadableStream<Uint8Array>): AsyncGenerator<string> {
  const reader = body.getReader();
  const decoder = new TextDecoder();
  let rest = '';
  for (;;) {
    let read: { done: boolean; value?: Uint8Array | undefined };
    try {
      read = await reader.read();
    } catch {
      throw new AwayError();
    }
    const all = (rest + decoder.decode(read.value, { stream: !read.done })).split('\n');
    rest = read.done ? '' : (all.pop() ?? '');
    yield* all.filter((line) => line !== '');
    if (read.done) {
      return;
    }
  }
}
