/** What a test takes for granted. */

/** The value, or an error that says at which line the test found nothing where it relies on something. */
export const there = <T>(value: T): NonNullable<T> => {
  if (value !== undefined && value !== null) return value;
  throw new Error(`nothing is there, where the test relies on it${new Error('here').stack?.split('\n')[2] ?? ''}`);
};
