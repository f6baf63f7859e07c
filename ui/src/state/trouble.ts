import { AwayError, ServerError } from '../api/client';
import { hearing, listen } from './events';

/** Why something failed, and the same once more. */
export interface Trouble {
  readonly message: string;
  /** The server did not answer: what failed is done again by itself when it is back. */
  readonly away: boolean;
  readonly again: () => void;
}

/** Before something is tried again while the line to the server seems to be there, in ms. */
const PAUSE = 3000;

export function sentence(reason: unknown): string {
  return reason instanceof ServerError ? reason.message : `The page failed: ${String(reason)}`;
}

export function troubleOf(reason: unknown, again: () => void): Trouble {
  return { message: sentence(reason), away: reason instanceof AwayError, again };
}

/** Calls once when the server is heard again; the answer takes that back. */
export function whenBack(again: () => void): () => void {
  if (hearing.peek()) {
    const timer = window.setTimeout(again, PAUSE);
    return () => window.clearTimeout(timer);
  }
  return listen('joined', again);
}
