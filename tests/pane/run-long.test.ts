import { afterEach, describe, expect, test, vi } from "vitest";
import { emptyDraft } from "../../src/pane/draft.ts";
import type { LongStep } from "../../src/pane/long-work.ts";
import { runLong, type WorkerSays } from "../../src/pane/run-long.ts";

const { facts, builds, corrections } = emptyDraft("1");
const ORDER = { facts, builds, corrections, units: "us" } as const;
const STEP: LongStep = { doing: "Reading the table", share: 0.25 };

/** Stands for a worker that does as it is told here, and counts how often one was ended. */
function workers(does: (say: (words: WorkerSays) => void, breakDown: () => void) => void) {
  const counted = { ended: 0 };
  class FakeWorker {
    onmessage: (event: { data: WorkerSays }) => void = () => {};
    onerror: () => void = () => {};
    postMessage() {
      setTimeout(() =>
        does(
          (data) => this.onmessage({ data }),
          () => this.onerror(),
        ),
      );
    }
    terminate() {
      counted.ended++;
    }
  }
  vi.stubGlobal("Worker", FakeWorker);
  return counted;
}

afterEach(() => {
  vi.unstubAllGlobals();
});

describe("reading a long table beside the page", () => {
  const never = new AbortController().signal;

  test("is refused where the table has more than 200 million letters, with how many it has", async () => {
    const counted = workers(() => {});
    const file = { size: 234_000_000 } as Blob;
    expect(await runLong(file, ORDER, () => {}, never)).toMatchObject({
      kind: "invalid",
      message: expect.stringMatching(/^The table has 234 million letters; at most 200 million/),
    });
    expect(counted.ended).toBe(0);
  });

  test("that breaks down at work is said to be more than there is memory for, and is ended", async () => {
    const counted = workers((say, breakDown) => {
      say({ step: STEP });
      breakDown();
    });
    const steps: LongStep[] = [];
    expect(await runLong("text", ORDER, (step) => steps.push(step), never)).toMatchObject({
      kind: "unavailable",
      message: expect.stringContaining("more than this place has memory for"),
    });
    expect(steps).toEqual([STEP]);
    expect(counted.ended).toBe(1);
  });

  test("answers null once it is stopped, and ends the worker", async () => {
    const stop = new AbortController();
    const counted = workers((say) => say({ step: STEP }));
    expect(await runLong("text", ORDER, () => stop.abort(), stop.signal)).toBeNull();
    expect(counted.ended).toBe(1);
  });
});
