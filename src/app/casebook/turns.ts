/** Work that is done one after the other for one id, and side by side for several. */
export class Turns {
  readonly #last = new Map<string, Promise<unknown>>();

  /** Does the work once everything of this id before it has ended, well or badly. */
  take<T>(id: string, work: () => Promise<T>): Promise<T> {
    const before = this.#last.get(id) ?? Promise.resolve();
    const mine = before.then(work, work);
    const settled = mine.catch(() => undefined);
    this.#last.set(id, settled);
    settled.then(() => {
      if (this.#last.get(id) === settled) this.#last.delete(id);
    });
    return mine;
  }

  /** Something of this id is under way. */
  taken(id: string): boolean {
    return this.#last.has(id);
  }

  /** When everything that was under way has ended. */
  async over(): Promise<void> {
    await Promise.all(this.#last.values());
  }
}
