import { type ChildProcess, execFile, spawn } from "node:child_process";
import { once } from "node:events";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";

const TOP = fileURLToPath(new URL("../..", import.meta.url));

export interface ServedPage {
  readonly address: string;
  close(): void;
}

/** Builds the page and serves it as `npm start` does, on a free port. */
export async function servePage(): Promise<ServedPage> {
  await promisify(execFile)(process.execPath, ["node_modules/webpack/bin/webpack.js"], {
    cwd: TOP,
  });
  const server = spawn(process.execPath, ["--import", "tsx", "src/hosts/workbench/serve.ts"], {
    cwd: TOP,
    env: { ...process.env, PORT: "0" },
  });
  return { address: await printedAddress(server), close: () => server.kill() };
}

async function printedAddress(server: ChildProcess): Promise<string> {
  const [line] = await once(createInterface({ input: server.stdout! }), "line");
  const found = /http:\/\/localhost:\d+\//.exec(String(line));
  if (!found) throw new Error(`the server said: ${line}`);
  return found[0];
}
