/** What the tests use of the bundler: reading all modules of a pattern at once. */
interface ImportMeta {
  glob<M>(pattern: string, options: { eager: true }): Record<string, M>;
}
