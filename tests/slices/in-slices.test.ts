import { describe, expect, it } from "vitest";
import { atOnce } from "../../src/slices/at-once.ts";
import { inSlices } from "../../src/slices/in-slices.ts";
import { partOf } from "../../src/slices/part-of.ts";

/** Ten steps, each of so many milliseconds that the processor is held. */
function* tenSteps(milliseconds: number): Generator<number, string> {
  for (let step = 1; step <= 10; step++) {
    const until = performance.now() + milliseconds;
    while (performance.now() < until);
    yield step / 10;
  }
  return "done";
}

describe("work in slices", () => {
  it("lets others have their turn while it goes on, and tells each time how far it is", async () => {
    const shares: number[] = [];
    let turns = 0;
    const timer = setInterval(() => turns++, 0);
    expect(await inSlices(tenSteps(40), (share) => shares.push(share))).toBe("done");
    clearInterval(timer);
    // A step is longer than a slice, so each ends one.
    expect(shares).toEqual([0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1]);
    expect(turns).toBeGreaterThan(5);
  });

  it("takes small steps together, so that little work is done without a pause", async () => {
    const shares: number[] = [];
    expect(await inSlices(tenSteps(0), (share) => shares.push(share))).toBe("done");
    expect(shares.length).toBeLessThan(10);
  });

  it("answers null once it was stopped, and does no step more", async () => {
    const stop = new AbortController();
    const shares: number[] = [];
    const told = (share: number) => {
      shares.push(share);
      if (share >= 0.3) stop.abort();
    };
    expect(await inSlices(tenSteps(40), told, stop.signal)).toBeNull();
    expect(shares).toEqual([0.1, 0.2, 0.3]);
  });

  it("does nothing at all where it was stopped before it began", async () => {
    const begun: number[] = [];
    function* work(): Generator<number, string> {
      begun.push(1);
      yield 1;
      return "done";
    }
    expect(await inSlices(work(), undefined, AbortSignal.abort())).toBeNull();
    expect(begun).toEqual([]);
  });

  it("comes to the same in one go, and its shares fit into longer work", () => {
    expect(atOnce(tenSteps(0))).toBe("done");
    const part = partOf(tenSteps(0), 0.5, 0.75);
    expect([...part]).toEqual([0.525, 0.55, 0.575, 0.6, 0.625, 0.65, 0.675, 0.7, 0.725, 0.75]);
    expect(atOnce(partOf(tenSteps(0), 0, 1))).toBe("done");
  });
});
