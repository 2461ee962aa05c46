/** Hands bytes or a text over as a file, as browsers do. */
export function download(content: Uint8Array | string, name: string, type: string): void {
  const link = document.createElement("a");
  const part = typeof content === "string" ? content : content.slice();
  link.href = URL.createObjectURL(new Blob([part as BlobPart], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
