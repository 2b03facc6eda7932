import { loadExport } from '../../src/page/load-export.ts';
import type { PublishHost } from '../../src/page/publish-host.ts';
import { createTestDesk } from './test-desk.ts';

export const PRINTED = `# Bench

\`\`\`given
reading = 3.2 in "Reading" to 0.001
plate = 0.25 in "Plate" to 0.001
\`\`\`

\`\`\`stack gap "Gap" as in to 0.001
+ reading
- plate
\`\`\`

\`\`\`figures "Set"
gap
\`\`\`
`;

/** What the parts of the view for print get, with what they said. */
export async function createPublishHost(choices: Partial<ReturnType<PublishHost['choices']>> = {}) {
  const made = createTestDesk(PRINTED);
  const said: string[] = [];
  const host: PublishHost = {
    desk: made.desk,
    sheet: made.sheet,
    tools: await loadExport(),
    choices: () => ({
      width: 90,
      colour: 'colour',
      lettering: 'outlines',
      dotsPerInch: 100,
      ...choices,
    }),
    standing: () => ({ ...made.desk, isEntered: () => false }),
    say: (sentence) => said.push(sentence),
  };
  return { ...made, host, said };
}

/** Catches the next file that is handed over. */
export function catchDownload(): Promise<{ readonly name: string; readonly blob: Blob }> {
  const blobs = new Map<string, Blob>();
  const create = URL.createObjectURL;
  const click = HTMLAnchorElement.prototype.click;
  URL.createObjectURL = (blob: Blob) => {
    const address = create.call(URL, blob);
    blobs.set(address, blob);
    return address;
  };
  return new Promise((resolve) => {
    HTMLAnchorElement.prototype.click = function (this: HTMLAnchorElement) {
      URL.createObjectURL = create;
      HTMLAnchorElement.prototype.click = click;
      resolve({ name: this.download, blob: blobs.get(this.href)! });
    };
  });
}

/** The button with these words. */
export function buttonIn(element: Element, words: string): HTMLButtonElement {
  const found = [...element.querySelectorAll('button')].find((one) => one.textContent === words);
  if (found === undefined) throw new Error(`no button "${words}"`);
  return found;
}
