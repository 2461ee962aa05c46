import { useEffect, useState } from "preact/hooks";
import { partMissing } from "./fetch-trouble.ts";

/**
 * A part of the program that is fetched when first shown, once it has come; null until then, and while it is not
 * wanted. One that cannot be fetched is told of at the top of the pane (`fetch-notice.tsx`), with a way to try again.
 */
export function useFetched<Part>(fetchPart: () => Promise<Part>, wanted = true): Part | null {
  const [part, setPart] = useState<Part | null>(null);
  useEffect(() => {
    if (!wanted) return;
    let here = true;
    let found = () => {};
    const fetch = () => {
      fetchPart().then(
        (came) => here && setPart(() => came),
        () => {
          if (here) found = partMissing(fetch);
        },
      );
    };
    fetch();
    return () => {
      here = false;
      found();
    };
  }, [fetchPart, wanted]);
  return wanted ? part : null;
}
