import type { Mark } from "./mark.ts";

/** A drawing as the text of an SVG file. */
export function svgText(drawing: Mark): string {
  return element({
    ...drawing,
    attributes: { xmlns: "http://www.w3.org/2000/svg", ...drawing.attributes },
  });
}

function element(mark: Mark | string): string {
  if (typeof mark === "string") return escaped(mark);
  const attributes = Object.entries(mark.attributes).map(
    ([name, value]) => ` ${name}="${escaped(String(value))}"`,
  );
  return `<${mark.tag}${attributes.join("")}>${mark.inside.map(element).join("")}</${mark.tag}>`;
}

const ESCAPES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

// biome-ignore lint/suspicious/noControlCharactersInRegex: no XML text may hold control characters
const CONTROL = /[\u0000-\u0008\u000b\u000c\u000e-\u001f]/g;

function escaped(text: string): string {
  return text.replace(CONTROL, "").replace(/[&<>"]/g, (found) => ESCAPES[found]!);
}
