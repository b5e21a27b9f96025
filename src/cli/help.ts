import type { Command } from './command.ts';
import { list } from './plain-text.ts';

const EXITS = `Exit codes
  0  the answer is on standard output; notes to read beside it are on standard error
  1  a fault of the program
  2  refused: one line on standard error says what was wrong and what is accepted; nothing is
     printed on standard output and nothing is ever written to a file`;

const UNITS = `A quantity is written with its unit, in quotes: "6.5 bar", "100 psi", "1/4 in", "10 m3/min", "20 C".
Free air needs a reference state; mass does not. The keys of the JSON are stable.`;

/** What the program does, with the line that starts each command. */
export function helpOfAll(commands: readonly Command[]): string {
	return `airtally: what compressed-air leaks waste, from the command line

Commands
${list([...commands.map(({ name, summary }) => [name, summary] as const), ['help', 'this text, or that of a command: help flow']])}

Each command takes --help, and --json for scripts; --version prints the version.

${UNITS}

${EXITS}
`;
}

/** Everything about one command. */
export function helpOf(command: Command): string {
	const { name, summary, usage, word, options, notes = [], json } = command;
	const options_ = Object.entries(options).map(([option, { takes, must, as, says }]) => {
		const value = takes === 'nothing' ? '' : ` "${as}"`;
		const often = takes === 'many' ? '; may be given several times' : '';
		return [`--${option}${value}`, `${says}${often}${must ? ' (needed)' : ''}`] as const;
	});
	const words = word ? [[word.as, `${word.says}${word.must ? ' (needed)' : ''}`] as const] : [];
	return `${[
		`airtally ${name}: ${summary}`,
		`Usage\n${usage.map((line) => `  airtally ${line}`).join('\n')}`,
		`Options\n${list([...words, ...options_])}`,
		...(notes.length > 0 ? [notes.join('\n')] : []),
		`Keys of the JSON; what cannot be known is null\n${list(json)}`,
		UNITS,
		EXITS
	].join('\n\n')}\n`;
}
