import { useEffect, useState } from "preact/hooks";

/** A part of the program that is fetched when first shown, once it has come; null until then, and while it is not wanted. */
export function useFetched<Part>(fetchPart: () => Promise<Part>, wanted = true): Part | null {
  const [part, setPart] = useState<Part | null>(null);
  useEffect(() => {
    if (!wanted) return;
    let here = true;
    fetchPart().then((found) => here && setPart(found));
    return () => {
      here = false;
    };
  }, [fetchPart, wanted]);
  return wanted ? part : null;
}
