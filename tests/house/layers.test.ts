import { describe, expect, test } from 'vitest';
import { findCycles, findLayerBreaks, findStrayImports, ROOMS } from '../support/layers.ts';
import { readTree, type SourceTree } from '../support/source-tree.ts';

const SOURCE = readTree('src', ['.ts', '.js']);

describe('the rooms of src', () => {
  test('import one way only', () => {
    expect(findLayerBreaks(SOURCE)).toEqual([]);
  });

  test('hold no loop of imports', () => {
    expect(findCycles(SOURCE)).toEqual([]);
  });

  test('leave the reactive runtime to the graph', () => {
    expect(findStrayImports(SOURCE, '@observablehq/runtime', 'graph')).toEqual([]);
  });

  test('leave the plotting library to the charts', () => {
    expect(findStrayImports(SOURCE, '@observablehq/plot', 'chart')).toEqual([]);
  });

  test('are all known to the check', () => {
    const rooms = new Set([...SOURCE.keys()].map((path) => path.split('/')[1]));
    expect(ROOMS).toEqual(expect.arrayContaining([...rooms]));
  });
});

describe('the check of layers', () => {
  test('finds an import that goes up', () => {
    const tree = made({ 'src/units/unit.ts': "import { a } from '../page/a.ts';" });
    expect(findLayerBreaks(tree)).toEqual([
      'src/units/unit.ts imports src/page/a.ts: units comes before page',
    ]);
  });

  test('counts imports of types, late imports and passed-on exports', () => {
    const ways = [
      "import type { A } from '../sheet/a.ts';",
      "type A = import('../sheet/a.ts').A;",
      "const a = await import('../sheet/a.ts');",
      "export { a } from '../sheet/a.ts';",
      "import '../sheet/a.ts';",
    ];
    const found = ways.map((way) => findLayerBreaks(made({ 'src/units/u.ts': way })).length);
    expect(found).toEqual([1, 1, 1, 1, 1]);
  });

  test('allows an import that goes down and one within the room', () => {
    const text = "import '../units/unit.ts'; import './b.ts'; import 'marked';";
    expect(findLayerBreaks(made({ 'src/sheet/a.ts': text }))).toEqual([]);
  });

  test('keeps the terminal away from the page', () => {
    const tree = made({ 'src/cli/main.ts': "import '../page/a.ts';" });
    expect(findLayerBreaks(tree)).toEqual([
      'src/cli/main.ts imports src/page/a.ts: cli does without page',
    ]);
  });

  test('finds an import that leaves src', () => {
    const tree = made({ 'src/cli/main.ts': "import '../../tests/support/a.ts';" });
    expect(findLayerBreaks(tree)).toEqual([
      'src/cli/main.ts imports tests/support/a.ts, which stands in no room',
    ]);
  });

  test('is not taken in by words in a comment or a text', () => {
    const text = "// import '../page/a.ts'\nconst a = \"import '../page/a.ts'\";";
    expect(findLayerBreaks(made({ 'src/units/u.ts': text }))).toEqual([]);
  });
});

describe('the search for loops', () => {
  test('finds a loop of three and names it', () => {
    const tree = made({
      'src/units/a.ts': "import './b.ts';",
      'src/units/b.ts': "import type { C } from './c.ts';",
      'src/units/c.ts': "import './a.ts';",
    });
    expect(findCycles(tree)).toEqual([
      'src/units/a.ts → src/units/b.ts → src/units/c.ts → src/units/a.ts',
    ]);
  });

  test('finds a file that imports itself', () => {
    expect(findCycles(made({ 'src/units/a.ts': "import './a.ts';" }))).toHaveLength(1);
  });

  test('does not take two ways to the same file for a loop', () => {
    const tree = made({
      'src/units/a.ts': "import './b.ts'; import './c.ts';",
      'src/units/b.ts': "import './c.ts';",
      'src/units/c.ts': '',
    });
    expect(findCycles(tree)).toEqual([]);
  });
});

describe('the check of packages', () => {
  test('finds a package outside its room, parts of it included', () => {
    const tree = made({
      'src/page/a.ts': "const plot = await import('@observablehq/plot/src/plot.js');",
      'src/chart/a.ts': "import '@observablehq/plot';",
    });
    expect(findStrayImports(tree, '@observablehq/plot', 'chart')).toEqual([
      'src/page/a.ts imports @observablehq/plot, which is for src/chart',
    ]);
  });
});

function made(files: Record<string, string>): SourceTree {
  return new Map(Object.entries(files));
}
