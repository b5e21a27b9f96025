import { refuse } from '#lib/core/units/result.ts';
import type { Command } from './command.ts';
import { complain, complaintLine, type Answer, type Complaint } from './complaint.ts';
import { audit } from './commands/audit.ts';
import { bleedDown } from './commands/bleed-down.ts';
import { compare } from './commands/compare.ts';
import { flow } from './commands/flow.ts';
import { geojson } from './commands/geojson.ts';
import { logger } from './commands/logger.ts';
import { loadTime } from './commands/load-time.ts';
import { portfolio } from './commands/portfolio.ts';
import { power } from './commands/power.ts';
import { pumpUp } from './commands/pump-up.ts';
import { helpOf, helpOfAll } from './help.ts';
import type { Io } from './io.ts';
import { oneLine } from './plain-text.ts';

export const COMMANDS: readonly Command[] = [
	audit,
	compare,
	portfolio,
	geojson,
	flow,
	loadTime,
	bleedDown,
	pumpUp,
	logger,
	power
];

export const EXIT = { answered: 0, fault: 1, refused: 2 } as const;

const HELP = new Set(['--help', '-h']);

/**
 * Runs one command line.
 * @returns the exit code: 0 answered, 1 a fault of the program, 2 refused
 */
export async function run(argv: readonly string[], io: Io): Promise<number> {
	try {
		const [first, ...rest] = argv;
		if (first === '--version' || first === 'version') {
			io.out(`airtally ${io.version}\n`);
			return EXIT.answered;
		}
		if (first === 'help' || (first !== undefined && HELP.has(first))) return help(rest, io);
		const asked = argv.slice(0, argv.includes('--') ? argv.indexOf('--') : undefined);
		const chosen = choose(argv);
		if (asked.some((arg) => HELP.has(arg)) && (chosen.ok || argv[0] === 'test'))
			return help(chosen.ok ? chosen.value.command.name.split(' ') : ['test'], io);
		if (!chosen.ok) return refused(chosen.error, io);
		const { command, args } = chosen.value;
		const answered = await command.answer(args, io);
		if (!answered.ok) return refused(answered.error, io, command.name);
		const { outcome, asJson } = answered.value;
		for (const note of outcome.notes) io.err(`${oneLine(note)}\n`);
		io.out(asJson ? `${JSON.stringify(outcome.json, finite, 2)}\n` : outcome.text);
		return EXIT.answered;
	} catch (fault) {
		const text = fault instanceof Error ? fault.message : String(fault);
		io.err(`airtally: a fault of the program, please report it: ${oneLine(text)}\n`);
		return EXIT.fault;
	}
}

/** JSON would write a number that is none as null, which here means that it cannot be known. */
function finite(key: string, value: unknown): unknown {
	if (typeof value === 'number' && !Number.isFinite(value))
		throw new RangeError(`${key} is not a number`);
	return value;
}

function refused(complaint: Complaint, io: Io, name?: string): number {
	const who = name === undefined ? 'airtally' : `airtally ${name}`;
	io.err(`${oneLine(`${who}: ${complaintLine(complaint)}`)}\n`);
	return EXIT.refused;
}

/** The command that a line begins with; its name may be two words. */
function choose(argv: readonly string[]): Answer<{ command: Command; args: readonly string[] }> {
	for (const length of [1, 2]) {
		const name = argv.slice(0, length).join(' ');
		const command = COMMANDS.find((each) => each.name === name);
		if (command) return { ok: true, value: { command, args: argv.slice(length) } };
	}
	const [first, second] = argv;
	if (first === 'test') {
		const tests = COMMANDS.flatMap(({ name }) => (name.startsWith('test ') ? [name] : []));
		return unknown(second === undefined ? undefined : `test ${second}`, tests);
	}
	return unknown(
		first,
		COMMANDS.map(({ name }) => name)
	);
}

function unknown(given: string | undefined, known: readonly string[]) {
	const accepted = [...known, 'help', '--version'].join(', ');
	return complain(
		given === undefined
			? refuse('command-missing', { accepted }).error
			: refuse('command-unknown', { given: oneLine(given), accepted }).error
	);
}

function help(words: readonly string[], io: Io): number {
	const name = words.filter((word) => !word.startsWith('-')).join(' ');
	const found = COMMANDS.filter((each) => each.name === name || each.name.startsWith(`${name} `));
	if (name === '') io.out(helpOfAll(COMMANDS));
	else if (found.length > 0) io.out(found.map(helpOf).join('\n'));
	else {
		const complaint = unknown(
			name,
			COMMANDS.map((each) => each.name)
		);
		return refused(complaint.error, io);
	}
	return EXIT.answered;
}
