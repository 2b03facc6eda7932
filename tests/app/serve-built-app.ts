import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, preview } from 'vite';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    /** Address of the built app, ending in a slash. */
    appAddress: string;
  }
}

/** Builds the app aside and serves it on a free port for the tests in this folder. */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const outDir = mkdtempSync(join(tmpdir(), 'layshaft-app-'));
  const shared = { logLevel: 'warn', mode: 'production' } as const;
  await build({ ...shared, build: { outDir, emptyOutDir: true } });
  const server = await preview({ ...shared, build: { outDir }, preview: { port: 0 } });
  project.provide('appAddress', server.resolvedUrls!.local[0]!);
  return async () => {
    await server.close();
    rmSync(outDir, { recursive: true, force: true });
  };
}
