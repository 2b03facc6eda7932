import { playwright } from '@vitest/browser-playwright';
import type { PluginOption } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { viteSingleFile } from 'vite-plugin-singlefile';
import { defineConfig, type TestProjectInlineConfiguration } from 'vitest/config';
import { groupScripts } from './build/group-scripts.ts';
import { lateProse } from './build/late-prose.ts';
import { lexerOnly } from './build/lexer-only.ts';
import { oneFile } from './build/one-file.ts';
import { findChromium } from './tests/support/chromium.ts';
import { OWN_CACHE } from './tests/support/own-cache.ts';

const DOM_TESTS = ['tests/page/**', 'tests/drawing/**', 'tests/chart/**'];
const APP_TESTS = 'tests/app/**';
const LARGE_IMPORTS = [
  '@observablehq/plot',
  '@observablehq/runtime',
  '@resvg/resvg-wasm',
  'axe-core',
  'd3-dsv',
  'dompurify',
  'fast-check',
  'fflate',
  'fraction.js',
  'idb',
  'jsqr',
  'marked',
  'opentype.js/dist/opentype.mjs',
  'qr',
];

/** Logic, sheets and the terminal: no DOM. */
function nodeTests(): TestProjectInlineConfiguration {
  return {
    extends: true,
    test: {
      name: 'node',
      environment: 'node',
      // Nothing is timed; a test that hangs must still end.
      testTimeout: 60_000,
      include: ['tests/**/*.test.ts'],
      exclude: [...DOM_TESTS, APP_TESTS],
    },
  };
}

/** What draws or listens: in a real browser. */
async function browserTests(): Promise<TestProjectInlineConfiguration> {
  return {
    extends: true,
    // Two runs at the same time must not prepare each other's dependencies.
    cacheDir: OWN_CACHE,
    // Named, because a dependency found half-way reloads the page under a test.
    optimizeDeps: { include: LARGE_IMPORTS },
    test: {
      name: 'browser',
      include: DOM_TESTS.map((folder) => `${folder}/*.test.ts`),
      globalSetup: 'tests/support/own-cache.ts',
      browser: {
        enabled: true,
        headless: true,
        screenshotFailures: false,
        provider: playwright({
          launchOptions: await findChromium(),
          contextOptions: { locale: 'en-GB', timezoneId: 'UTC', reducedMotion: 'reduce' },
        }),
        instances: [{ browser: 'chromium', viewport: { width: 1024, height: 768 } }],
      },
    },
  };
}

/** The built app as a person meets it. */
function appTests(): TestProjectInlineConfiguration {
  return {
    extends: true,
    test: {
      name: 'app',
      environment: 'node',
      include: [`${APP_TESTS}/*.test.ts`],
      globalSetup: 'tests/app/serve-built-app.ts',
      testTimeout: 60_000,
      hookTimeout: 60_000,
    },
  };
}

/** Everything is kept on the device with the first visit; a newer version waits to be asked for. */
function installable(): PluginOption {
  return VitePWA({
    registerType: 'prompt',
    injectRegister: false,
    workbox: {
      globPatterns: ['**/*.{js,css,html,md,json,svg,png,woff,woff2,wasm,webmanifest}'],
      maximumFileSizeToCacheInBytes: 5_000_000,
      inlineWorkboxRuntime: true,
      cleanupOutdatedCaches: true,
      sourcemap: false,
    },
    manifest: {
      name: 'Layshaft',
      short_name: 'Layshaft',
      description: 'A worksheet for turning an automatic rear-wheel-drive car into a manual one.',
      lang: 'en-GB',
      display: 'standalone',
      start_url: './',
      scope: './',
      background_color: '#fbf9f4',
      theme_color: '#fbf9f4',
      icons: [
        { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
        { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
        { src: 'icon-maskable.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
      ],
    },
  });
}

/** How long each plugin took is of no use to whoever starts the app. */
const QUIET = { checks: { bundlerTimings: false } };

/** `--mode file` makes the copy that opens from a disk: one file, with all in it. */
function pluginsFor(command: string, mode: string): PluginOption[] {
  if (command !== 'build') return [];
  return mode === 'file'
    ? [lexerOnly(), viteSingleFile(), oneFile()]
    : [lexerOnly(), lateProse(), installable()];
}

export default defineConfig(async ({ command, mode }) => {
  const testing = process.env.VITEST !== undefined;
  if (testing)
    Object.assign(process.env, { TZ: 'UTC', LANG: 'en_GB.UTF-8', LC_ALL: 'en_GB.UTF-8' });
  return {
    base: './',
    plugins: pluginsFor(command, mode),
    build: {
      target: 'es2023',
      chunkSizeWarningLimit: 600,
      // Slower than what comes with the bundler, and a fortieth smaller on the way.
      minify: 'terser' as const,
      terserOptions: {
        module: true,
        compress: { ecma: 2020 as const, passes: 3, unsafe_arrows: true },
      },
      copyPublicDir: mode !== 'file',
      rolldownOptions: { ...QUIET, ...groupScripts(mode) },
    },
    worker: { rolldownOptions: QUIET },
    preview: { host: '127.0.0.1', port: 4173 },
    test: {
      allowOnly: false,
      expect: { requireAssertions: true },
      setupFiles: ['tests/support/fixed-seed.ts'],
      projects: testing ? [nodeTests(), await browserTests(), appTests()] : [],
    },
  };
});
