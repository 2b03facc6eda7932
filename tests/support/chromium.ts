import { existsSync, mkdirSync, mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { delimiter, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** What a browser is started with; fits Playwright's launch options as it stands. */
export interface Chromium {
  readonly executablePath: string;
  readonly args: string[];
  readonly env: Record<string, string>;
}

const INSTALLED = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

/**
 * A Chromium for the tests: the one that the environment variable CHROME names, else an installed
 * Chromium or Chrome, else the one inside the npm package @sparticuz/chromium.
 */
export async function findChromium(): Promise<Chromium> {
  const installed = process.env.CHROME ?? findOnPath(INSTALLED);
  if (installed) return { executablePath: installed, args: inferArgs(), env: ownEnvironment() };
  return describePacked(await unpackOnce());
}

function findOnPath(names: readonly string[]): string | undefined {
  const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean);
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).find(existsSync);
}

/** No sandbox for root, who may not have one; and nothing that calls out by itself. */
function inferArgs(): string[] {
  const quiet = [
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-domain-reliability',
    '--disable-sync',
    '--no-default-browser-check',
    '--no-first-run',
    '--no-pings',
  ];
  const drawing = ['--disable-gpu', '--disable-dev-shm-usage', '--font-render-hinting=none'];
  const root = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  return [...quiet, ...drawing, ...root];
}

function ownEnvironment(): Record<string, string> {
  const entries = Object.entries(process.env).filter(([, value]) => value !== undefined);
  return Object.fromEntries(entries) as Record<string, string>;
}

/** The packed browser brings its shared libraries and fonts; a bare machine has neither. */
function describePacked(folder: string): Chromium {
  const env = ownEnvironment();
  const libraries = [join(folder, 'al2023', 'lib'), env.LD_LIBRARY_PATH];
  return {
    executablePath: join(folder, 'chromium'),
    // It is a build for hosts without user namespaces: its sandbox never starts.
    args: [...new Set([...inferArgs(), '--no-sandbox', '--no-zygote'])],
    env: {
      ...env,
      LD_LIBRARY_PATH: libraries.filter(Boolean).join(':'),
      FONTCONFIG_PATH: join(folder, 'fonts'),
    },
  };
}

/**
 * Unpacks beside the place where the browser is wanted and moves it there in one step, so that two
 * test runs that start together never see half a browser.
 */
async function unpackOnce(): Promise<string> {
  const { bin, version } = await locatePackage();
  const cache = fileURLToPath(new URL('../../node_modules/.cache/chromium', import.meta.url));
  const wanted = join(cache, version);
  if (existsSync(wanted)) return wanted;
  mkdirSync(cache, { recursive: true });
  const own = mkdtempSync(join(cache, 'unpacking-'));
  await unpack(bin, own);
  writeFontSettings(own, wanted);
  moveInto(own, wanted);
  return wanted;
}

async function locatePackage(): Promise<{ bin: string; version: string }> {
  const main = fileURLToPath(import.meta.resolve('@sparticuz/chromium'));
  const folder = resolve(main, '..', '..');
  const { default: about } = await import(join(folder, 'package.json'), { with: { type: 'json' } });
  return { bin: join(folder, 'bin'), version: about.version };
}

/**
 * Kludge: the package unpacks into the folder for temporary files and nowhere else, so that folder
 * is another one for as long as this takes.
 */
async function unpack(bin: string, into: string): Promise<void> {
  const { inflate } = await import('@sparticuz/chromium');
  const before = process.env.TMPDIR;
  process.env.TMPDIR = into;
  try {
    const archives = ['chromium.br', 'fonts.tar.br', 'swiftshader.tar.br', 'al2023.tar.br'];
    await Promise.all(archives.map((archive) => inflate(join(bin, archive))));
  } finally {
    if (before === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = before;
  }
}

/** The settings in the package look for fonts in a fixed place that is not ours. */
function writeFontSettings(folder: string, wanted: string): void {
  const settings = `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${join(wanted, 'fonts')}</dir>
  <cachedir>${join(wanted, 'fonts-cache')}</cachedir>
</fontconfig>
`;
  writeFileSync(join(folder, 'fonts', 'fonts.conf'), settings);
}

function moveInto(own: string, wanted: string): void {
  try {
    renameSync(own, wanted);
  } catch (error) {
    if (!existsSync(wanted)) throw error;
    rmSync(own, { recursive: true, force: true });
  }
}
