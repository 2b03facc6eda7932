import type { HelpCommand, Misuse } from './command.ts';
import { DONE, type ExitCode, refuse, type Terminal } from './terminal.ts';

const OVERVIEW = `layshaft: works the sheets of a gearbox conversion in the terminal.

  npx layshaft solve SHEET [--job FILE] [--given NAME=ENTRY]... [--json]
      Works a sheet and prints its results, its checks and its problems.
  npx layshaft check SHEET...
      Reads sheets without working them and lists every problem with its place.
  npx layshaft chart SHEET TITLE --svg FILE | --csv FILE
      Draws a chart of a sheet, or writes its points as a table.
  npx layshaft find SHEET RESULT=TARGET --by GIVEN [--json]
      Finds which value of a reading gives a result that is wanted.
  npx layshaft compare SHEET --with "NAME: GIVEN=ENTRY, ..." [--json]
      Works proposals beside the sheet as it is, and says how their results differ.
  npx layshaft practice SHEET --seed N [--json]
      Prints practice problems with fresh numbers, and their answers.
  npx layshaft publish [SHEET...] --zip FILE [--job FILE]
      Puts figures, tables, captions and sources into one zip, fit for print.
  npx layshaft job check FILE [--json]
      Reads a job file and says what in it cannot be read or has no place on the sheets.
  npx layshaft job report FILE --html FILE
      Writes the record of a job as one page: readings, results, checks, steps, notes.
  npx layshaft help COMMAND
      Says more about one of these.

SHEET is a path, a file name, or the name alone: notebooks/20-gearing.md, 20-gearing.md and
20-gearing are the same sheet. Sheets that it carries values from are read beside it.

Exit code: 0 done; 1 a problem in a sheet or an entry; 2 the command itself was wrong.

To begin with:

  npx layshaft solve 20-gearing
  npx layshaft solve 20-gearing --given "axle_ratio=3.07" --given "cruise_speed=70 mph" --json
`;

const SOLVE = `layshaft solve SHEET [--job FILE] [--given NAME=ENTRY]... [--json]

Works a sheet with the readings that stand in it, except those named with --given.

  --job FILE           a job file, as the page hands it out; what is entered in it comes before
                       what is named with --given.
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
       "results": {NAME: {"value": number, list or null, "unit", "text",
                          "worst": {"from", "to"}, "likely": {"from", "to"} or null,
                          "shares": [{"name", "share"}]}},
       "checks": [{"name", "verdict": "pass", "fail" or "unknown", "text"}],
       "problems": [{"code", "message", "cell", "place"}]}

      "value" is in "unit" and not rounded; "text" is the result as the page shows it. A result
      without a value has null, and its text says what it waits for. "worst", "likely" and
      "shares" are there where a reading has a tolerance or was repeated: how far the result may
      lie at worst and with 95 %, in "unit", and whose doubt it is, as parts of 1, the largest
      first. "likely" is null where the result bends too much within the doubt. For a list each
      of the three is a list, one entry an element.

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

const FIND = `layshaft find SHEET RESULT=TARGET --by GIVEN [--given NAME=ENTRY]... [--json]

Asks a sheet backwards: which value of a reading gives the result that is wanted? All answers are
listed, or the nearest where there is none; sizes in stock and rows of a table stand beside them.

  npx layshaft find 20-gearing "top_gear_cruise=2000 rpm" --by axle_ratio
  npx layshaft find 20-gearing "engine_speed_at_cruise=3000" --element 4th --by axle_ratio

  --by GIVEN           the reading to be found; one that is picked from a table has its rows tried.
  --element NAME       which number of a list, by its name or by its place from 1.
  --from, --to ENTRY   where to search; without them the reading's own range, or from a quarter
                       to four times what it is.
  --given NAME=ENTRY   as for solve.
  --json               a record for other programs:

      {"sheet", "result", "element", "given", "target": {"value", "unit", "text"},
       "range": {"from", "to", "unit"}, "depends": true or false, "sentence",
       "solutions": [{"from", "to", "text"}], "closest": {"given", "result"},
       "stocked": [{"name", "given", "result", "text"}], "problems"}

Exit code: 0 answered, if only with "there is none"; 1 a problem in the sheet, an entry, the target
or the range; 2 the command itself was wrong.
`;

const COMPARE = `layshaft compare SHEET --with "NAME: GIVEN=ENTRY, ..."... [--results NAME,...] [--json]

Works a sheet as it is and with each proposal, and sets the results side by side. Differences are
told in sign and words.

  npx layshaft compare 20-gearing --with "Short: axle_ratio=3.73" --with "Tall: axle_ratio=3.31"
  npx layshaft compare 20-gearing --job job.json --results top_gear_cruise,first_gear_overall

  --with "NAME: ..."   a proposal: what it has different, entries as for solve, commas between.
  --results NAME,...   which results; without it all of the sheet.
  --job FILE           a job as the page saves it, with the proposals that it holds.
  --given NAME=ENTRY   as for solve: the same in every column.
  --json               a record for other programs:

      {"sheet", "columns": [{"name", "problems"}],
       "results": {NAME: {"unit", "values": [one a column], "texts": [...],
                          "differences": [null, text...], "differs": true or false}},
       "problems"}

Exit code: 0 compared; 1 a problem in the sheet, the job, a proposal or an entry; 2 the command
itself was wrong.
`;

const PRACTICE = `layshaft practice SHEET --seed N [--count N] [--no-answers] [--json]

Prints problems with fresh numbers from the practice questions of a sheet, and an answer key after
them. The same seed gives the same problems, so that a class can have the same sheet.

  npx layshaft practice 70-release-bearing --seed 7
  npx layshaft practice 20-gearing --seed monday --count 12 --no-answers

  --seed N       a whole number, or a word.
  --count N      how many problems; the questions of the sheet are taken in turn. Without it 6.
  --no-answers   without the answer key.
  --json         a record for other programs:

      {"sheet", "seed", "problems": [{"title", "question", "seed",
       "numbers": [{"name", "label", "text", "value", "unit"}],
       "answer": {"value", "unit", "text", "within"},
       "mistakes": [{"value", "sentence"}]}]}

Exit code: 0 printed; 1 the sheet has no practice question or a problem; 2 the command itself was
wrong.
`;

const PUBLISH = `layshaft publish [SHEET...] --zip FILE [--job FILE] [--width MM] [--dpi N] [--grey]

Writes the figures and tables of the sheets named, or of all sheets, into one zip, with captions,
alternative texts, sources, and a page that shows them. The same job gives the same bytes.

  npx layshaft publish --job job.json --zip write-up.zip
  npx layshaft publish 20-gearing 70-release-bearing --zip figures.zip --width 140 --figures svg

  --zip FILE         the file to write.
  --job FILE         a job as the page saves it; without it the sheets as they come.
  --width MM         width of each figure on paper, 65 to 400; 90, 140 and 190 are a journal's
                     columns. Without it 140. Lettering is 7 pt or more at every width.
  --dpi N            dots per inch of PNG files, 72 to 1200. Without it 300.
  --grey             shades of grey in place of colours.
  --lettering font   texts that stay texts, with the font inside, in SVG files. Without it outlines.
  --figures LIST     svg, png, csv, with commas between. Without it svg,png.
  --tables LIST      md, html, csv, with commas between. Without it md,csv.

Exit code: 0 written; 1 written, and a sheet or an entry has a problem; 2 the command itself was
wrong.
`;

const HELP = `layshaft help COMMAND

Says more about one of the commands; npx layshaft --help lists them.
`;

const JOB = `layshaft job check FILE [--json]
layshaft job report FILE --html FILE

A job file is what the page hands out under Jobs: all that was entered, ticked and noted.

  check    says whose job it is, and lists what of it cannot be read, what was changed after it was
           written, and what has no place on the sheets as they are now. Nothing is written.
 
  report   works every sheet on which something was entered, and writes its readings as they were
           typed, its results, checks, signed steps and notes to one page without script. FILE may
           be - for the terminal itself.

  npx layshaft job check estate.job.json
  npx layshaft job report estate.job.json --html estate.html

Exit code: 0 done; 1 something in the job is amiss; 2 the command itself was wrong.
`;

const TEXTS: Readonly<Record<string, string>> = {
  solve: SOLVE,
  check: CHECK,
  chart: CHART,
  find: FIND,
  compare: COMPARE,
  practice: PRACTICE,
  publish: PUBLISH,
  job: JOB,
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
