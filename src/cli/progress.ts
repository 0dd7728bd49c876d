/** Progress on stderr, for whatever takes more than a second: the stage, how far it is, and for how long it has been running. */

import { Worker } from 'node:worker_threads';
import { printPlain } from '../text/print/print.ts';
import type { Text } from '../text/text.ts';

export interface Progress {
  readonly tell: (stage: Text, share: number) => void;
  readonly done: () => void;
}

/**
 * The work keeps its thread busy, so that no timer of its own would fire; this one looks on from beside it and writes
 * straight to the file descriptor. A terminal gets one line that is rewritten, anything else a line for each stage.
 */
const ONLOOKER = `
const { parentPort, workerData } = require('node:worker_threads');
const { writeSync } = require('node:fs');
const start = Date.now();
let stage = '', share = 0, told = '', wide = 0;
parentPort.on('message', (m) => {
  if (m === 'done') { if (workerData.terminal && wide > 0) writeSync(2, '\\r' + ' '.repeat(wide) + '\\r'); process.exit(); }
  stage = m.stage; share = m.share;
});
setInterval(() => {
  const seconds = Math.floor((Date.now() - start) / 1000);
  if (seconds < 1 || stage === '') return;
  const text = String(Math.round(share * 100)).padStart(3) + ' % ' + stage;
  try {
    if (workerData.terminal) { const line = text + ', ' + seconds + ' s'; writeSync(2, '\\r' + line.padEnd(wide)); wide = Math.max(wide, line.length); }
    else if (text !== told) { writeSync(2, text + '\\n'); told = text; }
  } catch { process.exit(); }
}, 250);
`;

/** The onlooker starts with the first stage that is told: commands that only print never have one. */
export const progressOn = (stream: NodeJS.WriteStream): Progress => {
  let onlooker: Worker | undefined;
  return {
    tell: (stage, share) => {
      onlooker ??= newOnlooker(stream.isTTY === true);
      onlooker.postMessage({ stage: printPlain(stage), share });
    },
    done: () => onlooker?.postMessage('done'),
  };
};

const newOnlooker = (terminal: boolean): Worker => {
  const onlooker = new Worker(ONLOOKER, { eval: true, workerData: { terminal } });
  onlooker.unref();
  onlooker.on('error', () => undefined);
  return onlooker;
};
