/** Progress on stderr, for jobs that take more than a second. */

const QUIET_MS = 1000;

export interface Progress {
  readonly tell: (stage: string, share: number) => void;
  readonly done: () => void;
}

/** Nothing is printed during the first second; on a terminal one line is rewritten, elsewhere each stage gets a line. */
export const progressOn = (stream: NodeJS.WriteStream): Progress => {
  const start = Date.now();
  let shown = false;
  const tell = (stage: string, share: number): void => {
    if (Date.now() - start < QUIET_MS) return;
    shown = true;
    const text = `${Math.round(share * 100)
      .toString()
      .padStart(3)} % ${stage}`;
    stream.write(stream.isTTY ? `\r${text.padEnd(60)}` : `${text}\n`);
  };
  return { tell, done: () => void (shown && stream.isTTY && stream.write(`\r${' '.repeat(60)}\r`)) };
};
