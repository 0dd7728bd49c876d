/** What the schemas of files and shapes say of their keys, listed like all that is said, for whoever writes it in another language. */
import { schemaOf, schemas } from '../src/job/files/catalogue.ts';
import { shapeForms } from '../src/job/request/shape-keys.ts';
import { bodyOf } from '../src/text/body.ts';
import { described } from '../src/text/described.ts';
import type { Text } from '../src/text/text.ts';
import type { ListedTemplate } from './templates.ts';

interface Schema {
  readonly description?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly items?: Schema;
}

/** Every text that page or command line may show of a key, with the key under which it is translated. */
export const describedKeys = (): readonly Pick<ListedTemplate, 'key' | 'template'>[] => {
  const texts = [
    ...Object.keys(schemas).flatMap((name) => textsIn((schemaOf(name) ?? {}) as Schema, name)),
    ...shapeForms().flatMap(({ keys }) => keys.map(({ about }) => about)),
  ];
  const byKey = new Map(texts.map(bodyOf).map(({ key = '', template }) => [key, template]));
  return [...byKey].map(([key, template]) => ({ key, template }));
};

const textsIn = ({ description, properties = {}, items }: Schema, place: string): readonly Text[] => [
  ...(description === undefined ? [] : [described(place, description)]),
  ...Object.entries(properties).flatMap(([key, inner]) => textsIn(inner, `${place}.${key}`)),
  ...(items === undefined ? [] : textsIn(items, place)),
];
