/** Before any test: unpacks the browser once, since two processes that unpack it at once break each other's. */
import { browserPath } from './browser.ts';

export default async (): Promise<void> => {
  await browserPath();
};
