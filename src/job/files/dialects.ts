/** Dialects for whoever runs a job: the standard one, and those in files. */
export { type Dialect, standardDialect } from '../../nc/dialect/dialect.ts';
export { readDialect as readDialectFile } from '../../nc/dialect/parse.ts';
