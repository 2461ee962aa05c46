/**
 * The integral of several functions of one variable at once, from the first to the last of `breaks`. The functions
 * come together, as one function that answers a list, because the chances of all builds share most of their work.
 *
 * Each panel between two breaks is measured with Kronrod's 15 points and with the 7 Gauss points among them; the
 * panel on which the two disagree most is halved until the disagreement sums to less than `tolerance` of the
 * largest integral (globally adaptive quadrature: Piessens, de Doncker, Ueberhuber and Kahaner 1983, QUADPACK,
 * routines QAG and QK15). The disagreement overstates the error by orders of magnitude for smooth functions. No
 * random numbers: the same question has the same answer. Breaks belong where the functions bend.
 */
export function integrate(
  functions: (x: number) => readonly number[],
  breaks: readonly number[],
  tolerance = 1e-10,
): number[] {
  const panels: Panel[] = [];
  for (let i = 1; i < breaks.length; i++) panels.push(measure(functions, breaks[i - 1]!, breaks[i]!));
  // Stryker disable next-line EqualityOperator: a panel more or less of five hundred
  while (panels.length < mostPanels) {
    const total = sumOver(panels);
    const doubt = panels.reduce((sum, panel) => sum + panel.doubt, 0);
    if (!(doubt > tolerance * Math.max(...total.map(Math.abs)))) return total;
    // Stryker disable next-line EqualityOperator: of two equally bad panels either is halved first, and the other next
    const worst = panels.reduce((least, panel, i) => (panel.doubt > panels[least]!.doubt ? i : least), 0);
    const { low, high } = panels[worst]!;
    const middle = (low + high) / 2;
    panels.splice(worst, 1, measure(functions, low, middle), measure(functions, middle, high));
  }
  return sumOver(panels);
}

interface Panel {
  readonly low: number;
  readonly high: number;
  readonly integrals: readonly number[];
  readonly doubt: number;
}

// Far beyond what any integral here takes (below 60); only so that nothing runs for ever.
const mostPanels = 500;

function sumOver(panels: readonly Panel[]): number[] {
  return panels[0]!.integrals.map((_, i) => panels.reduce((sum, panel) => sum + panel.integrals[i]!, 0));
}

function measure(functions: (x: number) => readonly number[], low: number, high: number): Panel {
  const half = (high - low) / 2;
  const middle = (high + low) / 2;
  const centre = functions(middle);
  const kronrod = centre.map((value) => value * kronrodWeights[7]!);
  const gauss = centre.map((value) => value * gaussWeights[3]!);
  for (let i = 0; i < 7; i++) {
    const left = functions(middle - half * nodes[i]!);
    const right = functions(middle + half * nodes[i]!);
    for (let j = 0; j < centre.length; j++) {
      const pair = left[j]! + right[j]!;
      kronrod[j]! += kronrodWeights[i]! * pair;
      if (i % 2 === 1) gauss[j]! += gaussWeights[(i - 1) / 2]! * pair;
    }
  }
  return {
    low,
    high,
    integrals: kronrod.map((sum) => sum * half),
    doubt: half * Math.max(...kronrod.map((sum, j) => Math.abs(sum - gauss[j]!))),
  };
}

// Positive nodes from the outermost in, and their weights; every second node is one of Gauss's (QUADPACK, QK15).
const nodes = [
  0.9914553711208126, 0.9491079123427585, 0.8648644233597691, 0.7415311855993945, 0.5860872354676911,
  0.4058451513773972, 0.2077849550078985,
];
const kronrodWeights = [
  0.02293532201052922, 0.06309209262997854, 0.1047900103222502, 0.1406532597155259, 0.1690047266392679,
  0.1903505780647854, 0.2044329400752989, 0.2094821410847278,
];
const gaussWeights = [0.1294849661688697, 0.2797053914892767, 0.3818300505051189, 0.4179591836734694];
