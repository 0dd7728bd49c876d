/** Routes of the shop with the words of its control, and of the server's health. */

import { mustBePlain } from '../answer/plain.ts';
import { theShop } from '../keep/shop.ts';
import { healthSchema, paths, shopRecordSchema } from '../message/answers.ts';
import { errors, MB, type Room, type Server } from './room.ts';

export const shopRoutes = (server: Server, { shop, version, folder }: Room): void => {
  server.get(paths.shop, { schema: { summary: 'The current shop', response: { 200: shopRecordSchema, ...errors() } } }, () => shop.open());
  server.put(
    paths.shop,
    {
      bodyLimit: 8 * MB,
      schema: {
        summary: 'Saves the shop, once every value of it can be used; faults are listed with their fields',
        body: shopRecordSchema,
        response: { 200: shopRecordSchema, ...errors(400, 409, 413) },
      },
    },
    ({ body }) => {
      mustBePlain(body.shop, theShop);
      return shop.save(body);
    },
  );
  server.get(
    paths.health,
    { schema: { summary: 'Whether the server is well, and which folder it keeps', response: { 200: healthSchema, ...errors() } } },
    () => ({
      answer: 'well' as const,
      version,
      folder,
    }),
  );
};
