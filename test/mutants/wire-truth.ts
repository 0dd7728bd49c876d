/** Whether the wire is there when it cuts, out when it is led through metal, and threaded where no metal is: by the actions and the squares. */
import { lengthOf, pointAt } from '../../src/geometry/measure.ts';
import type { Point, Segment } from '../../src/geometry/segment.ts';
import type { Action } from '../../src/nc/read/program.ts';
import type { ProofQuestion } from '../../src/proof/proof.ts';
import { there } from '../there.ts';
import { type Raster, squareAt } from './raster.ts';
import type { TruthCut } from './truth.ts';

export const wireFaults = (actions: readonly Action[], question: ProofQuestion, raster: Raster): readonly string[] => {
  const faults: string[] = [];
  let wire: Wire = 'out';
  let last = -1;
  actions.forEach((a, i) => {
    if (a.kind === 'stop' && !a.optional) wire = afterStop(a.comment, wire, question);
    if (a.kind === 'thread' && wire === 'in') faults.push(`action ${i} threads the wire twice`);
    if (a.kind === 'thread') wire = 'in';
    if (a.kind === 'cut wire') wire = 'out';
    if (a.kind !== 'move') return;
    if (!a.rapid) {
      if (wire === 'out') faults.push(`action ${i} cuts without a wire`);
      wire = 'in';
      last += 1;
      return;
    }
    if (!throughMetal(a.centre, last, question, raster)) return;
    if (wire === 'in' && last >= 0) faults.push(`action ${i} draws the wire through metal`);
    wire = 'out';
  });
  if (last >= 0 && (wire as Wire) === 'in' && question.dialect.words.cutWire !== undefined)
    faults.push('the program ends with the wire in');
  return faults;
};

const mayThread = (comment: string, { dialect }: ProofQuestion): boolean =>
  dialect.words.thread === undefined && !/CUT THE WIRE|CONDITION/.test(comment);

type Wire = 'out' | 'in' | 'either';

/** A stop that does not say what it is for may be for what the control cannot do by itself. */
const afterStop = (comment: string, wire: Wire, { dialect: { words } }: ProofQuestion): Wire => {
  if (/THREAD/.test(comment)) return 'in';
  if (/CUT THE WIRE/.test(comment)) return 'out';
  if (/CONDITION/.test(comment)) return wire;
  const byHand = wire === 'in' ? words.cutWire === undefined : words.thread === undefined;
  return byHand ? 'either' : wire;
};

/**
 * The wire can be threaded where its disc lies in a hole (a matter of distance), or where no square near it is still metal. Squares are
 * coarse: where the disc's edge runs along metal nobody can tell.
 */
export const startFaults = (actions: readonly Action[], cuts: readonly TruthCut[], question: ProofQuestion, raster: Raster) => {
  const faults: string[] = [];
  let unclear = false;
  let [moved, threaded] = [true, true];
  let last = -1;
  for (const a of actions) {
    if (a.kind === 'thread' || (a.kind === 'stop' && !a.optional && (/THREAD/.test(a.comment) || mayThread(a.comment, question))))
      threaded = true;
    if (a.kind === 'cut wire' || (a.kind === 'stop' && !a.optional && /CUT THE WIRE/.test(a.comment))) [moved, threaded] = [true, false];
    if (a.kind !== 'move') continue;
    if (a.rapid) [moved, threaded] = [true, false];
    else {
      last += 1;
      if (moved && threaded) {
        const metal = metalAt(there(cuts[last]).segment.from, last - 1, question, raster);
        unclear ||= metal === 'perhaps';
        if (metal === 'yes') faults.push(`the wire is threaded in metal for cut ${last}`);
      }
      moved = false;
    }
  }
  return { faults, unclear };
};

/** Metal under the wire's disc after cut `last`. */
const metalAt = (at: Point, last: number, question: ProofQuestion, raster: Raster): 'yes' | 'no' | 'perhaps' => {
  const r = question.wireDiameter / 2;
  const room = Math.max(...question.holes.map((h) => h.diameter / 2 - Math.hypot(h.at.x - at.x, h.at.y - at.y)), -Infinity);
  if (room >= r) return 'no';
  const isMetal = (square: number): boolean => square >= 0 && there(raster.cutAt[square]) > last && there(raster.looseAt[square]) > last;
  const rim = (radius: number): boolean =>
    Array.from({ length: 24 }, (_, k) => (k * Math.PI) / 12).some((turn) =>
      isMetal(squareAt({ x: at.x + radius * Math.cos(turn), y: at.y + radius * Math.sin(turn) }, raster)),
    );
  const coarse = 0.75 * raster.size;
  if (isMetal(squareAt(at, raster)) || rim(Math.max(0, r - coarse))) return 'yes';
  return rim(r) || rim(r + coarse) ? 'perhaps' : 'no';
};

/** The wire's own disc along the way, against squares still there after cut `last`. */
const throughMetal = (way: Segment, last: number, question: ProofQuestion, raster: Raster): boolean => {
  const steps = Math.ceil(lengthOf(way) / 0.05);
  let hits = 0;
  for (let i = 0; i <= steps; i += 1) {
    const p = pointAt(way, i / steps);
    for (let k = 0; k < 8; k += 1) {
      const r = question.wireDiameter / 2 - 0.03;
      const square = squareAt({ x: p.x + r * Math.cos((k * Math.PI) / 4), y: p.y + r * Math.sin((k * Math.PI) / 4) }, raster);
      if (square >= 0 && there(raster.cutAt[square]) > last && there(raster.looseAt[square]) > last) hits += 1;
    }
  }
  return hits > 3;
};
