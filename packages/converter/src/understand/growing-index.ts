/** A growing list of whole numbers from 0 to 2^32 - 1: four bytes each. */
export class GrowingIndex {
  items = new Uint32Array(64);
  length = 0;

  push(value: number): void {
    if (this.length === this.items.length) this.reserve(1);
    this.items[this.length++] = value;
  }

  at(index: number): number {
    return this.items[index]!;
  }

  /** Makes room for more items. */
  reserve(more: number): void {
    const least = this.length + more;
    if (least <= this.items.length) return;
    const items = new Uint32Array(Math.max(least, Math.ceil(this.items.length * 1.5)));
    items.set(this.items);
    this.items = items;
  }

  /** Adds first, first + 1, … */
  pushRun(first: number, count: number): void {
    this.reserve(count);
    for (let i = 0; i < count; i++) this.items[this.length + i] = first + i;
    this.length += count;
  }

  /** The numbers as they are now. */
  view(): Uint32Array {
    return this.items.subarray(0, this.length);
  }
}
