import { isProblem } from "../../outcome/problem.ts";
import type { Host } from "../host.ts";

/** Folds the page's introduction once sheets stand below it: from then on the sheets are what is looked at. */
export function foldAfterWriting(host: Host, introduction: HTMLDetailsElement): Host {
  return {
    ...host,
    write: async (plan, run) => {
      const written = await host.write(plan, run);
      if (!isProblem(written)) introduction.open = false;
      return written;
    },
  };
}
