/** Writes a file so that at any moment either the old one or the new one is there, whole, also after a power cut. */
import { open, rename } from 'node:fs/promises';
import { dirname } from 'node:path';

/** The new file stands beside the old one until its bytes are on the disk. `takePlace` is given by tests that break off in between. */
export const writeWhole = async (path: string, content: string | Uint8Array, takePlace: typeof rename = rename): Promise<void> => {
  const coming = `${path}.coming`;
  await writeThrough(coming, content);
  await takePlace(coming, path);
  await settleFolder(dirname(path));
};

/** Writes and waits until the disk has it. */
export const writeThrough = async (path: string, content: string | Uint8Array): Promise<void> => {
  const file = await open(path, 'w', 0o600);
  try {
    await file.writeFile(content);
    await file.sync();
  } finally {
    await file.close();
  }
};

/** A name is on the disk only when its folder is. Systems that cannot do that for folders do it by themselves. */
export const settleFolder = async (path: string): Promise<void> => {
  try {
    const folder = await open(path, 'r');
    try {
      await folder.sync();
    } finally {
      await folder.close();
    }
  } catch (error) {
    if (!['EISDIR', 'EPERM', 'EINVAL', 'EACCES', 'ENOTSUP'].includes((error as { code?: string }).code ?? '')) throw error;
  }
};
