import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { type Problem, unavailable } from "../../src/outcome/problem.ts";
import { nothingKept } from "../../src/pane/draft.ts";
import { KEEPING_PAUSE, keeper } from "../../src/pane/keeper.ts";
import { memoryHost } from "./memory-host.ts";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const first = nothingKept("2026-05-14");
const second = { ...first, units: "metric" as const };
const third = { ...first, units: "metric-kmh" as const };

function onHost(host = memoryHost()) {
  const told: (Problem | null)[] = [];
  const held = () => [...host.texts.values()].map((text) => JSON.parse(text).units);
  return { ...keeper(host, (problem) => told.push(problem)), told, held };
}

describe("what keeps the sessions", () => {
  test("writes nothing while nothing has changed, so that opening the pane leaves a workbook as it was", async () => {
    const { holds, changed, flush, held } = onHost();
    holds(first);
    changed(first);
    await vi.advanceTimersByTimeAsync(10 * KEEPING_PAUSE);
    flush();
    expect(held()).toEqual([]);
  });

  test("waits for a rest and then keeps the last of several changes", async () => {
    const { holds, changed, held, told } = onHost();
    holds(first);
    changed(second);
    await vi.advanceTimersByTimeAsync(KEEPING_PAUSE - 1);
    expect(held()).toEqual([]);
    changed(third);
    await vi.advanceTimersByTimeAsync(KEEPING_PAUSE);
    expect(held()).toEqual(["metric-kmh"]);
    expect(told).toEqual([null]);
  });

  test("keeps at once when the page is about to go", () => {
    const { holds, changed, flush, held } = onHost();
    holds(first);
    changed(second);
    flush();
    expect(held()).toEqual(["metric"]);
  });

  test("says why a keeping failed, and that a later one did not", async () => {
    const host = memoryHost();
    const { keep } = host;
    host.keep = async () => unavailable("The workbook is full.");
    const { changed, told } = onHost(host);
    changed(second);
    await vi.advanceTimersByTimeAsync(KEEPING_PAUSE);
    expect(told).toEqual([unavailable("The workbook is full.")]);
    host.keep = keep;
    changed(third);
    await vi.advanceTimersByTimeAsync(KEEPING_PAUSE);
    expect(told.at(-1)).toBeNull();
  });
});
