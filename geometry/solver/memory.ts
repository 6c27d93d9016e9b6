/** Values kept from one solve to the next for as long as they would be made from the very same things. */

interface Entry<T> {
  readonly inputs: readonly unknown[];
  readonly value: T;
}

/** Kept by id; a value is made anew when one of its inputs is another object, and forgotten when not asked for. */
export class Memory<T> {
  private before = new Map<string, Entry<T>>();
  private now = new Map<string, Entry<T>>();

  /** `make` must depend on nothing but the inputs. */
  recall(id: string, inputs: readonly unknown[], make: () => T): T {
    const known = this.before.get(id);
    if (known && sameEntries(known.inputs, inputs)) {
      this.now.set(id, known);
      return known.value;
    }
    const value = make();
    this.now.set(id, { inputs, value });
    return value;
  }

  /** To be called once all values of a solve have been asked for. */
  endRound(): void {
    this.before = this.now;
    this.now = new Map();
  }
}

function sameEntries(a: readonly unknown[], b: readonly unknown[]): boolean {
  if (a.length !== b.length) return false;
  for (let index = 0; index < a.length; index++) if (a[index] !== b[index]) return false;
  return true;
}
