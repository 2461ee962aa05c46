import { render } from "preact";
import type { Host } from "../hosts/host.ts";
import { Pane } from "./pane.tsx";
import { wearStyles } from "./wear-styles.ts";

export interface PaneOptions {
  /** Begin with the demo session where nothing was kept, so that a first visitor has something to run. */
  readonly demo?: boolean;
}

/**
 * Shows the pane inside an element and keeps it there. Everything it does outside that element goes through the
 * host, so the same pane serves the spreadsheet and the page with the open grid.
 */
export function mountPane(element: HTMLElement, host: Host, options: PaneOptions = {}): void {
  wearStyles(element.ownerDocument);
  element.classList.add("bench");
  render(<Pane host={host} demo={options.demo ?? false} />, element);
}
