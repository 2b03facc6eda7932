import { unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { run } from '../../src/cli/main.ts';
import { makeTerminal } from './made-terminal.ts';

const SHEET = `# Bench

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
const FILES = { 'notebooks/10-bench.md': SHEET, 'notebooks/00-guide.md': SHEET };

async function publish(line: string, files: Record<string, string> = {}) {
  const terminal = makeTerminal({ ...FILES, ...files });
  const code = await run(['publish', ...line.split(' ')], terminal);
  const zip = terminal.bytes.get('out.zip');
  return { code, terminal, names: zip === undefined ? [] : Object.keys(unzipSync(zip)) };
}

describe('publish', () => {
  test('writes figures and tables of all sheets of the job; the guide is none', async () => {
    const { code, names } = await publish('--zip out.zip --figures svg');
    expect(code).toBe(0);
    expect(names).toEqual([
      'captions.md',
      'figures/10-stack-gap.svg',
      'index.html',
      'sources.md',
      'tables/10-table-set.csv',
      'tables/10-table-set.md',
    ]);
  });

  test('writes only the sheets that are named', async () => {
    const { names } = await publish('00-guide --zip out.zip --figures svg');
    expect(names).toContain('figures/0-stack-gap.svg');
    expect(names).not.toContain('figures/10-stack-gap.svg');
  });

  test('works the job that it is given, and puts it beside', async () => {
    const entries = { '10-bench': { reading: { text: '3.3 in' } } };
    const job = JSON.stringify({
      app: 'layshaft',
      schema: 1,
      title: 'T',
      system: 'metric',
      entries,
      ticks: {},
    });
    const { terminal, names } = await publish('--zip out.zip --job job.json --figures csv', {
      'job.json': job,
    });
    expect(names).toContain('job.json');
    const csv = unzipSync(terminal.bytes.get('out.zip')!)['tables/10-table-set.csv']!;
    expect(new TextDecoder().decode(csv)).toContain('77.47,mm');
  });

  test.each([
    ['', 'publish needs --zip FILE'],
    ['--zip out.zip --width 20', '--width needs a number from 65 to 400, not "20"'],
    ['--zip out.zip --dpi many', '--dpi needs a number from 72 to 1200, not "many"'],
    ['--zip out.zip --figures gif', '--figures knows svg, png, csv, not "gif"'],
    ['--zip out.zip --job none.json', 'there is no file "none.json"'],
    ['20-bench --zip out.zip', 'there is no sheet "20-bench"'],
    ['--zip closed/out.zip --figures csv', 'cannot write closed/out.zip'],
  ])('publish %s is refused', async (line, why) => {
    const { code, terminal } = await publish(line);
    expect(code).toBe(2);
    expect(terminal.errors()).toContain(why);
  });
});
