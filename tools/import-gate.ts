/** Who may import whom: the folders' rules, each with its reason, and the gate that finds every import they do not allow. */
import { builtinModules } from 'node:module';
import { importsOf, isTest, resolved, type SourceFile } from './source-files.ts';

interface Room {
  readonly folder: string;
  readonly may: readonly string[];
  readonly packages: readonly string[];
  readonly why: string;
}

const GROUND = ['src/quantity', 'src/finding'];
const SHAPES = [...GROUND, 'src/geometry'];
const RESULTS = [
  ...SHAPES,
  'src/drawing',
  'src/shapes',
  'src/physics',
  'src/plan',
  'src/plan/nest',
  'src/nc/dialect',
  'src/nc/write',
  'src/nc/read',
  'src/proof',
  'src/estimate',
];

/** The rooms of the house, the most particular folder first. What is not named here may not be imported. */
export const ROOMS: readonly Room[] = [
  { folder: 'src/finding', may: [], packages: [], why: 'a finding is a sentence and a place, nothing more' },
  { folder: 'src/quantity', may: ['src/finding'], packages: [], why: 'numbers know nothing of what they measure' },
  { folder: 'src/geometry/offset', may: SHAPES, packages: ['flatbush', 'robust-predicates'], why: 'any geometer can read it' },
  { folder: 'src/geometry', may: GROUND, packages: ['flatbush', 'robust-predicates'], why: 'no trade words: any geometer can read it' },
  {
    folder: 'src/drawing',
    may: SHAPES,
    packages: ['flatbush', 'saxes', 'svg-pathdata'],
    why: 'a drawing does not know how it will be cut',
  },
  {
    folder: 'src/shapes',
    may: [...SHAPES, 'src/geometry/offset', 'src/physics'],
    packages: ['zod'],
    why: 'numbers in, contours and sizes out; it knows neither wires nor programs',
  },
  {
    folder: 'src/lettering',
    may: [...SHAPES, 'src/shapes'],
    packages: ['opentype.js'],
    why: 'it alone knows how fonts are read; what is made of letters is for shapes',
  },
  { folder: 'src/physics', may: GROUND, packages: ['zod'], why: 'heights and lengths come in as numbers' },
  {
    folder: 'src/plan/nest',
    may: [...SHAPES, 'src/geometry/offset'],
    packages: [],
    why: 'pieces on a plate are shapes: it knows nothing of wires, cuts and programs',
  },
  {
    folder: 'src/plan',
    may: [...SHAPES, 'src/geometry/offset', 'src/physics'],
    packages: ['flatbush'],
    why: 'the plan decides; it neither writes nor reads programs',
  },
  { folder: 'src/nc/dialect', may: GROUND, packages: ['zod'], why: 'a dialect is a table of words' },
  { folder: 'src/nc/write', may: [...SHAPES, 'src/plan', 'src/nc/dialect'], packages: [], why: 'it spells what the plan decided' },
  {
    folder: 'src/nc/read',
    may: [...SHAPES, 'src/nc/dialect'],
    packages: [],
    why: 'a reader that knew the writer would share its mistakes',
  },
  {
    folder: 'src/proof',
    may: [...SHAPES, 'src/nc/dialect', 'src/nc/read'],
    packages: ['clipper2-ts', 'flatbush'],
    why: 'it sweeps, it never offsets, and it trusts nobody',
  },
  {
    folder: 'src/estimate',
    may: [...SHAPES, 'src/nc/dialect', 'src/nc/read', 'src/plan', 'src/physics'],
    packages: ['zod'],
    why: 'hours come from the program as read back',
  },
  { folder: 'src/documents', may: RESULTS, packages: ['pdfkit'], why: 'it lays out results and computes none' },
  { folder: 'src/job', may: [...RESULTS, 'src/geometry/offset', 'src/documents'], packages: ['zod'], why: 'the one place that runs a job' },
  {
    folder: 'src/fonts',
    may: ['src/lettering', ...GROUND],
    packages: ['dejavu-fonts-ttf', 'node'],
    why: 'it finds fonts on a disk and hands them on',
  },
  {
    folder: 'src/cli',
    may: ['src/job', 'src/fonts', ...GROUND],
    packages: ['commander', 'node'],
    why: 'no formula and no geometry: it asks the core and prints',
  },
  { folder: 'src/server/message', may: GROUND, packages: ['zod'], why: 'what page and server say to each other, nothing more' },
  {
    folder: 'src/server',
    may: ['src/server/message', 'src/job', 'src/fonts', ...GROUND],
    packages: [
      'node',
      'zod',
      'fastify',
      '@fastify/static',
      '@fastify/helmet',
      '@fastify/multipart',
      '@fastify/rate-limit',
      '@fastify/swagger',
      'fastify-type-provider-zod',
    ],
    why: 'no formula and no geometry: it keeps, serves and asks the core',
  },
  {
    folder: 'src/app',
    may: ['src/job', 'src/documents', 'src/geometry', 'src/shapes', 'src/lettering', 'src/server/message', ...GROUND],
    packages: [
      'dejavu-fonts-ttf',
      'react',
      'react-dom',
      'comlink',
      'zustand',
      'flatbush',
      'zod',
      '@fontsource/source-sans-3',
      '@fontsource/source-code-pro',
    ],
    why: 'no formula: what is shown was computed by the job; of the server it knows only the messages',
  },
];

export interface Trespass {
  readonly file: string;
  readonly imports: string;
  readonly why: string;
}

export interface GateReport {
  /** How many modules the gate read; a gate that read nothing has not passed. */
  readonly modules: number;
  readonly imports: number;
  readonly trespasses: readonly Trespass[];
}

/** Holds every module of src/ against the rooms. Tests, checks and benches may import anything. */
export const importGate = (files: readonly SourceFile[]): GateReport => {
  const modules = files.filter((f) => f.path.startsWith('src/') && !isTest(f.path) && !f.path.endsWith('.d.ts'));
  const pairs = modules.flatMap((f) => importsOf(f).map((name) => ({ file: f.path, name, target: resolved(f.path, name) })));
  const trespasses = pairs.flatMap(({ file, name, target }) => trespass(file, name, target));
  return { modules: modules.length, imports: pairs.length, trespasses };
};

const trespass = (file: string, name: string, target: string): readonly Trespass[] => {
  const room = roomOf(file);
  if (room === undefined)
    return [{ file, imports: name, why: 'this folder has no rule yet: write one and its reason in tools/import-gate.ts' }];
  const inside = target.startsWith('src/');
  if (inside && isTest(target)) return [{ file, imports: name, why: 'the product does not import its tests' }];
  const allowed = inside ? mayEnter(room, target) : room.packages.includes(packageOf(name));
  return allowed ? [] : [{ file, imports: name, why: room.why }];
};

const mayEnter = (room: Room, target: string): boolean => {
  const other = roomOf(target);
  return other !== undefined && (other.folder === room.folder || room.may.includes(other.folder));
};

const roomOf = (path: string): Room | undefined => ROOMS.find((r) => path.startsWith(`${r.folder}/`));

/** 'zod' for 'zod/mini', '@scope/name' for its parts, 'node' for everything that comes with Node. */
const packageOf = (name: string): string => {
  if (name.startsWith('node:') || builtinModules.includes(name)) return 'node';
  const parts = name.split('/');
  return name.startsWith('@') ? parts.slice(0, 2).join('/') : (parts[0] as string);
};
