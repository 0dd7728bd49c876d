/** Files that were dropped, sorted by what stands in them: what becomes a job, what is a program, and what is neither. */
import { type FileKind, fileKind, HEAD } from '../../job/files/file-kind.ts';

export interface SortedFiles {
  /** Drawings and job files. */
  readonly jobs: readonly File[];
  readonly programs: readonly File[];
  readonly others: readonly File[];
}

export const sortedFiles = async (files: readonly File[]): Promise<SortedFiles> => {
  const told = await Promise.all(files.map(async (file) => ({ file, kind: await kindOf(file) })));
  const those = (...kinds: readonly FileKind[]): readonly File[] =>
    told.filter((t) => kinds.includes(t.kind)).map(({ file, kind }) => (kind === 'dxf' || kind === 'svg' ? called(file, kind) : file));
  return { jobs: those('dxf', 'svg', 'job file'), programs: those('program'), others: those('unknown') };
};

/** A file that cannot be read, as a folder cannot, is nothing we know. */
const kindOf = async (file: File): Promise<FileKind> => {
  try {
    return fileKind(new Uint8Array(await file.slice(0, HEAD).arrayBuffer()), file.name);
  } catch {
    return 'unknown';
  }
};

/** The server tells drawings by their endings: a drawing that was saved as a text gets its own. */
const called = (file: File, kind: 'dxf' | 'svg'): File =>
  /\.(dxf|svg)$/i.test(file.name) ? file : new File([file], `${file.name}.${kind}`, { lastModified: file.lastModified });
