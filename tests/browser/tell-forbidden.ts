/** Runs in a page before its own scripts: what its policy forbids is said on the console as an error. */
export function tellForbidden(): void {
  document.addEventListener("securitypolicyviolation", ({ violatedDirective, blockedURI }) =>
    console.error(`the policy forbade ${blockedURI} by ${violatedDirective}`),
  );
}
