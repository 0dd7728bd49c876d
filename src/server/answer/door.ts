/** Who may speak to the server: only pages it served itself, under an address it is known by. */
import { isIP } from 'node:net';
import { say } from '../../text/say.ts';
import { Refusal } from './refusal.ts';

/** The headers of a request that say where it comes from. */
export interface Caller {
  readonly host?: string | undefined;
  readonly origin?: string | undefined;
  readonly site?: string | undefined;
}

const HERE = ['127.0.0.1', 'localhost', '::1'];
const EVERYWHERE = ['0.0.0.0', '::'];

const anotherPage = say('server.unknown-origin')`The request came from another page. Only the pages of this server may use it.`;

/**
 * Throws a refusal. A page elsewhere can give its own name the address of this computer (DNS rebinding) and would then read the
 * jobs as if they were its own; but the browser still says the name it asked for. `listening` is the address the server was told to
 * listen on; where that is every address, any number is right and only names are refused, since a number cannot be rebound.
 */
export const mustBeKnown = (caller: Caller, listening: string, data: boolean): void => {
  const name = nameOf(caller.host ?? '');
  if (name === undefined || !known(name, listening))
    throw new Refusal(
      403,
      'unknown-host',
      say('server.unknown-host')`The request uses a name this server does not know. Open it by the address it printed when it started.`,
    );
  if (caller.origin !== undefined && caller.origin !== `http://${caller.host}`) throw new Refusal(403, 'unknown-origin', anotherPage);
  if (data && caller.site !== undefined && caller.site !== 'same-origin' && caller.site !== 'none')
    throw new Refusal(403, 'unknown-origin', anotherPage);
};

const known = (name: string, listening: string): boolean =>
  HERE.includes(name) || name === listening.toLowerCase() || (EVERYWHERE.includes(listening) && isIP(name) !== 0);

/** The name in 'name:port' or '[::1]:port'; none where it is spelled in any other way. */
const nameOf = (host: string): string | undefined => {
  const match = /^(?:\[([0-9a-f:.]+)\]|([a-z0-9.-]+))(?::\d{1,5})?$/i.exec(host);
  return (match?.[1] ?? match?.[2])?.toLowerCase();
};
