import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { captured } from './captured-run.ts';
import { COMMANDS } from './run.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const example = (name: string) =>
	new Uint8Array(readFileSync(new URL(`../../survey-examples/${name}`, import.meta.url)));
const demo = example('ceramics-works.airtally.zip');
const files = {
	'three.json': example('three-leaks.json'),
	'demo.zip': demo,
	'empty.json': new Uint8Array(),
	'text.txt': bytes('hello'),
	'other.json': bytes('{"name":"x"}'),
	'cut.json': example('three-leaks.json').slice(0, 900),
	'cut.zip': demo.slice(0, 5000),
	'newer.json': bytes('{"format":"airtally-survey","formatVersion":99,"survey":{}}')
};

const FLOW = ['flow', '--hole', '5 mm', '--pressure', '7 bar'];
const BLEED = ['test', 'bleed-down', '--volume', '2 m3'];
const FILL = ['test', 'pump-up', '--volume', '2 m3', '--from', '1 bar', '--seconds', '60'];
const LOAD = ['test', 'load-time', '--capacity', '10 m3/min'];
const MACHINE = ['power', '--capacity', '10 m3/min', '--loaded', '60 kW', '--receiver', '1 m3'];

/** What is wrong, and what the one line must name. */
const BAD: readonly (readonly [args: readonly string[], ...names: string[]])[] = [
	[[], 'audit', 'flow'],
	[['nonsense'], '“nonsense”', 'audit'],
	[['constructor'], '“constructor”'],
	[['--json'], '--json', 'audit'],
	[['test'], 'test load-time'],
	[['test', 'weather'], '“test weather”', 'test pump-up'],
	[['help', 'nonsense'], '“nonsense”'],
	[['audit'], 'FILE'],
	[['audit', 'nowhere.json'], 'nowhere.json', 'no such file'],
	[['audit', 'empty.json'], 'empty.json', 'empty'],
	[['audit', 'text.txt'], 'text.txt', 'not a survey file'],
	[['audit', 'other.json'], 'other.json', 'not a survey file'],
	[['audit', 'cut.json'], 'cut.json', 'too early'],
	[['audit', 'cut.zip'], 'cut.zip'],
	[['audit', 'newer.json'], 'newer.json', 'newer version'],
	[['audit', 'three.json', 'demo.zip'], 'demo.zip'],
	[['audit', 'three.json', '--round', 'X'], '“X”', 'First round (round-first)'],
	[['flow'], '--pressure'],
	[['flow', '--pressure', '7 bar'], '--hole'],
	[['flow', '--hole', '5', '--pressure', '7 bar'], '--hole "5"', 'mm'],
	[['flow', '--hole', '5 bar', '--pressure', '7 bar'], '--hole "5 bar"', 'mm'],
	[['flow', '--hole', '5 mm', '--pressure', '100'], '--pressure "100"', 'psi'],
	[['flow', '--hole', '5 mm', '--pressure', '7 bar(a)'], 'absolute', 'gauge'],
	[['flow', '--hole', '5 mm', '--pressure', '70 bar'], '70 bar', '0.1 bar', '16 bar'],
	[['flow', '--hole', '0 mm', '--pressure', '7 bar'], '--hole "0 mm"', 'above zero'],
	[['flow', '--hole', '--pressure', '7 bar'], '--hole', '1/4 in'],
	[['flow', '--hole'], '--hole', '1/4 in'],
	[[...FLOW, '--hole', '6 mm'], '--hole', 'twice'],
	[[...FLOW, '--edge', 'blunt'], '“blunt”', 'sharp, rounded, unknown'],
	[[...FLOW, '--coefficient', '1.5'], '--coefficient "1.5"', '1'],
	[[...FLOW, '--coefficient', '1,234'], '--coefficient', 'two ways'],
	[[...FLOW, '--altitude', '9000 m'], '--altitude "9000 m"', '4000 m'],
	[[...FLOW, '--barometer', '1 bar(g)'], '--barometer', 'absolute'],
	[[...FLOW, '--barometer', '20 kPa'], '--barometer "20 kPa"', '55 kPa'],
	[[...FLOW, '--temperature', '99 C'], '--temperature "99 C"', '60 °C'],
	[[...FLOW, '--downstream', '8 bar'], '--downstream "8 bar"', '7 bar'],
	[[...FLOW, '--reference', 'mars'], '“mars”', 'iso-1217'],
	[[...FLOW, '--slit', '1 mm x 1 mm'], '--slit', '--hole'],
	[[...FLOW, '--color'], '--color', '--hole'],
	[[...FLOW, '-j'], '-j', '--json'],
	[[...FLOW, '--json=yes'], '--json', 'yes'],
	[[...FLOW, 'loose'], '“loose”'],
	[['flow', '--slit', '1 mm', '--pressure', '7 bar'], '--slit "1 mm"', '12 mm x 0.2 mm'],
	[[...LOAD], '--cycle', '60 s/240 s'],
	[[...LOAD, '--cycle', '60 s'], '--cycle "60 s"', '60 s/240 s'],
	[[...LOAD, '--cycle', '0 s/60 s'], 'never loaded'],
	[[...LOAD, '--cycle', '-5 s/60 s'], 'cycle', 'number 1'],
	[[...LOAD, '--cycle', '5 s/60 s', '--capacity-uncertainty', '200 %'], '25 %'],
	[
		['test', 'load-time', '--capacity', '10 Nm3/min', '--cycle', '5 s/60 s'],
		'Nm3/min',
		'reference'
	],
	[[...BLEED, '--reading', '0 s: 7 bar'], '--reading', '2'],
	[
		[...BLEED, '--reading', '0 s 7 bar', '--reading', '9 s: 6 bar'],
		'“0 s 7 bar”',
		'600 s: 3.5 bar'
	],
	[[...BLEED, '--reading', '0: 7 bar', '--reading', '0: 6 bar'], 'order of time'],
	[[...BLEED, '--reading', '0: 6 bar', '--reading', '9: 7 bar'], 'both readings'],
	[[...FILL, '--to', '0.5 bar'], '--to', '1 bar'],
	[[...FILL, '--to', '7 bar', '--gauge', '-1 bar'], '0 or more'],
	[[...FILL, '--to', '7 bar', '--tank-temperature', '300 C'], '--tank-temperature', '120 °C'],
	[['power'], '--capacity'],
	[['power', 'three.json'], 'three.json', 'no machines'],
	[['power', 'demo.zip', '--demand', '1 m3/min'], '--demand', 'FILE'],
	[[...MACHINE, '--demand', '1 m3/min'], '--control', 'load-unload'],
	[[...MACHINE, '--control', 'load-unload'], '--demand'],
	[[...MACHINE, '--control', 'magic', '--demand', '1 m3/min'], '“magic”', 'variable-speed'],
	[[...MACHINE, '--control', 'throttled', '--demand', '-1 m3/min'], 'demand', '0 or more'],
	[
		[...MACHINE, '--control', 'load-unload', '--demand', '1 m3/min', '--band', '0 bar'],
		'--band "0 bar"'
	]
];

/** One plain line that names the program and ends as a sentence does. */
const LINE = /^airtally[^\n]*\.\n$/u;

describe('what is refused', () => {
	it.each(BAD.map(([args, ...names]) => ({ args, names })))('$args', async ({ args, names }) => {
		const { code, out, err } = await captured(args, files);
		expect({ code, out }).toEqual({ code: 2, out: '' });
		expect(err).toMatch(LINE);
		for (const name of names) expect(err).toContain(name);
		expect(err).not.toMatch(/…|could not be done|undefined/);
	});
});

describe('help', () => {
	it.each(COMMANDS.map(({ name }) => name))(
		'of %s tells every option and the exit codes',
		async (name) => {
			const { code, out, err } = await captured([...name.split(' '), '--help']);
			expect({ code, err }).toEqual({ code: 0, err: '' });
			const spec = COMMANDS.find((each) => each.name === name)?.options ?? {};
			for (const option of Object.keys(spec)) expect(out).toContain(`--${option}`);
			expect(out).toContain('Exit codes');
			expect(await captured(['help', ...name.split(' ')])).toMatchObject({ out });
		}
	);

	it('of everything names every command; --version the version', async () => {
		for (const args of [['help'], ['--help'], ['-h']]) {
			const { out, code } = await captured(args);
			expect(code).toBe(0);
			for (const { name } of COMMANDS) expect(out).toContain(name);
		}
		expect(await captured(['--version'])).toEqual({ code: 0, out: 'airtally 0.0.0\n', err: '' });
	});

	it.each([
		['audit', ['audit', 'demo.zip']],
		['flow', FLOW],
		['test load-time', [...LOAD, '--cycle', '5 s/60 s']],
		['test bleed-down', [...BLEED, '--reading', '0: 7 bar', '--reading', '9: 6 bar']],
		['test pump-up', [...FILL, '--to', '7 bar']],
		['power', ['power', 'demo.zip']],
		['power', [...MACHINE, '--control', 'load-unload', '--demand', '1 m3/min']]
	])('of %s documents every key of the JSON', async (name, args) => {
		const { out } = await captured([...args, '--json'], files);
		const help = (await captured(['help', ...name.split(' ')])).out;
		for (const key of keysOf(JSON.parse(out) as unknown)) expect(help).toMatch(`${key}`);
	});
});

/** Keys of an answer, but for those of a control, which are named as the survey file names them. */
function keysOf(value: unknown): string[] {
	if (Array.isArray(value)) return value.flatMap(keysOf);
	if (typeof value !== 'object' || value === null) return [];
	return Object.entries(value).flatMap(([key, member]) =>
		key === 'control' ? [key] : [key, ...keysOf(member)]
	);
}

describe('whatever is typed', () => {
	const optionNames = [...new Set(COMMANDS.flatMap(({ options }) => Object.keys(options)))];
	const number = fc.oneof(fc.double(), fc.double({ min: 0, max: 100, noNaN: true }), fc.integer());
	const values = fc.oneof(
		fc.constantFrom(
			'7 bar',
			'5 mm',
			'1/4 in',
			'20 C',
			'-5 C',
			'60 s/240 s',
			'0 s: 7 bar',
			'10 m3/min'
		),
		fc.constantFrom(
			'9 s: 6 bar',
			'2 m3',
			'60 kW',
			'sharp',
			'load-unload',
			'never',
			'25 %',
			'1e309 bar'
		),
		fc.constantFrom(
			'three.json',
			'demo.zip',
			'cut.zip',
			'text.txt',
			'First round',
			'',
			' ',
			'--',
			'-'
		),
		number.map(String),
		fc
			.tuple(
				number,
				fc.constantFrom('bar', 'mm', 'm3/min', 'kW', 'C', 's', 'm3', '%', 'm', 'kPa', 'mm2')
			)
			.map(([value, unit]) => `${value} ${unit}`),
		fc.string({ maxLength: 12, unit: 'binary' })
	);
	const option = fc.constantFrom(...optionNames).map((name) => `--${name}`);
	const pair = fc.tuple(option, values);
	const starts: readonly (readonly string[])[] = [
		...COMMANDS.map(({ name }) => name.split(' ')),
		['audit', 'demo.zip'],
		['power', 'demo.zip'],
		FLOW,
		[...LOAD, '--cycle', '5 s/60 s'],
		[...BLEED, '--reading', '0: 7 bar', '--reading', '9: 6 bar'],
		[...FILL, '--to', '7 bar'],
		[...MACHINE, '--control', 'load-unload', '--demand', '1 m3/min']
	];
	const args = fc
		.tuple(
			fc.oneof(
				{ weight: 8, arbitrary: fc.constantFrom(...starts) },
				{ weight: 1, arbitrary: fc.array(fc.string({ unit: 'binary' }), { maxLength: 2 }) }
			),
			fc.array(
				fc.oneof(
					{ weight: 6, arbitrary: pair },
					{ weight: 1, arbitrary: pair.map(([name, value]) => [`${name}=${value}`]) },
					{ weight: 1, arbitrary: values.map((value) => [value]) }
				),
				{ maxLength: 5 }
			),
			fc.constantFrom([], ['--json'])
		)
		.map(([start, more, json]) => [...start, ...json, ...more.flat()]);

	it('is answered, or refused in one line: no fault, no trace, nothing on standard output', async () => {
		const codes = new Map<number, number>();
		await fc.assert(
			fc.asyncProperty(args, async (argv) => {
				const { code, out, err } = await captured(argv, files);
				codes.set(code, (codes.get(code) ?? 0) + 1);
				expect([0, 2]).toContain(code);
				expect(err).not.toMatch(/\n {4}at |undefined|NaN|Infinity/);
				if (code === 2) {
					expect(out).toBe('');
					expect(err).toMatch(LINE);
				} else expect(out).not.toMatch(/undefined|NaN|Infinity/);
			}),
			{ numRuns: 1500 }
		);
		// The line of fire reaches both: what is refused, and what is answered all the same.
		expect(codes.get(0)).toBeGreaterThan(100);
		expect(codes.get(2)).toBeGreaterThan(100);
	}, 120_000);
});
