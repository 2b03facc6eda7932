const FRAMES = 20;

/** Milliseconds of an empty frame at 60 a second, as this machine keeps them. */
export async function measureFrame(): Promise<number> {
  const start = performance.now();
  for (let i = 0; i < FRAMES; i += 1) {
    await new Promise((resolve) => setTimeout(resolve, 1000 / 60));
  }
  return (performance.now() - start) / FRAMES;
}
