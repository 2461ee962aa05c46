import { type ComponentChildren, h } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { Frame } from "../pictures/frame.ts";
import { THEME_LOOK } from "../pictures/look.ts";
import type { Mark } from "../pictures/mark.ts";
import { markerSign } from "../pictures/marker-sign.ts";
import type { Figures } from "./figures.ts";

interface DrawingProps {
  readonly id: string;
  readonly figures: Figures;
  readonly draw: (frame: Frame) => Mark;
}

/** A picture in the theme's colours, drawn anew at the width there is, so that its words keep their size. */
export function Drawing({ id, figures, draw }: DrawingProps) {
  const place = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(296);
  useEffect(() => {
    const element = place.current!;
    const watch = new ResizeObserver(() => setWidth(Math.max(200, Math.min(640, element.clientWidth))));
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  return (
    <div class="picture" ref={place}>
      {node(draw({ id, width, look: THEME_LOOK, show: figures.show }))}
    </div>
  );
}

/** A build's marker beside its name. */
export function Sign({ place }: { readonly place: number }) {
  return <span class="sign">{node(markerSign(THEME_LOOK, place))}</span>;
}

function node(mark: Mark | string): ComponentChildren {
  return typeof mark === "string" ? mark : h(mark.tag, mark.attributes, ...mark.inside.map(node));
}
