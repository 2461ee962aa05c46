/** Text as SVG holds it. */
export function escaped(text: string): string {
  const names: Record<string, string> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
  return text.replace(/[&<>"]/g, (character) => names[character]!);
}

/** `<name key="value">inside</name>`; figures to the hundredth of a pixel, attributes without a value left out. */
export function element(
  name: string,
  attributes: Readonly<Record<string, string | number | undefined>>,
  inside = "",
): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === "number" ? +value.toFixed(2) : escaped(value!)}"`)
    .join("");
  return inside ? `<${name}${written}>${inside}</${name}>` : `<${name}${written}/>`;
}
