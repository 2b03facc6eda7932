/** What npm does without a script of that name. */
const NPM_ITSELF: ReadonlySet<string> = new Set(['ci', 'install']);

/** Commands that a document tells its reader to type: lines of its `sh` blocks, `&&` taken apart. */
export function listCommands(markdown: string): readonly string[] {
  const blocks = [...markdown.matchAll(/^```(?:sh|bash|console)\n([\s\S]*?)^```/gm)];
  return blocks
    .flatMap((block) => block[1]!.split('\n'))
    .map((line) => line.replace(/(^|\s)#.*$/, '').replace(/^\$ /, ''))
    .flatMap((line) => line.split('&&'))
    .map((command) => command.trim())
    .filter((command) => command !== '');
}

/** Commands of npm and npx that this package does not have; a sentence each. */
export function findUnknownCommands(
  commands: readonly string[],
  about: { readonly scripts: Record<string, string>; readonly programs: ReadonlySet<string> },
): readonly string[] {
  return commands.filter((command) => !isKnown(command, about)).map((c) => `no command: ${c}`);
}

function isKnown(
  command: string,
  about: { readonly scripts: Record<string, string>; readonly programs: ReadonlySet<string> },
): boolean {
  const [program, first = '', second = ''] = command.split(/\s+/);
  if (program === 'npx') return about.programs.has(first);
  if (program !== 'npm') return true;
  return NPM_ITSELF.has(first) || (first === 'run' ? second : first) in about.scripts;
}
