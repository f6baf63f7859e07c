/**
 * Asks one question at a time whose answer comes in pieces. A newer question waits until the one under way has told enough to be of use, then
 * overtakes it: while a hand moves, something is always answered, and what is left of an older position is not waited for.
 */
export class Overtaking<Q, P> {
  private waiting: { readonly question: Q } | null = null;
  private running: AbortController | null = null;
  private enough = false;

  /** @param send hands over every piece and ends with the last of them */
  constructor(
    private readonly send: (question: Q, piece: (piece: P) => void, stop: AbortSignal) => Promise<void>,
    private readonly told: (piece: P, question: Q) => boolean,
    private readonly ended: (question: Q, isLast: boolean) => void,
    private readonly failed: (reason: unknown) => void,
  ) {}

  ask(question: Q): void {
    this.waiting = { question };
    if (!this.running) {
      void this.run();
    } else if (this.enough) {
      this.running.abort();
    }
  }

  forget(): void {
    this.waiting = null;
    this.running?.abort();
  }

  private async run(): Promise<void> {
    while (this.waiting) {
      const { question } = this.waiting;
      const stop = new AbortController();
      this.waiting = null;
      this.running = stop;
      this.enough = false;
      try {
        await this.send(question, (piece) => this.take(piece, question, stop), stop.signal);
        if (!stop.signal.aborted) {
          this.ended(question, this.waiting === null);
        }
      } catch (reason) {
        if (!stop.signal.aborted && this.waiting === null) {
          this.failed(reason);
        }
      }
    }
    this.running = null;
  }

  private take(piece: P, question: Q, stop: AbortController): void {
    if (stop.signal.aborted) {
      return;
    }
    this.enough = this.told(piece, question) || this.enough;
    if (this.enough && this.waiting) {
      stop.abort();
    }
  }
}
