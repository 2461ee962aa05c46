import { createServer } from "node:http";
import { createServer as createSecureServer } from "node:https";
import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import sirv from "sirv";

/**
 * Serves what webpack made. `tsx serve.ts` serves the page with the open grid over http; with `--https` it serves
 * the add-in itself with a certificate for localhost, as a spreadsheet asks of an add-in under development. A last
 * word names another folder.
 */
const secure = process.argv.includes("--https");
const port = Number(process.env.PORT ?? 3000);
const made = fileURLToPath(new URL(secure ? "../../../dist" : "../../../dist/workbench", import.meta.url));
const named = process.argv.slice(2).find((word) => !word.startsWith("--"));
const files = sirv(named ? resolve(named) : made, {
  dev: true,
  etag: true,
  // The spreadsheet on the web fetches functions.json from its own address.
  setHeaders: (response) => secure && response.setHeader("Access-Control-Allow-Origin", "*"),
});

const server = secure ? createSecureServer(await certificate(), files) : createServer(files);
server.listen(port, "localhost", () => {
  const address = server.address();
  const taken = typeof address === "object" && address ? address.port : port;
  console.log(`Bay & Bench is at ${secure ? "https" : "http"}://localhost:${taken}/`);
});
server.on("error", (error: NodeJS.ErrnoException) => {
  const why = error.code === "EADDRINUSE" ? `Port ${port} is in use; set PORT to another.` : error.message;
  console.error(why);
  process.exitCode = 1;
});

async function certificate() {
  const { localCertificate } = await import("./certificate.ts");
  const { untrusted, ...options } = await localCertificate();
  if (untrusted) console.error(untrusted);
  return options;
}
