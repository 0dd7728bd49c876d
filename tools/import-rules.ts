/** Who may import whom: one row a folder, each with its reason. What no row names may not be imported. */

export interface Rule {
  readonly folder: string;
  /** Folders it may import from beside itself, the grounds above it, and what the folder around it may. Exactly these, not what lies in them. */
  readonly may: readonly string[];
  /** Packages from outside; 'node' is everything that comes with Node. A folder may use those of the folder around it. */
  readonly packages?: readonly string[];
  readonly why: string;
  /** Every folder may import it. */
  readonly forAll?: true;
  /** Starts a program, and so imports from its own parts. */
  readonly entry?: true;
}

const GEOMETRY = ['src/geometry', 'src/geometry/near', 'src/geometry/make'];
const BASE = ['src/text', 'src/quantity'];
const PRINT = 'src/text/print';
const SPARK_AND_SHOP = ['src/physics', 'src/physics/material', 'src/physics/wire', 'src/physics/cut'];
const PHYSICS = [...SPARK_AND_SHOP, 'src/physics/other-process'];
const PLAN = ['start', 'wire', 'path', 'core', 'lay', 'order', 'cut'].map((part) => `src/plan/${part}`);
const CORE = [
  ...BASE,
  ...GEOMETRY,
  'src/picture',
  ...['', '/curve', '/piece', '/read', '/picture', '/write'].map((part) => `src/drawing${part}`),
  'src/shapes',
  'src/shapes/list',
  ...PHYSICS,
  'src/plan',
  ...PLAN,
  'src/nest',
  'src/nest/lay',
  'src/nc/dialect',
  'src/nc/write',
  'src/nc/read',
  'src/proof',
  'src/proof/prove',
  'src/proof/picture',
  'src/accuracy',
  'src/estimate',
  'src/estimate/schedule',
];
const DOCUMENTS = ['src/documents', 'src/documents/part', 'src/documents/sheet', 'src/documents/pdf'];
const JOB = ['', '/files', '/request', '/pipeline', '/what-if', '/handout', '/nest'].map((part) => `src/job${part}`);
const APP_CHARTS = ['fields', 'chart', 'replay', 'handout', 'jobs', 'shop'].map((part) => `src/app/${part}`);

export const RULES: readonly Rule[] = [
  { folder: 'src/sequence', may: [], forAll: true, why: 'lists as such: what they hold is for those who hold them' },

  { folder: 'src/text', may: [], why: 'what is said, as data: everything else stands on it' },
  { folder: PRINT, may: ['src/quantity'], why: 'it prints sentences and figures for one reader, and knows nothing of what they are about' },
  { folder: 'src/quantity', may: ['src/text'], why: 'numbers know nothing of what they measure, nor how they are printed' },

  { folder: 'src/geometry', may: [], packages: ['robust-predicates'], why: 'no trade words: any geometer can read it' },
  { folder: 'src/geometry/near', may: [], packages: ['flatbush', 'flatqueue'], why: 'lookups ask what lies near; they make no new lines' },
  { folder: 'src/geometry/make', may: ['src/geometry/near'], why: 'new lines are fitted to places that are looked up' },
  { folder: 'src/geometry/flat', may: [], packages: ['flatqueue'], why: 'inner loops on plain numbers need no lookups' },
  {
    folder: 'src/geometry/offset',
    may: ['src/geometry/near', 'src/geometry/flat'],
    why: 'parallel curves are worked out flat and checked by distance',
  },

  { folder: 'src/picture', may: ['src/text', ...GEOMETRY, PRINT], why: 'strokes and labels know no drawing, plan or proof' },

  { folder: 'src/drawing', may: ['src/text', ...GEOMETRY], why: 'a drawing does not know how it will be cut' },
  { folder: 'src/drawing/curve', may: [], why: 'curves of a file come before anything is joined' },
  { folder: 'src/drawing/dxf', may: ['src/drawing/curve'], why: 'a reader of a format gives curves and knows no other format' },
  {
    folder: 'src/drawing/svg',
    may: ['src/drawing/curve'],
    packages: ['saxes', 'svg-pathdata'],
    why: 'a reader of a format gives curves and knows no other',
  },
  { folder: 'src/drawing/piece', may: ['src/drawing/curve'], why: 'pieces are made of curves, before their ends are joined' },
  {
    folder: 'src/drawing/join',
    may: ['src/drawing/curve', 'src/drawing/piece'],
    why: 'ends of pieces are joined, whatever format they came in',
  },
  {
    folder: 'src/drawing/read',
    may: ['curve', 'dxf', 'svg', 'piece', 'join'].map((part) => `src/drawing/${part}`),
    why: 'the door of the drawing runs all stages, and reports',
  },
  { folder: 'src/drawing/picture', may: ['src/picture', PRINT], why: 'it draws what was read, and reads nothing itself' },
  { folder: 'src/drawing/write', may: [], why: 'files are written of contours alone, without the readers' },

  {
    folder: 'src/shapes',
    may: [...BASE, ...GEOMETRY],
    packages: ['zod'],
    why: 'numbers in, contours and sizes out; it knows neither wires nor programs',
  },
  { folder: 'src/shapes/teeth', may: [], why: 'a tooth knows no family that has teeth' },
  { folder: 'src/shapes/keyway', may: [], why: 'a keyway is told the bore, not the wheel round it' },
  { folder: 'src/shapes/gear', may: ['src/shapes/teeth', 'src/shapes/keyway'], why: 'a gear has teeth, and a bore with its keyway' },
  { folder: 'src/shapes/spline', may: ['src/shapes/teeth'], why: 'a spline has teeth and is its own bore' },
  { folder: 'src/shapes/wheel', may: ['src/shapes/keyway'], why: 'a wheel has a bore with its keyway; its teeth are its own' },
  { folder: 'src/shapes/curve', may: [], why: 'true curves stand by themselves' },
  { folder: 'src/shapes/tool', may: [], why: 'form tools stand by themselves' },
  { folder: 'src/shapes/plain', may: [], why: 'lines and circles need no other family' },
  { folder: 'src/shapes/lettering', may: ['src/geometry/offset'], why: 'letters that touch are set apart by parallel curves' },
  {
    folder: 'src/shapes/list',
    may: ['teeth', 'gear', 'spline', 'keyway', 'wheel', 'curve', 'tool', 'plain', 'lettering'].map((part) => `src/shapes/${part}`),
    why: 'the list of all families, and the door of the shapes',
  },

  { folder: 'src/physics', may: BASE, why: 'heights and lengths come in as numbers' },
  {
    folder: 'src/physics/material',
    may: [],
    packages: ['zod'],
    why: 'an index can be estimated from what one spark does',
  },
  { folder: 'src/physics/wire', may: [], packages: ['zod'], why: 'a wire is the same in every material' },
  { folder: 'src/physics/cut', may: ['src/physics/material', 'src/physics/wire'], packages: ['zod'], why: 'a cut is a wire in a material' },
  { folder: 'src/physics/other-process', may: ['src/physics/material'], why: 'other processes know no wire' },

  {
    folder: 'src/plan',
    may: [...BASE, ...GEOMETRY, ...SPARK_AND_SHOP],
    why: 'the plan decides; it neither writes nor reads programs',
  },
  { folder: 'src/plan/start', may: [], why: 'where a contour begins is asked before its way is laid' },
  { folder: 'src/plan/wire', may: ['src/geometry/offset'], why: 'wire and passes are chosen by what they leave of the contour' },
  { folder: 'src/plan/path', may: ['src/plan/start', 'src/plan/wire'], why: 'a way begins at a place and follows the passes' },
  {
    folder: 'src/plan/core',
    may: ['start', 'wire', 'path'].map((p) => `src/plan/${p}`).concat('src/geometry/offset'),
    why: 'rings without a core end in the lap of a contour',
  },
  {
    folder: 'src/plan/lay',
    may: ['start', 'wire', 'path', 'core'].map((p) => `src/plan/${p}`),
    why: 'a shape is laid out from beginning, passes, laps and rings',
  },
  { folder: 'src/plan/order', may: ['src/plan/path'], why: 'the order goes by visits of contours, not by how they were laid out' },
  { folder: 'src/plan/cut', may: PLAN, why: 'the door of the plan: it runs all parts and keeps clear what must stay' },

  {
    folder: 'src/nest',
    may: [...BASE, ...GEOMETRY, 'src/geometry/offset'],
    why: 'pieces on a plate are shapes: it knows nothing of wires, cuts and programs',
  },
  { folder: 'src/nest/lay', may: [], packages: ['pure-rand'], why: 'laying goes by cells and patterns of the ground above it' },

  { folder: 'src/nc/dialect', may: ['src/text'], packages: ['zod'], why: 'a dialect is a table of words' },
  {
    folder: 'src/nc/write',
    may: ['src/text', PRINT, ...GEOMETRY, 'src/plan', 'src/nc/dialect'],
    why: 'it spells what the plan decided, and prints its comments as the house writes',
  },
  {
    folder: 'src/nc/read',
    may: ['src/text', ...GEOMETRY, 'src/nc/dialect'],
    why: 'a reader that knew the writer would share its mistakes',
  },

  {
    folder: 'src/proof',
    may: ['src/text', 'src/geometry', 'src/nc/dialect', 'src/nc/read'],
    packages: ['clipper2-ts', 'flatbush'],
    why: 'it sweeps, it never offsets, it looks places up by itself, and it trusts nobody',
  },
  { folder: 'src/proof/sweep', may: [], why: 'cutting in the computer comes before anything is judged' },
  { folder: 'src/proof/prove', may: ['src/proof/sweep'], why: 'the door of the proof: it judges what was swept' },
  { folder: 'src/proof/picture', may: ['src/proof/sweep', 'src/picture', PRINT], why: 'it draws what was swept, and judges nothing' },

  {
    folder: 'src/accuracy',
    may: [...BASE, ...GEOMETRY, ...SPARK_AND_SHOP, 'src/plan', 'src/plan/wire', 'src/proof'],
    why: 'errors are added up from what was decided and proven',
  },
  {
    folder: 'src/estimate',
    may: [...BASE, ...GEOMETRY, ...SPARK_AND_SHOP, 'src/nc/read', 'src/plan'],
    packages: ['zod'],
    why: 'hours come from the program as read back',
  },
  { folder: 'src/estimate/schedule', may: [], why: 'the schedule of the shop lays out hours that were estimated' },

  { folder: 'src/result', may: CORE, why: 'what may be shown of a job, as data; it computes nothing' },
  { folder: 'src/documents', may: ['src/text', PRINT, 'src/picture', 'src/result'], why: 'it lays out results and computes none' },
  { folder: 'src/documents/part', may: [], why: 'tables and pictures that stand in several papers know no paper' },
  { folder: 'src/documents/sheet', may: ['src/documents/part'], why: 'one file a paper, made of parts' },
  { folder: 'src/documents/pdf', may: [], packages: ['pdfkit'], why: 'it sets any paper and knows none by name' },

  { folder: 'src/job', may: [...CORE, 'src/result', ...DOCUMENTS], packages: ['zod'], why: 'the one place that runs a job' },
  { folder: 'src/job/files', may: [], why: 'files are parsed before anything is asked of them' },
  {
    folder: 'src/job/request',
    may: ['src/job/files', 'src/geometry/offset'],
    why: 'what is asked of drawing and plan, before either runs',
  },
  { folder: 'src/job/pipeline', may: ['files', 'request'].map((p) => `src/job/${p}`), why: 'the stages in order, from drawing to answer' },
  {
    folder: 'src/job/what-if',
    may: ['files', 'request', 'pipeline'].map((p) => `src/job/${p}`),
    why: 'it runs the pipeline again under a change',
  },
  {
    folder: 'src/job/handout',
    may: [...['files', 'request', 'pipeline', 'what-if'].map((p) => `src/job/${p}`), PRINT],
    why: 'it hands out what was run, in files and words',
  },
  {
    folder: 'src/job/nest',
    may: JOB.filter((part) => part !== 'src/job/nest'),
    why: 'a nest ends in a job that can be run and handed out',
  },

  {
    folder: 'src/font-reader',
    may: [...GEOMETRY, 'src/shapes', 'src/shapes/lettering', 'src/text'],
    packages: ['opentype.js'],
    why: 'it alone knows how fonts are read, and says what is wrong with one; what is made of letters is for shapes',
  },
  {
    folder: 'src/font-files',
    may: ['src/font-reader', 'src/text'],
    packages: ['dejavu-fonts-ttf', 'node'],
    why: 'it finds fonts on a disk and hands them on, or says why there is none',
  },

  {
    folder: 'src/cli',
    may: [...JOB, ...BASE, PRINT, 'src/font-files'],
    packages: ['commander', 'node'],
    why: 'no formula and no geometry: it asks the core and prints',
    entry: true,
  },

  {
    folder: 'src/server',
    may: [...JOB, 'src/text', PRINT, 'src/font-files', 'src/server/message'],
    packages: [
      'node',
      'zod',
      'fastify',
      '@fastify/helmet',
      '@fastify/multipart',
      '@fastify/rate-limit',
      '@fastify/swagger',
      'fastify-type-provider-zod',
    ],
    why: 'no formula and no geometry: it keeps, serves and asks the core',
    entry: true,
  },
  { folder: 'src/server/message', may: ['src/text'], why: 'what page and server say to each other, nothing more' },
  { folder: 'src/server/answer', may: [], why: 'how anything is answered or refused, whatever was asked' },
  { folder: 'src/server/keep', may: ['src/server/answer'], why: 'keeping knows no routes, only how to refuse' },
  { folder: 'src/server/paper', may: ['src/server/answer'], why: 'papers are worked out in a thread that knows no routes' },
  {
    folder: 'src/server/routes',
    may: ['answer', 'keep', 'paper'].map((part) => `src/server/${part}`),
    packages: ['@fastify/static'],
    why: 'routes join what is kept and worked out to addresses',
  },

  {
    folder: 'src/app',
    may: [
      ...BASE,
      PRINT,
      ...GEOMETRY,
      'src/picture',
      'src/shapes',
      'src/font-reader',
      'src/result',
      ...DOCUMENTS,
      ...JOB,
      'src/server/message',
    ],
    packages: ['react', 'react-dom', 'comlink', 'zod'],
    why: 'no formula: what is shown was computed by the job; of the server it knows only the messages',
    entry: true,
  },
  { folder: 'src/app/work', may: [], packages: ['dejavu-fonts-ttf'], why: 'the worker knows the job and nothing of the page' },
  { folder: 'src/app/state', may: ['src/app/work'], packages: ['zustand'], why: 'what a sheet holds knows nothing that is drawn' },
  { folder: 'src/app/words', may: ['src/app/work'], why: 'texts of the page, and of what the worker tells' },
  {
    folder: 'src/app/look',
    may: ['work', 'words'].map((p) => `src/app/${p}`),
    packages: ['@fontsource/source-sans-3', '@fontsource/source-code-pro'],
    why: 'what every page has in common',
  },
  {
    folder: 'src/app/picture',
    may: ['work', 'state', 'words', 'look'].map((p) => `src/app/${p}`),
    why: 'views and places without a canvas',
  },
  { folder: 'src/app/picture/paint', may: [], why: 'the canvas, outside React' },
  { folder: 'src/app/picture/panel', may: ['src/app/picture/paint'], why: 'the canvas in the page, with its forms and lists' },
  ...APP_CHARTS.map((folder) => ({
    folder,
    may: ['work', 'state', 'words', 'look', 'picture', 'picture/paint', 'picture/panel'].map((p) => `src/app/${p}`),
    packages: folder === 'src/app/chart' ? ['pure-rand'] : [],
    why: 'parts of a page that stand beside each other and know no sheet',
  })),
  {
    folder: 'src/app/run',
    may: [...['work', 'state', 'words', 'look', 'picture', 'picture/paint', 'picture/panel'].map((p) => `src/app/${p}`), ...APP_CHARTS],
    why: 'at the machine: put together from parts of the page',
  },
  {
    folder: 'src/app/sheet',
    may: [
      ...['work', 'state', 'words', 'look', 'picture', 'picture/paint', 'picture/panel', 'run'].map((p) => `src/app/${p}`),
      ...APP_CHARTS,
    ],
    why: 'the sheet of one job joins all parts of the page',
  },
];
