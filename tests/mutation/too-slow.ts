/** Parts of titles of tests that take seconds, or hold a time: altered code is several times slower. */
export const TOO_SLOW: readonly string[] = [
  "in under a second",
  "million draws of the pooled model",
  "weighed draws of the separate model",
];
