import { paneStyles } from "./pane-styles.ts";

const worn = new WeakSet<Document>();

/** Gives a document the pane's styles, once. Built in script, so that no policy on inline styles stands in the way. */
export function wearStyles(document: Document): void {
  if (worn.has(document)) return;
  worn.add(document);
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(paneStyles());
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
}
