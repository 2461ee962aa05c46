import type { Derived } from "./derive.ts";
import type { Figures } from "./figures.ts";
import { FiguresTable } from "./figures-table.tsx";

interface FindingsProps {
  readonly derived: Derived;
  readonly figures: Figures;
}

/** What the shots say, as far as they do. */
export function Findings({ derived, figures }: FindingsProps) {
  return <FiguresTable session={derived.session} comparison={derived.comparison} figures={figures} />;
}
