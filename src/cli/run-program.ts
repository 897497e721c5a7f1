/** From what was typed to an answer: finds the command, reads the call, runs it. */
import { syntax } from '../core/faults/argument.ts';
import { fault } from '../core/faults/fault.ts';
import { VERSION } from '../core/version.ts';
import { findNearNames } from '../core/words/near-words.ts';
import type { Report } from './command.ts';
import { COMMANDS } from './commands.ts';
import { helpOfCommand, helpOfProgram } from './help.ts';
import { readCall } from './read-call.ts';
import { reportRefusal } from './report.ts';
import { helpOfHeadings } from './say-headings.ts';

/** @param args What was typed after the program's name. */
export async function runProgram(args: readonly string[]): Promise<Report> {
  const [name, ...rest] = args;
  if (name === undefined) return { ...say(helpOfProgram(COMMANDS)), exit: 2 };
  if (name === '--version') return say(`coveledger ${VERSION}\n`);
  if (name === '--help' || name === '-h') return say(helpOfProgram(COMMANDS));
  if (name === 'help') return help(rest);
  const command = COMMANDS.find((one) => one.name === name);
  if (command === undefined) return unknownCommand(name);
  const { call, asksForHelp, asksForJson, faults } = readCall(command, rest);
  if (asksForHelp) return say(helpOfCommand(command));
  if (faults.length > 0) return reportRefusal(2, { faults, cautions: [] }, asksForJson);
  return command.run(call);
}

async function help([name, ...extra]: readonly string[]): Promise<Report> {
  if (name === undefined || name === '--help') return say(helpOfProgram(COMMANDS));
  const isOfHeadings = name === 'headings';
  const command = COMMANDS.find((one) => one.name === name);
  // Loaded for whoever asks, since it holds an example of every code.
  if (name.includes('.')) return helpOfCode(name);
  if (command === undefined && !isOfHeadings) return unknownCommand(name);
  const faults = extra.map((value) => fault('call.argument-extra', syntax('help'), value));
  if (faults.length > 0) return reportRefusal(2, { faults, cautions: [] }, false);
  return say(command === undefined ? helpOfHeadings() : helpOfCommand(command));
}

/** What a fault's code means, with an example; near codes where there is none of that name. */
async function helpOfCode(code: string): Promise<Report> {
  const { codesNear, isFaultCode } = await import('./fault-help/fault-help.ts');
  const { sayFaultHelp } = await import('./fault-help/say-fault-help.ts');
  if (isFaultCode(code)) return say(await sayFaultHelp(code));
  const may = codesNear(code).slice(0, MOST_NEAR).join(' or ');
  const unknown = fault('call.unknown-code', 'command', code, { details: { may } });
  return reportRefusal(2, { faults: [unknown], cautions: [] }, false);
}

/** More codes than these are no suggestion any more. */
const MOST_NEAR = 5;

function unknownCommand(name: string): Report {
  const names = [...COMMANDS.map((one) => one.name), 'help'];
  const others = ['help headings', '--version', '--help'];
  const may = findNearNames(name, [...names, ...others]).join(' or ');
  const details = { allowed: names.join(', '), ...(may === '' ? {} : { may }) };
  const faults = [fault('call.unknown-command', 'command', name, { details })];
  return reportRefusal(2, { faults, cautions: [] }, false);
}

function say(output: string): Report {
  return { exit: 0, output, errors: '' };
}
