import { useEffect, useState } from "preact/hooks";

export type Analysis = typeof import("./analysis.ts");

/** The statistics and pictures, once they have come; null until then. */
export function useAnalysis(): Analysis | null {
  const [analysis, setAnalysis] = useState<Analysis | null>(null);
  useEffect(() => {
    let here = true;
    import("./analysis.ts").then((found) => here && setAnalysis(found));
    return () => {
      here = false;
    };
  }, []);
  return analysis;
}
