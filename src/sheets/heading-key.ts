/** Headings of tables count as the same whatever their case and blanks. */
export const headingKey = (heading: string) => heading.trim().replace(/\s+/g, " ").toLowerCase();
