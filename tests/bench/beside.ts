/** Medians of one run: two ways of doing the same work, taken in turn so that a busy machine slows both. */
export interface Beside {
  /** Own time over the other's. */
  readonly ratio: number;
  readonly ownMs: number;
  readonly otherMs: number;
  readonly rounds: number;
}

/** Times both after one warm-up each; the order changes from round to round, as one leaves rubbish for the other. */
export function beside(own: () => unknown, other: () => unknown, rounds = 9): Beside {
  own();
  other();
  const ownTimes: number[] = [];
  const otherTimes: number[] = [];
  for (let round = 0; round < rounds; round++) {
    if (round % 2 === 0) ownTimes.push(milliseconds(own));
    otherTimes.push(milliseconds(other));
    if (round % 2 === 1) ownTimes.push(milliseconds(own));
  }
  const [ownMs, otherMs] = [median(ownTimes), median(otherTimes)];
  return { ratio: shown(ownMs / otherMs), ownMs: shown(ownMs), otherMs: shown(otherMs), rounds };
}

/** Processor time of this process, which other work on the machine adds nothing to. */
export function milliseconds(work: () => unknown): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

export function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1]!;
}

/** To three digits. */
export function shown(value: number): number {
  return Number(value.toPrecision(3));
}
