/** Parts of titles of tests that take seconds, hold a time or need hundreds of draws: altered code is slower. */
export const TOO_SLOW: readonly string[] = [
  "in under a second",
  "a Build sheet of any set",
  "million draws of the pooled model",
  "weighed draws of the separate model",
];
