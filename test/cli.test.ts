/** The command line as its users meet it: real files, exit codes, nothing but sentences when input is bad; in a process of its own where that is the point. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from '../src/cli/commands.ts';

const BIN = 'dist/cli/main.js';
let folder = '';

/** The built program, as a shell starts it. */
const started = (...args: string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [BIN, ...args], { encoding: 'utf8' });
  return { status, stdout, stderr };
};
/** The same command without a process of its own. */
const kerfwright = async (...args: string[]) => {
  let [stdout, stderr] = ['', ''];
  const status = await run(args, {
    out: (text) => {
      stdout += text;
    },
    err: (text) => {
      stderr += text;
    },
    progress: { tell: () => undefined, done: () => undefined },
    today: new Date().toISOString().slice(0, 10),
  });
  return { status, stdout, stderr };
};
const inFolder = (name: string, content: string): string => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};

beforeAll(() => {
  expect(existsSync(BIN), 'npm test builds before it tests').toBe(true);
  folder = mkdtempSync(join(tmpdir(), 'kerfwright-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('kerfwright answer', () => {
  it('says yes to the die plate, writes program, set-up, pictures and papers, and exits with 0', () => {
    const out = join(folder, 'die');
    const { status, stdout } = started('answer', 'examples/die-plate/die-plate.job.json', '--out', out);
    expect(status).toBe(0);
    expect(stdout.replaceAll('\n', ' ')).toMatch(
      /^Yes\. A 0\.\d\d mm .* wire cuts .* It runs .*, .* of it unattended, and costs [\d,.]+ EUR for one piece(?: \(assumed\))?(?:, without material)?(?:, at invented rates)?\./,
    );
    expect(readdirSync(out).toSorted()).toEqual([
      'die-plate.annex.pdf',
      'die-plate.answer.txt',
      'die-plate.drawing.svg',
      'die-plate.edges.svg',
      'die-plate.hole-table.pdf',
      'die-plate.inspection-sheet.pdf',
      'die-plate.nc',
      'die-plate.proof.svg',
      'die-plate.quotation.pdf',
      'die-plate.set-up-sheet.pdf',
      'die-plate.setup.json',
    ]);
    for (const file of readdirSync(out)) expect(stdout).toContain(file);
  });

  it('takes a bare drawing, says what it assumed, and gives the same as JSON', async () => {
    const text = await kerfwright('answer', 'examples/thick-gear/thick-gear.dxf', '--height', '20', '--finish', '2');
    expect(text.stdout).toContain('Assumptions');
    const { status, stdout } = await kerfwright(
      'answer',
      'examples/thick-gear/thick-gear.dxf',
      '--height',
      '20',
      '--finish',
      '2',
      '--json',
    );
    const answer = JSON.parse(stdout) as {
      answer: string;
      assumed: string[];
      price: { each: { value: number } };
      hours: Record<string, { value: number }>;
    };
    expect(status).toBe(0);
    expect(answer.answer).toBe('yes');
    expect(answer.assumed.join(' ')).toContain('D2');
    expect((answer.hours['attended']?.value ?? 0) + (answer.hours['unattended']?.value ?? 0)).toBeCloseTo(
      answer.hours['total']?.value as number,
      6,
    );
  });

  it('says no to the carbide insert with its sharp corner, with the place and what would help, and exits with 1', async () => {
    const { status, stdout } = await kerfwright('answer', 'examples/form-insert/form-insert.job.json');
    expect(status).toBe(1);
    expect(stdout).toMatch(/^No\. /);
    expect(stdout).toMatch(/corner/);
    expect(stdout).toMatch(/\([\d.]+, [\d.]+\)/);
  });

  it('refuses glass with the reason and exits with 1', async () => {
    const { status, stdout } = await kerfwright('answer', 'examples/die-plate/die-plate.dxf', '--material', 'glass');
    expect(status).toBe(1);
    expect(stdout).toMatch(/^No\. .*conduct/);
  });

  it.each([
    ['a file that is not there', ['answer', 'nowhere.dxf'], /nowhere\.dxf cannot be read: there is no such file/],
    ['a height that is no length', ['answer', 'examples/die-plate/die-plate.dxf', '--height', 'tall'], /'tall' is not a length/],
    ['a length of two readings', ['answer', 'examples/die-plate/die-plate.dxf', '--height', '1,250'], /can be read as/],
    ['a material nobody knows', ['answer', 'examples/die-plate/die-plate.dxf', '--material', 'cheese'], /cheese/],
    ['a wire nobody has', ['answer', 'examples/die-plate/die-plate.dxf', '--wire', 'gold'], /no wire named 'gold'/],
    [
      'a folder where a file stands',
      ['answer', 'examples/form-insert/form-insert.job.json', '--out', 'README.md/x'],
      /Nothing can be written/,
    ],
    ['an option nobody knows', ['answer', 'examples/die-plate/die-plate.dxf', '--colour', 'red'], /unknown option '--colour'/],
    ['no command at all', ['bake'], /unknown command/],
  ])('meets %s with a sentence and exit code 2', async (_, args, sentence) => {
    const { status, stdout, stderr } = await kerfwright(...args);
    expect(status).toBe(2);
    expect(stderr).toMatch(sentence);
    expect(stdout + stderr).not.toMatch(/\n\s+at .*\.(js|ts):/);
  });

  it('keeps its exit code when whoever reads it hangs up', () => {
    const piped = `"${process.execPath}" ${BIN} answer examples/form-insert/form-insert.job.json --json | true; exit \${PIPESTATUS[0]}`;
    expect(spawnSync('bash', ['-c', piped]).status).toBe(1);
  });

  it('locates a wrong value in a job file by its field', () => {
    const job = inFolder('bad.job.json', JSON.stringify({ drawing: 'x.dxf', height: -3, colour: 'red' }));
    const { status, stderr } = started('answer', job);
    expect(status).toBe(2);
    expect(stderr).toMatch(/height/);
    expect(stderr).toMatch(/colour/);
  });
});

describe('kerfwright read', () => {
  it('lists loops with area and perimeter in drawing units, as text and as JSON, and draws the picture', async () => {
    const { status, stdout } = await kerfwright('read', 'examples/die-plate/die-plate.dxf', '--json', '--out', folder);
    const read = JSON.parse(stdout) as {
      units: { name: string; millimetres: number };
      loops: { area: number; depth: number }[];
      openChains: unknown[];
      findings: unknown[];
    };
    expect(status).toBe(0);
    expect(read.units).toMatchObject({ name: 'mm', millimetres: 1 });
    expect(read.loops.filter((l) => l.depth === 1)).toHaveLength(8);
    expect(read.loops.some((l) => Math.abs(l.area - Math.PI * 121) < 1e-6)).toBe(true);
    expect(readFileSync(join(folder, 'die-plate.svg'), 'utf8')).toMatch(/^<svg|^<\?xml/);
    expect((await kerfwright('read', 'examples/die-plate/die-plate.dxf')).stdout).toContain('mm');
  });

  it('reads the others when one file is missing, and exits with 2', async () => {
    const { status, stdout } = await kerfwright('read', 'examples/die-plate/die-plate.dxf', 'nowhere.dxf');
    expect(status).toBe(2);
    expect(stdout).toContain('13 closed loops');
    expect(stdout).toContain('nowhere.dxf cannot be read: there is no such file.');
  });

  it('refuses what is no drawing with a named finding and exit code 2', async () => {
    const { status, stdout } = await kerfwright('read', inFolder('page.dxf', '<html>not a drawing</html>'), '--json');
    expect(status).toBe(2);
    expect((JSON.parse(stdout) as { state: string; findings: { code: string }[] }).findings.length).toBeGreaterThan(0);
  });
});

describe('kerfwright prove', () => {
  const made = async (): Promise<string> => {
    const out = join(folder, 'to-prove');
    await kerfwright('answer', 'examples/die-plate/die-plate.job.json', '--out', out);
    return out;
  };

  it('proves what answer wrote, and refuses it once a coordinate has moved', async () => {
    const out = await made();
    const program = join(out, 'die-plate.nc');
    const good = await kerfwright('prove', program, '--drawing', 'examples/die-plate/die-plate.dxf');
    expect(good.stdout).toMatch(/^Proven/);
    expect(good.status).toBe(0);
    const text = readFileSync(program, 'utf8');
    const lines = text.split('\n');
    const last = lines.findLastIndex((l) => /G01.* X-?\d/.test(l) && !/G4[012]/.test(l));
    lines[last] = (lines[last] as string).replace(
      /([XY])(-?[\d.]+)/g,
      (_, axis: string, at: string) => `${axis}${(Number(at) + 0.05).toFixed(4)}`,
    );
    writeFileSync(program, lines.join('\n'));
    const bad = await kerfwright('prove', program, '--drawing', 'examples/die-plate/die-plate.dxf');
    expect(bad.stdout).toMatch(/^Not proven/);
    expect(bad.status).toBe(1);
  });

  it('refuses a program that cannot be read once, with its line', async () => {
    inFolder('broken.setup.json', readFileSync('examples/die-plate/expected/die-plate.setup.json', 'utf8'));
    const program = inFolder('broken.nc', 'G21 G90\nthis is no program\nM02\n');
    const { status, stdout } = await kerfwright('prove', program, '--drawing', 'examples/die-plate/die-plate.dxf');
    expect(status).toBe(1);
    expect(stdout.match(/Not possible:/g)).toHaveLength(1);
    expect(stdout).toMatch(/in line 2 has the letter/);
  });

  it('asks for the set-up file when there is none beside the program', async () => {
    const { status, stderr } = await kerfwright(
      'prove',
      inFolder('alone.nc', '%\nM02\n%\n'),
      '--drawing',
      'examples/die-plate/die-plate.dxf',
    );
    expect(status).toBe(2);
    expect(stderr).toMatch(/alone\.setup\.json cannot be read/);
  });
});

describe('kerfwright correct', () => {
  const die = 'examples/die-plate/die-plate.job.json';

  it('prints the registers that may be set and exits with 0, and with 1 where they may not', async () => {
    const down = await kerfwright('correct', die, '--measured', 'L2: 27.994 of 28 at 20', 'L3: 21.994 of 22 at 20');
    expect(down.status).toBe(0);
    expect(down.stdout).toMatch(/down by 3\.0 µm/);
    const up = await kerfwright('correct', die, '--measured', 'L2: 28.036 of 28 at 20', '--json');
    expect(up.status).toBe(1);
    expect(JSON.parse(up.stdout)).toMatchObject({ safe: false, findings: [{ code: 'correction-arc-too-tight' }] });
  });

  it('guesses at nothing that can be read in two ways, and asks for something to go by', async () => {
    expect(await kerfwright('correct', die, '--measured', 'L2: 1,250 of 3')).toMatchObject({ status: 2 });
    expect(await kerfwright('correct', die)).toMatchObject({ status: 2 });
  });
});

describe('kerfwright nest', () => {
  it('lays drawings into a plate and writes the job that cuts them out, which is then answered', async () => {
    const out = join(folder, 'plate');
    const laid = await kerfwright('nest', 'examples/mixed-plate/wedge.dxf:2', '--plate', '180x140', '--thickness', '10', '--out', out);
    expect(laid).toMatchObject({ status: 0, stderr: '' });
    const job = readdirSync(out).find((name) => name.endsWith('.job.json')) as string;
    const answered = await kerfwright('answer', join(out, job));
    expect(answered.stdout).toMatch(/^Yes\./);
    expect(answered.stdout).toContain('Proven.');
  });

  it('says what is left over and exits with 1, and refuses a plate that is none', async () => {
    const small = await kerfwright('nest', 'examples/mixed-plate/wedge.dxf:40', '--plate', '180x140', '--thickness', '10', '--within', '2');
    expect(small.status).toBe(1);
    expect(small.stdout).toMatch(/did not fit/);
    expect((await kerfwright('nest', 'examples/mixed-plate/wedge.dxf', '--plate', 'big', '--thickness', '10')).status).toBe(2);
  });
});

describe('kerfwright why, schema and list', () => {
  it('tells a figure down to its leaves, and lists the figures when none is named', async () => {
    const all = await kerfwright('why', 'examples/die-plate/die-plate.job.json');
    expect(all.stdout).toMatch(/^pass\.1\.feed +/m);
    const { status, stdout } = await kerfwright('why', 'examples/die-plate/die-plate.job.json', 'hours.total');
    expect(status).toBe(0);
    expect(stdout).toMatch(/by: .*\n/);
    expect(stdout).toMatch(/shop: the toolroom's wire machine/);
  });

  it('names figures near a key that is not there', async () => {
    const { status, stderr } = await kerfwright('why', 'examples/die-plate/die-plate.job.json', 'total');
    expect(status).toBe(2);
    expect(stderr).toContain('hours.total');
  });

  it.each(['job', 'shop', 'dialect', 'setup'])('prints the schema of a %s file with a description of every field', async (name) => {
    const { status, stdout } = await kerfwright('schema', name);
    const schema = JSON.parse(stdout) as { properties: Record<string, unknown>; description: string };
    expect(status).toBe(0);
    expect(Object.keys(schema.properties).length).toBeGreaterThan(5);
    expect(schema.description.length).toBeGreaterThan(10);
  });

  it('lists materials and wires by their keys', async () => {
    expect((await kerfwright('list', 'materials')).stdout).toMatch(/^d2 /m);
    expect((await kerfwright('list', 'wires')).stdout).toMatch(/0\.25 mm brass/);
  });
});

describe('kerfwright shape', () => {
  it('tells the sizes of a part by numbers, and writes drawings and a job that can be answered', async () => {
    const out = join(folder, 'hexagon');
    const { status, stdout } = await kerfwright(
      'shape',
      'polygon',
      '--across-flats',
      '1 in',
      '--metal',
      'outside',
      '--name',
      'hexagon',
      '--out',
      out,
    );
    expect(status).toBe(0);
    expect(stdout).toMatch(/across flats\s+25\.4000\s+mm/);
    expect(readdirSync(out).toSorted()).toEqual(['hexagon.dxf', 'hexagon.job.json', 'hexagon.sizes.txt', 'hexagon.svg']);
    const again = await kerfwright('answer', join(out, 'hexagon.job.json'), '--height', '20');
    expect(again.status).toBe(0);
    expect(again.stdout).toContain('Sizes of the shape');
  });

  it('goes straight into the whole job', async () => {
    const out = join(folder, 'square');
    const { status, stdout } = await kerfwright(
      'shape',
      'polygon',
      '--sides',
      '4',
      '--across-flats',
      '20',
      '--answer',
      '--height',
      '15',
      '--out',
      out,
    );
    expect(status).toBe(0);
    expect(stdout).toMatch(/^Yes\./);
    expect(readdirSync(out)).toEqual(expect.arrayContaining(['polygon.dxf', 'polygon.nc', 'polygon.quotation.pdf']));
  });

  it('says which number is missing or wrong, and exits with 2', async () => {
    const missing = await kerfwright('shape', 'polygon');
    expect([missing.status, missing.stderr]).toEqual([2, expect.stringContaining('acrossFlats is missing')]);
    const wrong = await kerfwright('shape', 'polygon', '--across-flats', 'wide');
    expect([wrong.status, wrong.stderr]).toEqual([2, expect.stringContaining("'wide' is not a length")]);
    expect((await kerfwright('shape', 'banana')).status).toBe(2);
  });
});
