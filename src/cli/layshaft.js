#!/usr/bin/env node
// The door for `npx layshaft`: makes Node read TypeScript, with the settings of this project and
// not of the folder that it is called from, then hands over.
import { fileURLToPath } from 'node:url';
import { register } from 'tsx/esm/api';

register({ tsconfig: fileURLToPath(new URL('../../tsconfig.json', import.meta.url)) });
const { run } = await import('./main.ts');
const { createTerminal } = await import('./terminal.ts');
process.exitCode = await run(process.argv.slice(2), createTerminal());
