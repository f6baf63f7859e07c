/**
 * Sends one question at a time. What is asked meanwhile waits, and only the latest of it is sent; answers to what was
 * asked before `forget` are dropped.
 */
export class Latest<Q, A> {
  private waiting: { readonly question: Q } | null = null;
  private running = false;
  private age = 0;

  constructor(
    private readonly send: (question: Q) => Promise<A>,
    private readonly answered: (answer: A, question: Q, isLast: boolean) => void,
    private readonly failed: (reason: unknown) => void,
  ) {}

  ask(question: Q): void {
    this.waiting = { question };
    if (!this.running) {
      void this.run();
    }
  }

  forget(): void {
    this.waiting = null;
    this.age++;
  }

  private async run(): Promise<void> {
    this.running = true;
    while (this.waiting) {
      const { question } = this.waiting;
      const age = this.age;
      this.waiting = null;
      try {
        const answer = await this.send(question);
        if (age === this.age) {
          this.answered(answer, question, this.waiting === null);
        }
      } catch (reason) {
        if (age === this.age && this.waiting === null) {
          this.failed(reason);
        }
      }
    }
    this.running = false;
  }
}
