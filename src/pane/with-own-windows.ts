import { type TargetWindows, WINDOW_METRICS } from "../fitting/target-windows.ts";
import type { Facts } from "./draft.ts";

/** The usual target windows with the fitter's own limits over them; how far beyond still counts stays as it was. */
export function withOwnWindows(usual: TargetWindows, own: Facts["windows"]): TargetWindows {
  const changed = WINDOW_METRICS.flatMap((key) => {
    const [window, limits] = [usual[key], own[key]];
    return window && limits ? [[key, { ...window, ...limits }] as const] : [];
  });
  return changed.length === 0 ? usual : { ...usual, ...Object.fromEntries(changed) };
}
