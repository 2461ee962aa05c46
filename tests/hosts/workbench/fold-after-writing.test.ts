import { expect, it } from "vitest";
import type { Host } from "../../../src/hosts/host.ts";
import { foldAfterWriting } from "../../../src/hosts/workbench/fold-after-writing.ts";
import { unavailable } from "../../../src/outcome/problem.ts";
import type { WorkbookPlan } from "../../../src/sheets/plan.ts";

const plan: WorkbookPlan = { sheets: [], names: [], active: "" };
const writing = (answer: Awaited<ReturnType<Host["write"]>>) => {
  const introduction = { open: true } as HTMLDetailsElement;
  return {
    introduction,
    host: foldAfterWriting({ write: async () => answer } as unknown as Host, introduction),
  };
};

it("foldAfterWriting(host, introduction) folds once sheets stand", async () => {
  const { introduction, host } = writing({ sheets: ["Comparison"], notes: [] });
  await host.write(plan);
  expect(introduction.open).toBe(false);
});

it("foldAfterWriting(host, introduction) stays open when nothing was written", async () => {
  const { introduction, host } = writing(unavailable("No."));
  await host.write(plan);
  expect(introduction.open).toBe(true);
});
