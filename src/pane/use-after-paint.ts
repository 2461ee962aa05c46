import { useEffect, useState } from "preact/hooks";

/**
 * The value as it was when the screen was last painted. What takes long to work out follows it, so that figures and
 * pictures answer at once and the rest a moment later.
 */
export function useAfterPaint<T>(value: T): T {
  const [painted, setPainted] = useState(value);
  useEffect(() => {
    // Effects run when the frame has been painted; the timer lets what was typed meanwhile come first.
    const timer = setTimeout(() => setPainted(() => value));
    return () => clearTimeout(timer);
  }, [value]);
  return painted;
}
