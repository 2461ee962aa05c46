/** A stream of random numbers that a seed repeats. */
export interface SeededRandom {
  /** Evenly spread from 0 to just below 1, 53 bits. */
  uniform(): number;
  /** Standard normal. */
  normal(): number;
}

/**
 * Random numbers for simulations, and for the few places where quadrature does not reach: the same seed gives the
 * same numbers everywhere. The generator is xoshiro128** (Blackman and Vigna 2021, ACM Transactions on Mathematical
 * Software 47, 36), its state filled from the seed by a mixer of the splitmix kind (Steele, Lea and Flood 2014);
 * normal values by Marsaglia's polar method (Marsaglia and Bray 1964, SIAM Review 6, 260-264).
 */
export function seededRandom(seed: number): SeededRandom {
  const next = xoshiro128(fillState(seed));
  const uniform = () => ((next() >>> 5) * 2 ** 26 + (next() >>> 6)) / 2 ** 53;
  let spare: number | undefined;
  const normal = (): number => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const square = x * x + y * y;
      // Stryker disable next-line EqualityOperator: one draw in 2^53 lies on the rim
      if (square >= 1 || square === 0) continue;
      const stretch = Math.sqrt((-2 * Math.log(square)) / square);
      spare = y * stretch;
      return x * stretch;
    }
  };
  return { uniform, normal };
}

/** The bare generator: whole numbers from 0 to 2^32 - 1 from a state of four, which must not all be 0. */
export function xoshiro128(state: Uint32Array): () => number {
  const s = Uint32Array.from(state);
  return () => {
    const result = Math.imul(rotate(Math.imul(s[1]!, 5), 7), 9) >>> 0;
    const shifted = s[1]! << 9;
    s[2]! ^= s[0]!;
    s[3]! ^= s[1]!;
    s[1]! ^= s[2]!;
    s[0]! ^= s[3]!;
    s[2]! ^= shifted;
    s[3] = rotate(s[3]!, 11);
    return result;
  };
}

function rotate(x: number, by: number): number {
  return (x << by) | (x >>> (32 - by));
}

function fillState(seed: number): Uint32Array {
  let counter = Math.floor(seed) >>> 0;
  return Uint32Array.from({ length: 4 }, () => {
    counter = (counter + 0x9e3779b9) >>> 0;
    let mixed = Math.imul(counter ^ (counter >>> 16), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    return (mixed ^ (mixed >>> 16)) >>> 0;
  });
}
