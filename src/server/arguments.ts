/** What the server is started with: options of the command line, else of the environment, else the usual. */
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { name, term } from '../text/part.ts';
import { NOTHING, only, phrases, say, symbols } from '../text/say.ts';
import type { Text } from '../text/text.ts';

export interface Start {
  readonly folder: string;
  readonly host: string;
  /** None: the usual one, or the next that is free. */
  readonly port?: number | undefined;
  readonly shopFile?: string | undefined;
}

export type StartAsked =
  | { readonly kind: 'start'; readonly start: Start }
  | { readonly kind: 'help' | 'bad'; readonly lines: readonly Text[] };

const words = phrases('server-option', {
  starts: say`Starts the server of the worksheet and prints its address.`,
  port: say`4173, or the next that is free, when left out`,
  folder: say`where jobs and the shop are kept; KERFWRIGHT_FOLDER, or .kerfwright in your own folder, when left out`,
  host: say`127.0.0.1 when left out: only this computer. Another address opens the server to whoever can reach it`,
  shop: say`a shop file to start with, where no shop is kept yet`,
  help: say`this text`,
  noPort: (typed: string) => say`'${{ typed: name(typed) }}' is not a port: it is a whole number up to 65535.`,
});

const option = (typed: string, about: Text): Text => symbols`  ${term(typed.padEnd(18))} ${about}`;

const HELP: readonly Text[] = [
  words.starts,
  NOTHING,
  option('--port <number>', words.port),
  option('--folder <path>', words.folder),
  option('--host <address>', words.host),
  option('--shop <file>', words.shop),
  option('--help', words.help),
];

type Environment = Readonly<Record<string, string | undefined>>;

export const startFrom = (args: readonly string[], environment: Environment, home: string): StartAsked => {
  try {
    const { values } = parseArgs({
      args: [...args],
      options: {
        port: { type: 'string' },
        folder: { type: 'string' },
        host: { type: 'string' },
        shop: { type: 'string' },
        help: { type: 'boolean' },
      },
    });
    if (values.help === true) return { kind: 'help', lines: HELP };
    const port = values.port === undefined ? undefined : Number(values.port);
    if (port !== undefined && !(Number.isInteger(port) && port >= 0 && port <= 65535))
      return { kind: 'bad', lines: [words.noPort(values.port ?? '')] };
    const folder = values.folder ?? filled(environment['KERFWRIGHT_FOLDER']) ?? join(home, '.kerfwright');
    return {
      kind: 'start',
      start: {
        folder: resolve(folder),
        host: values.host ?? '127.0.0.1',
        port,
        shopFile: values.shop === undefined ? undefined : resolve(values.shop),
      },
    };
  } catch (error) {
    return { kind: 'bad', lines: [only(name(error instanceof Error ? error.message : String(error))), NOTHING, ...HELP] };
  }
};

const filled = (text: string | undefined): string | undefined => (text === undefined || text.trim() === '' ? undefined : text);
