import { useEffect, useState } from "preact/hooks";

/**
 * The value as it was when the screen was last painted. What takes long to work out follows it, so that figures and
 * pictures answer at once and the rest a moment later.
 */
export function useAfterPaint<T>(value: T): T {
  const [painted, setPainted] = useState(value);
  useEffect(() => {
    // A timer set inside a frame runs when the frame has been painted.
    let timer = 0;
    const frame = requestAnimationFrame(() => {
      timer = window.setTimeout(() => setPainted(() => value));
    });
    return () => {
      cancelAnimationFrame(frame);
      clearTimeout(timer);
    };
  }, [value]);
  return painted;
}
