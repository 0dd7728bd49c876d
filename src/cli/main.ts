#!/usr/bin/env node
/** The command line: reads arguments and files, asks the core, prints. */
process.stdout.write('kerfwright\n');
