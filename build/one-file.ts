import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';

/** What comes from beside the page, and the file that has the same inside. */
const INSIDE: Readonly<Record<string, string>> = {
  './make-worker.ts': locate('make-worker-inside.ts'),
  './shipped.ts': locate('shipped-inside.ts'),
  './export-files.ts': locate('export-files-inside.ts'),
};

/**
 * Makes of the one file a page that needs nothing beside it: the worker comes from inside, nothing is
 * preloaded, and the policy lets in the scripts and styles of this file by their hashes and no others.
 */
export function oneFile(): Plugin {
  return {
    name: 'layshaft-one-file',
    enforce: 'post',
    resolveId: {
      order: 'pre',
      handler: (source) => INSIDE[source],
    },
    transformIndexHtml: { order: 'pre', handler: dropLinks },
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        for (const [name, output] of Object.entries(bundle)) {
          if (output.type === 'asset' && name.endsWith('.html')) {
            output.source = sealPage(String(output.source));
            output.fileName = 'layshaft.html';
          } else delete bundle[name];
        }
      },
    },
  };
}

/** Nothing is fetched ahead, and the mark is drawn from the page's own text. */
export function dropLinks(html: string): string {
  const links = /<link\s[^>]*rel="(?:preload|manifest|apple-touch-icon)"[^>]*>\s*/g;
  const icon = Buffer.from(readFileSync(locate('mark.svg'))).toString('base64');
  return html
    .replaceAll(links, '')
    .replace(/(<link rel="icon" href=")[^"]*/, `$1data:image/svg+xml;base64,${icon}`);
}

/** The page under a policy that lets in the scripts and styles that stand in it, and no others. */
export function sealPage(page: string): string {
  const policy = [
    "default-src 'none'",
    `script-src ${hashesOf(page, 'script')}`,
    `style-src ${hashesOf(page, 'style')}`,
    "style-src-attr 'unsafe-inline'",
    'font-src data:',
    'img-src data: blob:',
    'worker-src blob:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
  return page.replace(/(http-equiv="Content-Security-Policy"\s+content=")[^"]*/, `$1${policy}`);
}

function hashesOf(page: string, tag: 'script' | 'style'): string {
  const bodies = [...page.matchAll(new RegExp(`<${tag}(?:\\s[^>]*)?>([\\s\\S]*?)</${tag}>`, 'g'))];
  const hashes = bodies.map(([, body]) => createHash('sha256').update(body!).digest('base64'));
  return hashes.map((hash) => `'sha256-${hash}'`).join(' ') || "'none'";
}

function locate(file: string): string {
  return fileURLToPath(new URL(`../src/page/${file}`, import.meta.url));
}
