/** Hands a file to the person at the device, under a name. */
export function saveFile(name: string, content: Blob): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser has to have begun before the address may go.
  setTimeout(() => URL.revokeObjectURL(address), KEPT_MS);
}

const KEPT_MS = 60_000;
