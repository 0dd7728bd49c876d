#!/usr/bin/env node
/** The command `kerfwright` as a process: what is compiled of it is kept for its next start, where Node can. */
import * as nodeModule from 'node:module';

// From Node 22 on; what Node 20 does not have is missing in its types too.
(nodeModule as { readonly enableCompileCache?: () => void }).enableCompileCache?.();
await import('./command-line.ts');
