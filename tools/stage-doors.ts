/** The doors of the stages of a job, and who may open them: every route runs a job through the pipeline, and none runs a stage by itself. */
import { posix } from 'node:path';
import { isTest, type Node, resolved, type SourceFile, treeOf, walk } from './source-files.ts';

export interface Door {
  /** The function that runs the stage, and the file that exports it. */
  readonly name: string;
  readonly file: string;
  /** Files that may import it. */
  readonly by: readonly string[];
}

const STAGES = 'src/job/pipeline/stages.ts';
const PIPELINE = 'src/job/pipeline/pipeline.ts';
const CHOICE = 'src/job/pipeline/wire-choice.ts';
const PLANNED_AGAIN = 'src/job/pipeline/plan-again.ts';
const TIMED = 'src/job/pipeline/timed.ts';
const SCHEDULE = 'src/job/pipeline/schedule.ts';
/** A program from elsewhere has no plan and no hours: it is read and proven against a drawing and a set-up. */
const AGAIN = 'src/job/pipeline/prove-again.ts';
/** The proof's own way in for a program as text. */
const PROVE = 'src/proof/prove/prove.ts';

export const DOORS: readonly Door[] = [
  { name: 'planCut', file: 'src/plan/cut/plan-cut.ts', by: [STAGES] },
  { name: 'writeProgram', file: 'src/nc/write/write.ts', by: [STAGES] },
  { name: 'readProgram', file: 'src/nc/read/read.ts', by: [STAGES, PROVE] },
  { name: 'placedProgram', file: 'src/nc/read/placed-program.ts', by: [STAGES, PROVE] },
  { name: 'proveRead', file: PROVE, by: [STAGES] },
  { name: 'proveProgram', file: PROVE, by: [AGAIN] },
  { name: 'estimateJob', file: 'src/estimate/estimate.ts', by: [STAGES] },
  { name: 'requestOf', file: 'src/job/request/request.ts', by: [PIPELINE] },
  { name: 'unusable', file: 'src/job/request/unusable.ts', by: [PIPELINE] },
  { name: 'drawingOf', file: STAGES, by: [PIPELINE] },
  { name: 'programOf', file: STAGES, by: [CHOICE] },
  { name: 'madeOf', file: STAGES, by: [CHOICE, PLANNED_AGAIN] },
  { name: 'readBack', file: STAGES, by: [TIMED, CHOICE] },
  { name: 'estimateOf', file: STAGES, by: [TIMED, CHOICE] },
  { name: 'provenOf', file: STAGES, by: [PLANNED_AGAIN] },
  { name: 'chosenProgram', file: CHOICE, by: [PIPELINE] },
  { name: 'scheduleOf', file: SCHEDULE, by: [PIPELINE, 'src/job/pipeline/answer-of.ts'] },
];

/** 'src/app/work/worker.ts opens planCut' for each module that takes a door which is not its own, by name or with all that its file exports. */
export const strays = (files: readonly SourceFile[], doors: readonly Door[] = DOORS): readonly string[] =>
  files
    .filter((f) => f.path.startsWith('src/') && !isTest(f.path) && doors.some((d) => f.text.includes(posix.basename(d.file))))
    .flatMap((f) =>
      takenBy(f).flatMap(({ from, names }) =>
        doors
          .filter((d) => d.file === from && (names === 'all' || names.includes(d.name)) && !d.by.includes(f.path))
          .map((d) => `${f.path} opens ${d.name}`),
      ),
    );

/** Doors that are nowhere: their file does not export them, or one that may open them does not. */
export const bricked = (files: readonly SourceFile[], doors: readonly Door[] = DOORS): readonly string[] =>
  doors.flatMap(({ name, file, by }) => {
    const exported = files.some((f) => f.path === file && new RegExp(`export const ${name}\\b`).test(f.text));
    const idle = by.filter(
      (path) => !files.some((f) => f.path === path && takenBy(f).some((t) => t.from === file && t.names.includes(name))),
    );
    return [...(exported ? [] : [`${file} has no ${name}`]), ...idle.map((path) => `${path} does not open ${name}`)];
  });

interface Taken {
  readonly from: string;
  readonly names: 'all' | readonly string[];
}

/** What a file takes from others, in imports, exports from elsewhere and import(): by name, or all of it. */
const takenBy = (file: SourceFile): readonly Taken[] => {
  const taken: Taken[] = [];
  walk(treeOf(file), (node) => {
    const source = node['source'] as Node | null | undefined;
    if (source?.type !== 'Literal' || typeof source['value'] !== 'string') return;
    const specifiers = node['specifiers'] as readonly Node[] | undefined;
    const whole = specifiers === undefined || specifiers.some((s) => s.type === 'ImportNamespaceSpecifier');
    taken.push({ from: resolved(file.path, source['value']), names: whole ? 'all' : specifiers.map(nameOf) });
  });
  return taken;
};

/** What a name was called where it comes from: `import { planCut as p }`, `export { planCut as p } from`. */
const nameOf = (specifier: Node): string => {
  const named = (specifier['imported'] ?? specifier['local']) as { readonly name?: string } | undefined;
  return named?.name ?? '';
};
