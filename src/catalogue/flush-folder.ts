import { open } from 'node:fs/promises';

/** Makes new names in a folder last through a power cut. Some systems cannot flush a folder; there they are safe enough. */
export async function flushFolder(folder: string): Promise<void> {
  try {
    const handle = await open(folder, 'r');
    await handle.sync().finally(() => handle.close());
  } catch {}
}
