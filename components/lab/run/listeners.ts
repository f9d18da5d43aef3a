/** Those who want to be told of something. */
export class Listeners {
  private readonly all = new Set<() => void>();

  /** Until what it returns is called. */
  readonly add = (listener: () => void): (() => void) => {
    this.all.add(listener);
    return () => {
      this.all.delete(listener);
    };
  };

  tell(): void {
    for (const listener of this.all) listener();
  }
}
