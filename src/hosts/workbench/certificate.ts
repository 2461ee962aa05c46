import { X509Certificate } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import { homedir } from "node:os";
import { join } from "node:path";

/** A certificate for localhost and its key, as the server takes them. */
export interface Certificate {
  readonly ca: Buffer;
  readonly cert: Buffer;
  readonly key: Buffer;
  /** Why this machine does not trust it, with what to do; empty where it does. */
  readonly untrusted: string;
}

/** Where the maker of certificates puts them. */
const FOLDER = join(homedir(), ".office-addin-dev-certs");
const DAY = 86_400_000;

/**
 * A certificate for https://localhost, made on this machine and known to it. Making it takes nothing; having it
 * trusted takes a password. Where nobody gives one the certificate serves all the same, and it is said what to do.
 */
export async function localCertificate(): Promise<Certificate> {
  const { ensureCertificatesAreInstalled, verifyCertificates } = await import("office-addin-dev-certs");
  let why = "it was not installed";
  // One that is good is kept, trusted or not: whoever trusted it by hand would have to do so again.
  if (!stillGood())
    await ensureCertificatesAreInstalled().catch((error) => {
      why = String(error.message ?? error).trim();
    });
  const [ca, cert, key] = ["ca.crt", "localhost.crt", "localhost.key"].map((name) =>
    readFileSync(join(FOLDER, name)),
  ) as [Buffer, Buffer, Buffer];
  const trusted = attempt(verifyCertificates);
  const untrusted = `This machine does not trust the certificate yet (${why}). Run "npm run certs" as a user who may change what is trusted, or trust ${join(FOLDER, "ca.crt")} by hand.`;
  return { ca, cert, key, untrusted: trusted ? "" : untrusted };
}

/** Whether a certificate is there that belongs to its key and holds for another day. */
function stillGood(): boolean {
  const file = join(FOLDER, "localhost.crt");
  if (!existsSync(file) || !existsSync(join(FOLDER, "localhost.key"))) return false;
  return attempt(() => Date.parse(new X509Certificate(readFileSync(file)).validTo) > Date.now() + DAY);
}

function attempt(check: () => boolean): boolean {
  try {
    return check();
  } catch {
    return false;
  }
}
