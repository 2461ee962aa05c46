import { Script } from "node:vm";

const KEY = "calledWithin";
const script = new Script(`globalThis.${KEY}()`);

/** What a function answers, or an error once it has run for so many milliseconds: the only way to stop an endless loop. */
export function callWithin<Answer>(milliseconds: number, call: () => Answer): Answer {
  Object.assign(globalThis, { [KEY]: call });
  return script.runInThisContext({ timeout: Math.ceil(milliseconds) });
}

export const ranTooLong = (error: unknown) =>
  error instanceof Error && "code" in error && error.code === "ERR_SCRIPT_EXECUTION_TIMEOUT";
