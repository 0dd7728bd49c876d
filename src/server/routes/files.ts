/** The route of the files a job is handed out as, worked out from the revision that is saved and the shop that is kept. */
import { z } from 'zod';
import { name as asName, list, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { notFound, notValid } from '../answer/refusal.ts';
import { stemOf } from '../keep/job-file.ts';
import { paths, type ShopRecord } from '../message/answers.ts';
import type { JobRecord } from '../message/job-record.ts';
import type { Made } from '../paper/make.ts';
import { plainStem, typeOf } from '../paper/names.ts';
import { errors, idParams, type Room, type Server } from './room.ts';

/** Answers that are remembered, so that the next paper of the same job is there at once. */
const MOST_REMEMBERED = 8;

/** Our own pictures need no script, and no other page may hold them. */
const LOCKED_IN = "default-src 'none'; style-src 'unsafe-inline'; sandbox";

export const fileRoutes = (server: Server, room: Room): void => {
  const made = remembering(room);
  server.get(
    paths.file(':id', ':name'),
    {
      schema: {
        summary:
          "A file of the handout: 'program', 'setup', 'set-up-sheet', 'quotation', 'drawing-picture', 'proof-picture', 'edge-picture', 'answer'",
        params: idParams.extend({ name: z.string().regex(/^[a-z0-9-]{1,40}$/) }),
        produces: ['application/pdf', 'image/svg+xml', 'application/json', 'text/plain'],
        response: { 200: z.any().describe('The file'), ...errors(404, 503) },
      },
    },
    async ({ params }, reply) => {
      const answer = await made(await room.jobs.open(params.id));
      if (answer.kind === 'bad') throw notValid(words.noPapers, answer.findings);
      const file = Object.hasOwn(answer.files, params.name) ? answer.files[params.name] : undefined;
      if (file === undefined) throw notFound(missing(params.name, answer));
      const content = typeof file.content === 'string' ? file.content : Buffer.from(file.content);
      return reply
        .type(typeOf(file.fileName))
        .header('content-disposition', `attachment; filename="${file.fileName}"`)
        .header('content-security-policy', LOCKED_IN)
        .send(content);
    },
  );
};

const missing = (name: string, { files, sentence }: Extract<Made, { kind: 'made' }>): Text => {
  const there = Object.keys(files);
  return there.length === 0 ? words.noFiles(name, sentence) : words.otherFiles(name, there, sentence);
};

const words = phrases('server-file', {
  noPapers: say`The inputs of this job cannot be used, so there are no papers.`,
  noFiles: (file: string, answer: Text) => say`This job has no file '${{ file: asName(file) }}'. Its answer: ${{ answer }}`,
  otherFiles: (file: string, there: readonly string[], answer: Text) =>
    say`This job has no file '${{ file: asName(file) }}', only ${{ there: list(there.map(term)) }}. Its answer: ${{ answer }}`,
});

const remembering = ({ jobs, shop, papers, today }: Room): ((record: JobRecord) => Promise<Made>) => {
  const known = new Map<string, Promise<Made>>();
  const make = async (record: JobRecord, kept: ShopRecord, day: string): Promise<Made> =>
    papers.make({
      input: record.steps[record.cursor]?.input ?? {},
      drawing: await jobs.drawing(record.id),
      drawingName: record.drawingName,
      shop: kept.shop,
      dialect: kept.dialect,
      day,
      stem: plainStem(stemOf(record.drawingName)),
    });
  return async (record) => {
    const [kept, day] = [await shop.open(), today()];
    const key = `${record.id} ${record.revision} ${kept.revision} ${day}`;
    const there = known.get(key);
    if (there !== undefined) return there;
    const making = make(record, kept, day);
    known.set(key, making);
    making.catch(() => known.delete(key));
    for (const old of [...known.keys()].slice(0, -MOST_REMEMBERED)) known.delete(old);
    return making;
  };
};
