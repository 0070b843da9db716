/** What `wallflow help` prints. */
export const help = `wallflow: diesel exhaust-aftertreatment calculations with units

  wallflow list [--subject <subject>]        every calculation
  wallflow describe <id>                     inputs, outputs, cautions, sources
  wallflow run <id> key="value unit" ...     one calculation; or JSON on standard input
  wallflow sweep <id> --over <input> ...     one input moved from one value to another, as a table or CSV
  wallflow judge "<readings>"                  is the filter restricted, and by what: five lines
  wallflow job <file> [--out <folder>]       a whole workshop job and its job sheet
  wallflow log <file> [--map <file>]         what was understood of a log, and its steady stretches
  wallflow help <command>                    more about one of these

  --json       machine-readable output, with every command
  --version    the version
Exit codes: 0 done, 1 the input was refused, 2 wrong usage.
`;

/** More about one command; undefined for a command that does not exist. */
export const commandHelp: ReadonlyMap<string, string> = new Map([
  [
    'list',
    `wallflow list [--subject <subject>] [--json]

Every calculation with its id, by subject. --subject shows one subject only, such as filter or reductant.
`,
  ],
  [
    'describe',
    `wallflow describe <id> [--json]

What a calculation answers, its inputs with examples, outputs, cautions, limits and sources, and a command that runs it.
With --json the inputs come as JSON Schema.
`,
  ],
  [
    'run',
    `wallflow run <id> key="value unit" ... [--system metric|us] [--locale <language>] [--json]
wallflow run <id> [--json] < input.json

One calculation. Each input is a word: pressure="101.3 kPa", or with its uncertainty pressure="101.3 ± 0.2 kPa". Lists are
JSON: readings='[{"state":"idle"}]'. Without words the whole input is read as JSON from standard input.
--system shows results in metric units or in those of the United States; --locale writes numbers as a language does, such as de.
wallflow describe <id> names the inputs and prints a command to start from.
`,
  ],
  [
    'sweep',
    `wallflow sweep <id> key="value unit" ... --over <input> --from "value unit" --to "value unit"
               [--points 41] [--logarithmic] [--show <output>,<output>] [--csv] [--json]

One input moved from one value to another, with all others as for \`wallflow run\`. A ± of an input makes a band, shown as its
least and most. Values that are refused leave a gap. For example:
wallflow sweep gas-density gasPressure="101.3 ± 0.5 kPa" --over gasTemperature --from "0 degC" --to "600 degC" --points 7 --csv
`,
  ],
  [
    'judge',
    `wallflow judge "2.2 L; 146000 km; 0 rpm 0.5 mbar; 800 rpm 14 mbar; 2800 rpm 290 mbar 210 °C" [--json]

The filter from what can be read in a minute: displacement, odometer if known, and readings as engine speed and pressure drop,
with the gas temperature or the air mass flow where they are known. 0 rpm is the reading with the engine off. What is not known
is taken from typical values with their spread. Answers in five lines: restricted or not, by what, how much is in the filter,
what to test next, how sure.
`,
  ],
  [
    'job',
    `wallflow job <file> [--out <folder>] [--can <file>] [--json]

A whole workshop job from its job file. Logs lie in the folder of the job file or below it. Prints the job sheet; --out also
writes it as text, Markdown and HTML into a folder, --json prints the whole result as data instead. Logs may be text, Parquet or
ASAM MDF 4, or frames with the CAN database that --can names; answers beside the job file (….log-map.json) are found.
`,
  ],
  [
    'log',
    `wallflow log <file> [--map <file>] [--can <file>] [--plot] [--json]
wallflow log <folder> [--map <file>] [--json]

What was understood of a log: its columns and how sure that is, what is left open, what was left out and why, and the steady
stretches with mean and ±. --map names a file with answers; without it those beside the log (….log-map.json) are searched for one
with the same titles. Text, Parquet and ASAM MDF 4 are told apart by how they begin; --can names a CAN database for a log of frames
as the Linux CAN tools write it. --plot draws engine speed and pressure drop over time. A folder is read with several logs at a time.
`,
  ],
]);
