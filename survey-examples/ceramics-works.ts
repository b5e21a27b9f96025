import type { Command, CommandBody } from '../src/lib/core/survey/command.ts';
import { newSurvey } from '../src/lib/core/survey/new-survey.ts';
import type { Leak, Round, ShutdownWindow, Survey } from '../src/lib/core/survey/schema.ts';
import type { SystemTest } from '../src/lib/core/survey/system-test-schema.ts';
import { FOUND, type Found } from './ceramics-leaks.ts';
import {
	areas,
	feeds,
	PLAN_ID,
	plansOf,
	shares,
	valveAndWay,
	type PlanHashes
} from './ceramics-plans.ts';
import { SECTIONS } from './ceramics-sections.ts';
import { C1_CAPACITY_M3_PER_MIN, STATION } from './ceramics-station.ts';

/** The demo works. Firm, people, plan and figures are invented; nothing here is measured. */

export const AUDITOR = 'Zofia Ł.';
export const FITTER = 'Jörg M.';

export const ROUND: Round = {
	id: 'round-spring-2026',
	name: 'Spring 2026',
	startedAt: '2026-04-14T06:30:00+02:00'
};

/** In the Easter stop, kilns cold and every section opened, machine C1 alone held the pressure. */
const EASTER_TEST: SystemTest = {
	kind: 'load-time',
	id: 'test-easter-load-time',
	name: 'Easter stop, kilns cold, all sections open, C1 alone',
	doneAt: '2026-04-04T09:40:00+02:00',
	roundId: ROUND.id,
	capacityM3PerMin: C1_CAPACITY_M3_PER_MIN,
	cycles: [
		{ loadedS: 153, unloadedS: 58 },
		{ loadedS: 157, unloadedS: 59 },
		{ loadedS: 150, unloadedS: 57 },
		{ loadedS: 154, unloadedS: 58 },
		{ loadedS: 158, unloadedS: 60 },
		{ loadedS: 151, unloadedS: 57 }
	]
};

/** The two stops that production gives in May; the air is off in one of them until the next morning. */
const WINDOWS: readonly ShutdownWindow[] = [
	{
		id: 'window-saturday-stop',
		name: 'Saturday stop',
		startsAt: '2026-05-09T06:00:00+02:00',
		minutes: 240,
		people: 1,
		overnightOff: false
	},
	{
		id: 'window-whitsun-stop',
		name: 'Whitsun stop',
		startsAt: '2026-05-23T06:00:00+02:00',
		minutes: 360,
		people: 1,
		overnightOff: true
	}
];

/** The whole history of the demo survey, oldest first. */
export function ceramicsWorksLog(hashes: PlanHashes): Command[] {
	const log = new Log();
	log.write('2026-04-09T14:05:00+02:00', AUDITOR, {
		kind: 'start-site',
		survey: startingSurvey(hashes)
	});
	log.write('2026-04-09T14:40:00+02:00', AUDITOR, {
		kind: 'add-system-test',
		test: EASTER_TEST
	});
	walk(log);
	setRight(log);
	mend(log);
	lookAhead(log);
	return log.commands;
}

/** Writes commands down with ids and logical times in sequence. */
export class Log {
	readonly commands: Command[];

	/** @param before what was written already */
	constructor(before: readonly Command[] = []) {
		this.commands = [...before];
	}

	write(at: string, author: string, body: CommandBody): void {
		const time = this.commands.length + 1;
		const id = `command-demo-${String(time).padStart(4, '0')}`;
		this.commands.push({ id, device: 'device-demo-tablet', time, at, author, body });
	}
}

function startingSurvey(hashes: PlanHashes): Survey {
	const empty = newSurvey(
		{ id: 'site-brackmoor-ceramics', name: 'Brackmoor Ceramics Works', currency: 'EUR' },
		ROUND
	);
	return {
		...empty,
		site: {
			...empty.site,
			note: 'An invented works, for trying the program out.',
			altitudeM: 140
		},
		supply: {
			setPressureBarGauge: 7,
			quick: {
				specificPowerKwPerM3PerMin: 6.9,
				source: "one week of the works' own power and flow log, March 2026"
			},
			station: STATION
		},
		prices: {
			pricePerKwh: 0.19,
			carbon: { kgCo2ePerKwh: 0.32, source: "the works' own supply contract", year: 2025 },
			discountRate: 0.06,
			horizonYears: 5
		},
		plans: plansOf(hashes),
		sections: Object.fromEntries(
			Object.values(SECTIONS).map((section) => [
				section.id,
				{ ...section, ...valveAndWay(section.valve), fedFrom: feeds(section.id) }
			])
		),
		areas: areas()
	};
}

export function leakId(tag: number): string {
	return `leak-demo-${String(tag).padStart(3, '0')}`;
}

/** The walk: two mornings, a leak every minute or two. */
function walk(log: Log): void {
	const secondMorning = FOUND.findIndex(({ section }) => section === 'glaze');
	const days = [
		{ date: '2026-04-14', startsMin: 6 * 60 + 42, from: 0, to: secondMorning },
		{ date: '2026-04-15', startsMin: 6 * 60 + 35, from: secondMorning, to: FOUND.length }
	];
	for (const { date, startsMin, from, to } of days) {
		const next = instants(date, startsMin * 60);
		FOUND.slice(from, to).forEach((found, index) => {
			const tag = from + index + 1;
			const at = next();
			log.write(at, AUDITOR, { kind: 'add-leak', leak: leakFrom(found, tag, at) });
		});
	}
}

/** Instants with a seeded spread: 60 to 135 seconds from one leak to the next. */
export function instants(date: string, startsS: number): () => string {
	let seconds = startsS;
	let seed = startsS;
	return () => {
		seed = (seed * 48_271) % 2_147_483_647;
		seconds += 60 + (seed % 76);
		const two = (value: number) => String(Math.floor(value)).padStart(2, '0');
		const clock = [seconds / 3600, (seconds / 60) % 60, seconds % 60].map(two).join(':');
		return `${date}T${clock}+02:00`;
	};
}

export function leakFrom(found: Found, tag: number, seenAt: string, roundId = ROUND.id): Leak {
	const { section, at, evidence, pressureBarGauge, intermittent, hazards = [], ...rest } = found;
	return {
		...rest,
		id: leakId(tag),
		tag,
		planId: PLAN_ID,
		at: shares(at),
		sectionId: SECTIONS[section].id,
		hazards: [...hazards],
		sightings: {
			[roundId]: {
				state: 'leaking',
				evidence,
				...(pressureBarGauge === undefined ? {} : { pressureBarGauge }),
				...(intermittent === undefined ? {} : { intermittent }),
				seenAt,
				seenBy: AUDITOR
			}
		},
		mendings: {}
	};
}

/** At the desk, the same afternoon: pins nudged, words put right, one hole measured again. */
function setRight(log: Log): void {
	const desk = (minute: number) => `2026-04-15T13:${String(minute).padStart(2, '0')}:00+02:00`;
	log.write(desk(2), AUDITOR, {
		kind: 'move-pin',
		leakId: leakId(21),
		planId: PLAN_ID,
		at: shares([38.3, 8.7])
	});
	log.write(desk(4), AUDITOR, {
		kind: 'move-pin',
		leakId: leakId(33),
		planId: PLAN_ID,
		at: shares([57, 8.2])
	});
	log.write(desk(6), AUDITOR, {
		kind: 'set-leak',
		leakId: leakId(5),
		changes: { place: 'Header after R2, gauge at eye level, thread below the cock' }
	});
	log.write(desk(9), AUDITOR, {
		kind: 'set-leak',
		leakId: leakId(15),
		changes: { action: 'replace-seal', note: 'Gland has no thread left to take up.' }
	});
	log.write(desk(15), AUDITOR, {
		kind: 'record-sighting',
		leakId: leakId(45),
		roundId: ROUND.id,
		sighting: {
			state: 'leaking',
			evidence: {
				kind: 'meter',
				flowLPerS: 4.9,
				reference: 'anr',
				soapResponse: 'film-blown-away'
			},
			seenAt: '2026-04-15T12:50:00+02:00',
			seenBy: AUDITOR
		}
	});
}

/** The first window, two weeks on: six joints mended, one that has to wait. */
function mend(log: Log): void {
	const day = '2026-04-28T';
	const done = (tag: number, at: string, minutes: number, reSoaped?: 'tight' | 'still-leaking') =>
		log.write(`${day}${at}:00+02:00`, FITTER, {
			kind: 'log-mending',
			leakId: leakId(tag),
			roundId: ROUND.id,
			changes: {
				isolated: true,
				vented: true,
				zeroProved: true,
				mendedAt: `${day}${at}:00+02:00`,
				minutes,
				mendedBy: FITTER,
				...(reSoaped === undefined ? {} : { reSoaped })
			}
		});
	done(6, '13:20', 10, 'tight');
	done(16, '13:45', 12, 'tight');
	done(20, '14:15', 10, 'tight');
	done(24, '14:30', 15, 'tight');
	done(28, '14:55', 25);
	done(41, '15:25', 15, 'still-leaking');
	log.write(`${day}15:40:00+02:00`, FITTER, {
		kind: 'log-mending',
		leakId: leakId(13),
		roundId: ROUND.id,
		changes: { isolated: true, couldNot: 'Seal kit not in the stores; ordered.' }
	});
}

/** After the first window the manager writes down what there is: two stops, one fitter, so much money. */
function lookAhead(log: Log): void {
	WINDOWS.forEach((window, index) => {
		log.write(`2026-04-29T08:1${String(index)}:00+02:00`, AUDITOR, { kind: 'add-window', window });
	});
	log.write('2026-04-29T08:15:00+02:00', AUDITOR, {
		kind: 'set-mend-plan',
		changes: { budget: 150, horizonYears: 1 }
	});
}
