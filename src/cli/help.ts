import type { HelpCommand, Misuse } from './command.ts';
import { DONE, type ExitCode, refuse, type Terminal } from './terminal.ts';

const OVERVIEW = `layshaft: works the sheets of a gearbox conversion in the terminal.

  npx layshaft solve SHEET [--given NAME=ENTRY]... [--json]
      Works a sheet and prints its results, its checks and its problems.
  npx layshaft check SHEET...
      Reads sheets without working them and lists every problem with its place.
  npx layshaft chart SHEET TITLE --svg FILE | --csv FILE
      Draws a chart of a sheet, or writes its points as a table.
  npx layshaft help COMMAND
      Says more about one of these.

SHEET is a path, a file name, or the name alone: notebooks/20-gearing.md, 20-gearing.md and
20-gearing are the same sheet. Sheets that it carries values from are read beside it.

Exit code: 0 done; 1 a problem in a sheet or an entry; 2 the command itself was wrong.

To begin with:

  npx layshaft solve 20-gearing
  npx layshaft solve 20-gearing --given "axle_ratio=3.07" --given "cruise_speed=70 mph" --json
`;

const SOLVE = `layshaft solve SHEET [--given NAME=ENTRY]... [--json]

Works a sheet with the readings that stand in it, except those named with --given.

  --given NAME=ENTRY   a reading, as it would be typed on the page: "rim_diameter=15 in",
                       "finger_reading=3 1/8 in", "wanted_gap=25 thou", "aspect_ratio=60 %".
                       Without a unit the reading is taken in the unit of the sheet.
                       A list:       "gear_ratios=[2.95, 1.95, 1.35]"
                       with units:   "shim_sizes=[0.010, 0.015] in"
                       A table row:  "gear_ratios=Close five-speed"
                       Nothing:      "measured_rollout="
                       Name each reading once; put quotes around an entry that has blanks.
  --json               a record for other programs instead of lines for people:

      {"sheet": NAME,
       "results": {NAME: {"value": number, list or null, "unit", "text"}},
       "checks": [{"name", "verdict": "pass", "fail" or "unknown", "text"}],
       "problems": [{"code", "message", "cell", "place"}]}

      "value" is in "unit" and not rounded; "text" is the result as the page shows it. A result
      without a value has null, and its text says what it waits for.

Exit code: 0 worked, whatever the checks say; 1 a problem in the sheet or in an entry, listed under
"problems"; 2 the command itself was wrong.
`;

const CHECK = `layshaft check SHEET... [--json]

Reads the sheets, and those that they carry values from, and lists every problem with its place:

  notebooks/20-gearing.md:41:13: cannot add 3 in (length) to 2 rpm (turning speed)

  --json   a list of {"code", "message", "cell", "place"} instead.

Exit code: 0 no problem; 1 at least one; 2 the command itself was wrong.
`;

const CHART = `layshaft chart SHEET TITLE [--given NAME=ENTRY]... --svg FILE | --csv FILE

Works a chart of a sheet and writes it as a drawing or as a table of its points; both at once if
both are named. The title may be in capitals or not. FILE may be - for the terminal itself.

  npx layshaft chart 70-release-bearing "Gap left against disc wear" --svg gap.svg
  npx layshaft chart 20-gearing "Engine speed against road speed" --csv -

  --given NAME=ENTRY   as for solve.

Exit code: 0 written; 1 a problem in the sheet or in an entry; 2 the command itself was wrong.
`;

const HELP = `layshaft help COMMAND

Says more about solve, check or chart; npx layshaft --help lists them.
`;

const TEXTS: Readonly<Record<string, string>> = {
  solve: SOLVE,
  check: CHECK,
  chart: CHART,
  help: HELP,
};

/** Prints help on all of it, or on one command. */
export function help(command: HelpCommand, terminal: Terminal): ExitCode {
  terminal.write(command.about === undefined ? OVERVIEW : (TEXTS[command.about] ?? OVERVIEW));
  return DONE;
}

/** Says what was wrong with the command and where to read more. */
export function correct(misuse: Misuse, terminal: Terminal): ExitCode {
  const usage = misuse.about === undefined ? undefined : TEXTS[misuse.about]?.split('\n')[0];
  const more = `npx layshaft ${misuse.about === undefined ? '--help' : `help ${misuse.about}`}`;
  const hint = usage === undefined ? `See ${more}` : `Usage: npx ${usage}\nSee ${more}`;
  return refuse(terminal, misuse.sentence, hint);
}
