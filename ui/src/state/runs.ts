import { signal } from '@preact/signals';
import { readRuns, upload } from '../api/proofClient';
import type { Remark, Run } from '../api/proofTypes';
import { bytes } from '../lib/said';
import { listen } from './events';
import { troubleOf, type Trouble } from './trouble';

/** One file on its way to the shop, or why it was not taken. */
export interface Sending {
  readonly number: number;
  readonly file: string;
  readonly share: number;
  readonly state: 'waiting' | 'going' | 'taken' | 'refused';
  readonly message: string;
  readonly findings: readonly Remark[];
}

export const runs = signal<readonly Run[] | null>(null);
export const runsTrouble = signal<Trouble | null>(null);
/** Of a recording as it is sent, in bytes; not known before the list was read. */
let largest = Infinity;
export const sendings = signal<readonly Sending[]>([]);

const stops = new Map<number, AbortController>();
let count = 0;
let line: Promise<void> = Promise.resolve();

export async function loadRuns(): Promise<void> {
  try {
    const answer = await readRuns();
    runs.value = answer.runs;
    largest = answer.largest_bytes;
    runsTrouble.value = null;
  } catch (reason) {
    runsTrouble.value = troubleOf(reason, () => void loadRuns());
  }
}

let followed = false;

/** Keeps the list as the shop has it, from the first call on. */
export function followRuns(): void {
  if (followed) {
    return;
  }
  followed = true;
  listen('runs', () => void loadRuns());
  listen('joined', () => void loadRuns());
}

function now(number: number, part: Partial<Sending>): void {
  sendings.value = sendings.value.map((s) => (s.number === number ? { ...s, ...part } : s));
}

/** One after the other, so that each goes as fast as it can; `taken` hears of each that was. */
export function send(files: readonly File[], taken: (run: Run) => void): void {
  for (const file of files) {
    const number = ++count;
    const stop = new AbortController();
    stops.set(number, stop);
    sendings.value = [...sendings.value, { number, file: file.name, share: 0, state: 'waiting', message: '', findings: [] }];
    line = line.then(async () => {
      if (stop.signal.aborted) {
        now(number, { state: 'refused', message: 'Stopped; nothing was taken.' });
        return;
      }
      if (file.size > largest) {
        now(number, { state: 'refused', message: `Not sent: it has ${bytes(file.size)}, at most ${bytes(largest)} are taken. Cut it into runs, or pack it with gzip.` });
        return;
      }
      now(number, { state: 'going' });
      const answer = await upload(file, (share) => now(number, { share }), stop.signal);
      stops.delete(number);
      if (answer.kind === 'taken') {
        now(number, { state: 'taken', share: 1 });
        await loadRuns();
        taken(answer.run);
      } else {
        now(number, { state: 'refused', message: answer.message, findings: answer.findings });
      }
    });
  }
}

export function stopSending(number: number): void {
  stops.get(number)?.abort();
}

export function forgetSending(number: number): void {
  sendings.value = sendings.value.filter((s) => s.number !== number);
}
