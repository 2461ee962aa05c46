import { useEffect, useState } from "preact/hooks";

/** A part of the program that is fetched when first shown, once it has come; null until then. */
export function useFetched<Part>(fetchPart: () => Promise<Part>): Part | null {
  const [part, setPart] = useState<Part | null>(null);
  useEffect(() => {
    let here = true;
    fetchPart().then((found) => here && setPart(found));
    return () => {
      here = false;
    };
  }, [fetchPart]);
  return part;
}

/** Statistics and pictures. */
export const fetchAnalysis = () => import("./analysis.ts");

/** What asks about shots. */
export const fetchSessionParts = () => import("./session-parts.ts");

/** The plan of a test and the bench. */
export const fetchWorkshop = () => import("./workshop.ts");
