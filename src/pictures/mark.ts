/**
 * One element of a drawing, as plain data. Pictures are pure functions from figures to marks, so that the pane can
 * hang the same picture in its page that a sheet keeps as a file.
 */
export interface Mark {
  readonly tag: string;
  readonly attributes: Readonly<Record<string, string | number>>;
  readonly inside: readonly (Mark | string)[];
}

/** Makes a mark. */
export function mark(
  tag: string,
  attributes: Mark["attributes"] = {},
  ...inside: readonly (Mark | string)[]
): Mark {
  return { tag, attributes, inside };
}
