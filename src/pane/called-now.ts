import type { Draft } from "./draft.ts";

/** What the build of this name in the text is called now. */
export function calledNow(was: string, builds: Draft["builds"]): string {
  return builds[was]?.name?.trim() || was;
}
