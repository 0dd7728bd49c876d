/** Proves a program against a drawing and a set-up file: neither the planner nor the writer is asked. */
import type { Drawing } from '../../drawing/drawing.ts';
import { readDrawing } from '../../drawing/read/read-drawing.ts';
import { parseDialect } from '../../nc/dialect/parse.ts';
import type { WantedLine } from '../../plan/open-line.ts';
import type { Proof, ProofQuestion } from '../../proof/proof.ts';
import { proveProgram } from '../../proof/prove/prove.ts';
import { atField, type Finding } from '../../text/finding.ts';
import { name } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { proofQuestion, rectangleOf, type SetupFile } from '../files/setup-file.ts';
import { find } from '../findings.ts';
import { listedOnce } from '../listed-once.ts';
import { inDrawingUnits } from '../places-in-drawing.ts';
import { aimedLoops } from '../request/aimed.ts';
import { easeLoops } from '../request/rounded-corners.ts';

export type ProvenAgain =
  | { readonly kind: 'judged'; readonly proof: Proof; readonly question: ProofQuestion; readonly drawing: Drawing }
  | { readonly kind: 'bad input'; readonly findings: readonly Finding[] };

export interface ProveRun {
  readonly program: string;
  readonly drawing: Uint8Array;
  readonly drawingName: string;
  readonly units?: string | undefined;
  readonly setup: SetupFile;
}

export const proveAgain = ({ program, drawing: bytes, drawingName, units, setup }: ProveRun): ProvenAgain => {
  const dialect = parseDialect(setup.dialect);
  if (dialect.kind === 'bad') return { kind: 'bad input', findings: dialect.findings };
  const drawing = readDrawing(bytes, drawingName, readAs(setup, units));
  if (drawing.state === 'refused') return { kind: 'bad input', findings: drawing.findings };
  const { lines, missing: noLines } = linesOf(drawing, setup);
  const missing = [
    ...[...Object.keys(setup.kept), ...(setup.blockLoop === undefined ? [] : [setup.blockLoop])].filter(
      (id) => !drawing.loops.some((l) => l.id === id),
    ),
    ...noLines,
  ];
  if (missing.length > 0) return { kind: 'bad input', findings: missing.map((id) => noSuchLoop(id)) };
  const kept = new Map(Object.entries(setup.kept));
  const eased = easeLoops(
    drawing.loops.filter((l) => kept.has(l.id)).map((l) => ({ id: l.id, contour: l.contour, depth: l.depth })),
    kept,
    setup.ease,
  );
  if (eased.kind === 'failed') return { kind: 'bad input', findings: eased.findings };
  const fits = new Map(drawing.loops.map((l) => [l.id, l.fitDeviation]));
  const { contours = {} } = setup;
  const aimed = aimedLoops(eased.loops, (id) => (Object.hasOwn(contours, id) ? contours[id]?.moved : undefined));
  if (aimed.findings.length > 0) return { kind: 'bad input', findings: aimed.findings };
  const wanted = aimed.loops.map((l) => ({
    loop: l.id,
    contour: l.contour,
    kept: kept.get(l.id) as 'die' | 'punch',
    fit: fits.get(l.id),
  }));
  const block =
    drawing.loops.find((l) => l.id === setup.blockLoop)?.contour ??
    (setup.block === undefined ? undefined : rectangleOf(setup.block.low, setup.block.high));
  if (block === undefined)
    return {
      kind: 'bad input',
      findings: [
        find('file-not-valid/no-block', say`The set-up file names neither a block nor the loop that is its edge.`, {
          place: atField('block'),
        }),
      ],
    };
  const question = proofQuestion(program, setup, wanted, block, lines);
  const proof = proveProgram(question);
  return { kind: 'judged', proof: { ...proof, findings: listedOnce(inDrawingUnits(proof.findings, drawing.units)) }, question, drawing };
};

/** As it was read when the program was made, unless the user says another unit now. */
const readAs = (setup: SetupFile, units: string | undefined = setup.units): Parameters<typeof readDrawing>[2] => ({
  units,
  join: setup.join,
});

const linesOf = (
  drawing: Drawing,
  { open = {} }: SetupFile,
): { readonly lines: readonly WantedLine[]; readonly missing: readonly string[] } => {
  const asked = Object.entries(open).map(([id, kept]) => ({ id, kept, chain: drawing.openChains.find((c) => c.id === id) }));
  return {
    lines: asked.flatMap(({ id, kept, chain }) => (chain === undefined ? [] : [{ id, kept, path: chain.path, fit: chain.fitDeviation }])),
    missing: asked.filter((a) => a.chain === undefined).map((a) => a.id),
  };
};

const noSuchLoop = (id: string): Finding =>
  find('file-not-valid/loop-missing', say`The set-up file names ${{ loop: name(id) }}, which is not in the drawing.`, {
    place: { kind: 'field', path: `kept.${id}` },
    remedy: say`Prove the program against the drawing it was made from.`,
  });
