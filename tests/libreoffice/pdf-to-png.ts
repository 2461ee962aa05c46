import { execFile } from "node:child_process";
import { mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";

/** Each page of a PDF as a picture, by `pdftoppm` of poppler; for looking at what a workbook shows. */
export async function pdfToPng(pdf: Uint8Array, dotsPerInch = 80): Promise<readonly Uint8Array[]> {
  const folder = await mkdtemp(join(tmpdir(), "pages-"));
  try {
    await writeFile(join(folder, "in.pdf"), pdf);
    await promisify(execFile)("pdftoppm", ["-png", "-r", `${dotsPerInch}`, "in.pdf", "page"], {
      cwd: folder,
    });
    const pages = (await readdir(folder)).filter((name) => name.endsWith(".png")).sort();
    return await Promise.all(pages.map((name) => readFile(join(folder, name))));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
