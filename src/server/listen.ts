/** Begins to listen: at the port that was asked for, or at the first free one from the usual one upwards. */
import type { Server } from './routes/room.ts';

export const USUAL_PORT = 4173;
const TRIES = 20;

/** The address to open. Throws the error of the system where no port can be had. */
export const listen = async (server: Server, host: string, port?: number): Promise<string> => {
  const ports = port === undefined ? Array.from({ length: TRIES }, (_, i) => USUAL_PORT + i) : [port];
  for (const next of ports) {
    try {
      return addressOf(await server.listen({ host, port: next }), host);
    } catch (error) {
      if ((error as { code?: string }).code !== 'EADDRINUSE' || next === ports.at(-1)) throw error;
    }
  }
  throw new Error('No port was tried.');
};

/** 'Every address' is none that can be opened. */
const addressOf = (listening: string, host: string): string =>
  host === '0.0.0.0' || host === '::' ? `http://127.0.0.1:${new URL(listening).port}` : listening;
