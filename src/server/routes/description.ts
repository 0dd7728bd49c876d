/** The server's own description: as an OpenAPI document for programs, and as a plain page for people. */
import { paths } from '../message/answers.ts';
import type { Room, Server } from './room.ts';

interface Operation {
  readonly summary?: string;
  readonly responses?: Readonly<Record<string, unknown>>;
}

type Described = Readonly<Record<string, Readonly<Record<string, Operation>>>>;

const STYLE_SHEET = `${paths.page}/page.css`;

export const descriptionRoutes = (server: Server, { version }: Room): void => {
  const hidden = { schema: { hide: true } };
  server.get(paths.openapi, hidden, () => server.swagger());
  server.get(paths.page, hidden, (_, reply) =>
    reply.type('text/html; charset=utf-8').send(pageOf((server.swagger().paths ?? {}) as unknown as Described, version)),
  );
  server.get(STYLE_SHEET, hidden, (_, reply) => reply.type('text/css; charset=utf-8').send(STYLE));
};

const pageOf = (described: Described, version: string): string => `<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>What the server answers</title>
<link rel="stylesheet" href="${STYLE_SHEET}"></head>
<body>
<main>
<h1>What the server answers</h1>
<p>Kerfwright ${escaped(version)}. For programs: <a href="${paths.openapi}">the same as an OpenAPI document</a>, with every field of what is sent and answered.
Every error is JSON with a code, a sentence and, where a file is at fault, its fields.</p>
<table>
<thead><tr><th scope="col">Asked</th><th scope="col">What it does</th><th scope="col">Answers</th></tr></thead>
<tbody>
${Object.entries(described)
  .flatMap(([path, operations]) => Object.entries(operations).map(([method, o]) => rowOf(method, path, o)))
  .join('\n')}
</tbody>
</table>
</main>
</body>
</html>
`;

const rowOf = (method: string, path: string, { summary, responses }: Operation): string =>
  `<tr><td><code>${escaped(method.toUpperCase())} ${escaped(path)}</code></td><td>${escaped(summary ?? '')}</td><td>${escaped(Object.keys(responses ?? {}).join(', '))}</td></tr>`;

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');

const STYLE = `:root { color-scheme: light dark; }
body { font: 1rem/1.5 sans-serif; margin: 2rem auto; max-width: 64rem; padding: 0 1rem; }
table { border-collapse: collapse; width: 100%; }
th, td { border-top: 1px solid; padding: 0.4rem 0.8rem 0.4rem 0; text-align: left; vertical-align: top; }
code { white-space: nowrap; }
`;
