/** Help, for the program and for each command. */
import { BUG_EXIT, type Command } from './command.ts';
import { columns, join, WIDTH, wrap } from './help-text.ts';
import { HELP_OPTION } from './shared-options.ts';

const USAGE_INDENT = ' '.repeat('Usage: '.length);
/** A space at which no line ends. */
const TIE = '\u00a0';

export function helpOfProgram(commands: readonly Command[]): string {
  return join([
    'coveledger: saw set-ups for coves, cut lists and production workbooks for a house of trim.',
    'Usage: coveledger COMMAND ...\nFrom the project folder: npm run -s coveledger -- COMMAND ...',
    `Commands:\n${columns([
      ...commands.map(({ name, summary }): [string, string] => [name, summary]),
      ['help COMMAND', 'How one command is called; so does COMMAND --help.'],
      ['help headings', 'What stands under each heading of the input tables.'],
      ['help CODE', 'What a code of --json means, with an example: help job.no-stock.'],
    ])}`,
    `Options:\n${columns([
      [`${HELP_OPTION.name}, ${HELP_OPTION.short}`, HELP_OPTION.says],
      ['--version', 'Show the version.'],
    ])}`,
    wrap(
      'Lengths are typed as the trade writes them: 3 1/2, 3-1/2", 7\' 4 3/8", 90 mm, 2.29 m. A bare number is inches, unless the job\'s Shop table says millimetres.',
    ),
    exitCodes({
      0: 'Done.',
      1: "The job can't be made as asked.",
      2: 'The call or the input is wrong.',
    }),
  ]);
}

export function helpOfCommand(command: Command): string {
  const { name, summary, examples, notes, exits } = command;
  return join([
    wrap(summary),
    `Usage: ${usage(command)}`,
    ...(command.arguments.length === 0
      ? []
      : [columns(command.arguments.map((one): [string, string] => [one.name, one.says]))]),
    `Options:\n${columns(
      [...command.options, HELP_OPTION].map(
        ({ name: option, short, value, says }): [string, string] => {
          const names = short === undefined ? option : `${option}, ${short}`;
          return [value === undefined ? names : `${names} ${value}`, says];
        },
      ),
    )}`,
    ...notes.map((note) => wrap(note)),
    `Example${examples.length > 1 ? 's' : ''}:\n${examples
      .map((example) => `  coveledger ${name} ${example}`.trimEnd())
      .join('\n')}`,
    exitCodes(exits),
  ]);
}

/** On as many lines as it takes, none of which parts an option from its value. */
function usage({ name, arguments: needed, options }: Command): string {
  const said = options.map((one) => {
    const words = one.value === undefined ? one.name : `${one.name}${TIE}${one.value}`;
    return one.needed === true ? words : `[${words}]`;
  });
  const called = needed.map((one) =>
    one.repeats === true ? `${one.name} [${one.name}${TIE}...]` : one.name,
  );
  const words = ['coveledger', name, ...called, ...said].join(' ');
  return wrap(words, WIDTH - USAGE_INDENT.length)
    .replaceAll('\n', `\n${USAGE_INDENT}`)
    .replaceAll(TIE, ' ');
}

function exitCodes(exits: Command['exits']): string {
  const codes: [string, string][] = [['0', exits[0]]];
  if (exits[1] !== undefined) codes.push(['1', exits[1]]);
  codes.push(['2', exits[2]], [String(BUG_EXIT), 'A bug in coveledger.']);
  return `Exit codes:\n${columns(codes)}`;
}
