import { textOfBytes } from "../shots/text-of-bytes.ts";

/** All of a text, or of a file in whatever encoding; with `letters` only about so many from its beginning. */
export async function textOfSource(source: string | Blob, letters?: number): Promise<string> {
  const wanted = letters === undefined ? source : source.slice(0, letters);
  if (typeof wanted === "string") return wanted;
  return textOfBytes(new Uint8Array(await wanted.arrayBuffer()), letters !== undefined);
}
