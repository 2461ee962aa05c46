/** What a mixed model needs of its data: sums over all values, and three over each group. */
export interface GroupSums {
  readonly size: number;
  readonly count: number;
  readonly cross: number[][];
  readonly right: number[];
  readonly square: number;
  readonly logWeights: number;
  readonly meanWeight: number;
  readonly groups: readonly { weight: number; x: number[]; y: number }[];
  /** To be added to the estimates, for the sums are of values less their mean. */
  readonly shift: number[];
  /** Columns that vary within some group. */
  readonly varying: number;
}

/**
 * Sums for a mixed model. Where the design has a column of ones, values count from their mean, so that large levels do
 * not eat the digits of small differences.
 */
export function groupSums(
  y: readonly number[],
  design: readonly (readonly number[])[],
  group: readonly (string | number)[],
  weights?: readonly number[],
): GroupSums {
  const size = design[0]?.length ?? 0;
  const ones = Array.from({ length: size }, (_, i) => i).find((i) => design.every((row) => row[i] === 1));
  const centre = ones === undefined ? 0 : y.reduce((sum, value) => sum + value, 0) / y.length;
  const cross = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const right = new Array<number>(size).fill(0);
  const groups = new Map<
    string | number,
    { weight: number; x: number[]; y: number; first: readonly number[] }
  >();
  const varies = new Set<number>();
  let [square, logWeights, total] = [0, 0, 0];
  for (const [n, row] of design.entries()) {
    const weight = weights?.[n] ?? 1;
    const value = y[n]! - centre;
    let own = groups.get(group[n]!);
    if (!own) {
      own = { weight: 0, x: new Array<number>(size).fill(0), y: 0, first: row };
      groups.set(group[n]!, own);
    }
    own.weight += weight;
    own.y += weight * value;
    square += weight * value * value;
    logWeights += Math.log(weight);
    total += weight;
    for (let i = 0; i < size; i++) {
      if (row[i] !== own.first[i]) varies.add(i);
      own.x[i]! += weight * row[i]!;
      right[i]! += weight * row[i]! * value;
      for (let j = 0; j <= i; j++) {
        cross[i]![j]! += weight * row[i]! * row[j]!;
        cross[j]![i] = cross[i]![j]!;
      }
    }
  }
  return {
    size,
    count: y.length,
    cross,
    right,
    square,
    logWeights,
    meanWeight: total / y.length,
    groups: [...groups.values()],
    shift: Array.from({ length: size }, (_, i) => (i === ones ? centre : 0)),
    varying: varies.size,
  };
}
