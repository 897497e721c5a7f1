/** Reads what was typed after a command's name. */
import { parseArgs } from 'node:util';
import { syntax } from '../core/faults/argument.ts';
import { fault, type Fault } from '../core/faults/fault.ts';
import { findNearNames } from '../core/words/near-words.ts';
import type { Call, Command } from './command.ts';
import { HELP_OPTION } from './shared-options.ts';

export interface CallReading {
  readonly call: Call;
  readonly asksForHelp: boolean;
  readonly asksForJson: boolean;
  readonly faults: readonly Fault[];
}

type Token = NonNullable<ReturnType<typeof parseArgs>['tokens']>[number];
type OptionToken = Extract<Token, { kind: 'option' }>;

/**
 * Every fault of the call at once: options that the command doesn't have, that want a value or take
 * none, that stand twice; arguments and options that are
 * needed missing, arguments too many.
 */
export function readCall(command: Command, args: readonly string[]): CallReading {
  const { tokens } = parseArgs({
    args: withLongNames(command, args),
    options: Object.fromEntries(
      command.options.map(({ name, value }) => [
        name.slice(2),
        { type: value === undefined ? 'boolean' : 'string' },
      ]),
    ),
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const faults: Fault[] = [];
  const values = new Map<string, string>();
  const flags = new Set<string>();
  let asksForHelp = false;
  const unknown = new Set<number>();
  for (const token of tokens) {
    if (token.kind !== 'option') continue;
    const typed = args[token.index] ?? token.rawName;
    if (typed === HELP_OPTION.name || typed === HELP_OPTION.short) {
      asksForHelp = true;
      continue;
    }
    const option = command.options.find(({ name }) => name === token.rawName);
    if (option === undefined) {
      unknown.add(token.index);
    } else if (values.has(option.name) || flags.has(option.name)) {
      faults.push(fault('call.option-twice', syntax(command.name), option.name));
    } else if (option.value === undefined) {
      flags.add(option.name);
      if (token.value !== undefined) {
        const details = { value: token.value };
        faults.push(
          fault('call.option-takes-no-value', syntax(option.name), option.name, { details }),
        );
      }
    } else {
      const value = valueOf(token);
      values.set(option.name, value ?? '');
      if (value === undefined) {
        const details = { value: option.value };
        faults.push(
          fault('call.option-needs-value', syntax(command.name), option.name, { details }),
        );
      }
    }
  }
  // An argument such as -json is one mistake, though it reads as five options of a letter.
  for (const index of unknown) {
    const [typed = ''] = (args[index] ?? '').split('=');
    faults.push(unknownOption(command, typed));
  }
  // An empty one is none: a variable of the shell that holds nothing, say.
  const given = tokens.flatMap((token) =>
    token.kind === 'positional' && token.value !== '' ? [token.value] : [],
  );
  faults.push(...checkCount(command, given, unknown.size > 0));
  faults.push(...missingOptions(command, values));
  return {
    call: { arguments: given, values, flags },
    asksForHelp,
    asksForJson: flags.has('--json'),
    faults,
  };
}

/** A letter alone stands for its option; several in one argument stand for none. */
function withLongNames({ options }: Command, args: readonly string[]): string[] {
  const end = args.indexOf('--');
  return args.map((arg, at) => {
    if (end !== -1 && at > end) return arg;
    return options.find(({ short }) => short === arg)?.name ?? arg;
  });
}

function unknownOption({ name, options }: Command, typed: string): Fault {
  const all = [...options, HELP_OPTION];
  const near = all.filter((option) => {
    const names = [option.name, ...(option.elsewhere ?? [])];
    return findNearNames(typed, names).length > 0;
  });
  const may = near.map((option) => option.name).join(' or ');
  return fault('call.unknown-option', syntax(name), typed, may === '' ? {} : { details: { may } });
}

/** Another option, or nothing, is no value; a lone minus and a negative number are. */
function valueOf({ value, inlineValue }: OptionToken): string | undefined {
  if (value === undefined || value === '') return undefined;
  return !inlineValue && value.startsWith('--') ? undefined : value;
}

function missingOptions({ name: command, options }: Command, values: Call['values']): Fault[] {
  return options
    .filter(({ name, needed }) => needed === true && !values.has(name))
    .map(({ name, value = '' }) => {
      const details = { name: `${name} ${value}` };
      return fault('call.argument-missing', syntax(command), null, { details });
    });
}

function checkCount(command: Command, given: readonly string[], hasUnknown: boolean): Fault[] {
  const missing = command.arguments
    .slice(given.length)
    .map(({ name }) =>
      fault('call.argument-missing', syntax(command.name), null, { details: { name } }),
    );
  // What follows an unknown option may well be its value: one mistake, one line.
  if (hasUnknown || command.arguments.at(-1)?.repeats === true) return missing;
  const extra = given
    .slice(command.arguments.length)
    .map((value) => fault('call.argument-extra', syntax(command.name), value));
  return [...missing, ...extra];
}
