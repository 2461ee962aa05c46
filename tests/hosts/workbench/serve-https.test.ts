import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { get } from "node:https";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { text } from "node:stream/consumers";
import { afterEach, beforeEach, describe, expect, test } from "vitest";

let folder: string;
let home: string;
let server: ChildProcess | undefined;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "served-"));
  home = await mkdtemp(join(tmpdir(), "home-"));
  await cp("src/pane/pane.html", join(folder, "pane.html"));
  await writeFile(join(folder, "functions.json"), "{}");
});
afterEach(async () => {
  server?.kill();
  for (const one of [folder, home]) await rm(one, { recursive: true });
});

/** Starts the server as on a machine that has never had a certificate and where nobody may install one. */
async function start(): Promise<string> {
  server = spawn(process.execPath, ["--import", "tsx", "src/hosts/workbench/serve.ts", "--https", folder], {
    env: { ...process.env, HOME: home, USERPROFILE: home, PORT: "0", PATH: "" },
  });
  for await (const line of createInterface({ input: server.stdout! })) {
    const found = /https:\/\/localhost:\d+/.exec(line);
    if (found) return found[0];
  }
  throw new Error(await text(server.stderr!));
}

async function fetched(address: string, ca: Buffer) {
  const [response] = await once(get(address, { ca, agent: false }), "response");
  return { status: response.statusCode, headers: response.headers, body: await text(response) };
}

describe("the development server on a bare machine", { timeout: 60_000 }, () => {
  test("serves the pane over https under a certificate that it made itself", async () => {
    const address = await start();
    const ca = await readFile(join(home, ".office-addin-dev-certs", "ca.crt"));
    // The certificate is checked against its maker and its name: a wrong one would fail here.
    const pane = await fetched(`${address}/pane.html`, ca);
    expect(pane.status).toBe(200);
    expect(pane.body).toBe(await readFile("src/pane/pane.html", "utf8"));
    const metadata = await fetched(`${address}/functions.json`, ca);
    expect(metadata.headers["access-control-allow-origin"]).toBe("*");
  });

  test("keeps the certificate for the next start", async () => {
    await start();
    const file = join(home, ".office-addin-dev-certs", "localhost.crt");
    const first = await readFile(file, "utf8");
    server!.kill();
    await start();
    expect(await readFile(file, "utf8")).toBe(first);
  });
});
