import { expect, it } from "vitest";
import type { Grid } from "../../../src/hosts/workbench/grid.ts";
import { readUnchanged } from "../../../src/hosts/workbench/read-unchanged.ts";

/** The part of a grid that tells what was done in it. */
function gridThatTells() {
  const listeners = new Set<(told: { id: string }) => void>();
  const grid = {
    Event: { CommandExecuted: "CommandExecuted" },
    addEvent: (_: string, listener: (told: { id: string }) => void) => {
      listeners.add(listener);
      return { dispose: () => listeners.delete(listener) };
    },
  } as unknown as Grid;
  const tell = (id: string) => {
    for (const listener of listeners) listener({ id });
  };
  return { grid, tell, listeners };
}

const never = new AbortController().signal;

it("begins again where the workbook is changed while it is read, and ends when it was not", async () => {
  const { grid, tell, listeners } = gridThatTells();
  let readings = 0;
  function* read() {
    const reading = ++readings;
    if (reading < 3) tell("sheet.mutation.set-range-values");
    yield 0.5;
    return reading;
  }
  expect(await readUnchanged(grid, read, () => {}, never)).toBe(3);
  expect(listeners.size).toBe(0);
});

it("goes on where only something else was selected or scrolled to", async () => {
  const { grid, tell } = gridThatTells();
  let readings = 0;
  function* read() {
    tell("sheet.operation.set-selections");
    tell("sheet.command.set-scroll-relative");
    yield 0.5;
    return ++readings;
  }
  expect(await readUnchanged(grid, read, () => {}, never)).toBe(1);
});

it("begins again where a sheet goes while it is read, and breaks where nothing was changed", async () => {
  const { grid, tell, listeners } = gridThatTells();
  let readings = 0;
  function* read() {
    if (++readings > 1) return readings;
    tell("sheet.mutation.remove-sheet");
    yield 0.5;
    throw new Error("no such sheet");
  }
  expect(await readUnchanged(grid, read, () => {}, never)).toBe(2);
  function* broken(): Generator<number, number> {
    yield 0.5;
    throw new Error("unreadable");
  }
  await expect(readUnchanged(grid, broken, () => {}, never)).rejects.toThrow("unreadable");
  expect(listeners.size).toBe(0);
});

it("answers null once it is stopped", async () => {
  const { grid } = gridThatTells();
  function* read() {
    yield 0.5;
    return 1;
  }
  expect(await readUnchanged(grid, read, () => {}, AbortSignal.abort())).toBeNull();
});
