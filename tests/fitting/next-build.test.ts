import { describe, expect, it } from "vitest";
import { nextBuild } from "../../src/fitting/next-build.ts";

describe("nextBuild(candidates, better)", () => {
  it("gives every build three shots first, in order", () => {
    expect(
      nextBuild(
        [
          { n: 3, mean: 1, sd: 1 },
          { n: 2, mean: 9, sd: 1 },
          { n: 2, mean: 5, sd: 1 },
        ],
        "high",
      ),
    ).toBe(1);
    expect(
      nextBuild(
        [
          { n: 0, mean: 0, sd: null },
          { n: 0, mean: 0, sd: null },
        ],
        "high",
      ),
    ).toBe(0);
  });

  // Chen, Lin, Yücesan and Chick 2000: shares go with (s_i / d_i)^2, so a close rival gets more than a far one.
  it("spends on the close rival rather than the far one", () => {
    const counts = [10, 10, 10];
    const means = [160, 158, 140];
    for (let shot = 0; shot < 30; shot++) {
      const next = nextBuild(
        counts.map((n, i) => ({ n, mean: means[i]!, sd: 4 })),
        "high",
      ) as number;
      counts[next]! += 1;
    }
    expect(counts[1]!).toBeGreaterThan(counts[2]! + 8);
    expect(counts[0]!).toBeGreaterThan(counts[2]!);
  });

  it("comes to the published shares when many shots are spent", () => {
    // Two rivals at distances 1 and 2 with one spread: shares 4 : 1, and the best one sqrt(4^2 + 1) = 4.123.
    const counts = [50, 50, 50];
    const means = [10, 9, 8];
    for (let shot = 0; shot < 5000; shot++) {
      const next = nextBuild(
        counts.map((n, i) => ({ n, mean: means[i]!, sd: 1 })),
        "high",
      ) as number;
      counts[next]! += 1;
    }
    expect(counts[1]! / counts[2]!).toBeCloseTo(4, 1);
    expect(counts[0]! / counts[1]!).toBeCloseTo(Math.sqrt(17) / 4, 1);
  });

  it("looks at the lowest when low is better", () => {
    const counts = [
      { n: 6, mean: 3, sd: 1 },
      { n: 6, mean: 3.2, sd: 1 },
      { n: 6, mean: 9, sd: 1 },
    ];
    expect([0, 1]).toContain(nextBuild(counts, "low"));
  });

  it("says why there is nothing to choose", () => {
    expect(nextBuild([{ n: 3, mean: 1, sd: 1 }], "high")).toMatchObject({ kind: "invalid" });
    expect(
      nextBuild(
        [
          { n: 3, mean: 1, sd: 0 },
          { n: 3, mean: 1, sd: 0 },
        ],
        "high",
      ),
    ).toMatchObject({ kind: "unavailable" });
  });
});
