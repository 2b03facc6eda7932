import { rmSync } from 'node:fs';
import type { TestProject } from 'vitest/node';

/** Takes away the folder of prepared dependencies that this run made for itself. */
export function setup(project: TestProject): () => void {
  return () => rmSync(project.vite.config.cacheDir, { recursive: true, force: true });
}
