import fc from 'fast-check';
import type { Command, CommandBody } from '#lib/core/survey/command.ts';
import { newSurvey } from '#lib/core/survey/new-survey.ts';
import type { Leak, Plan, Section, Survey } from '#lib/core/survey/schema.ts';

/**
 * Random commands over a handful of names, so that they often meet: two devices edit one leak, one
 * removes what another moves.
 */
const AT = '2026-03-02T08:15:00+01:00';
const HASHES = ['a', 'b', 'c'].map((digit) => digit.repeat(64));

const planId = fc.constantFrom('plan-1', 'plan-2');
const sectionId = fc.constantFrom('section-1', 'section-2');
const roundId = fc.constantFrom('round-1', 'round-2');
const leakId = fc.constantFrom('leak-1', 'leak-2', 'leak-3', 'leak-4');
const testId = fc.constantFrom('test-1', 'test-2');
const photoId = fc.constantFrom('photo-1', 'photo-2');
const areaId = fc.constantFrom('area-1', 'area-2');
const roomCheckId = fc.constantFrom('room-1', 'room-2');
const windowId = fc.constantFrom('window-1', 'window-2');
const adjustmentId = fc.constantFrom('adjustment-1', 'adjustment-2');

const text = fc.constantFrom('Press hall', 'Ofen Süd', '"quoted"\nline', '日本', '');
const amount = fc.constantFrom(0, 0.5, 7, 8760);
const share = fc.constantFrom(0, 0.25, 1);
const at = fc.record({ x: share, y: share });
const sha256 = fc.constantFrom(...HASHES);
const image = fc.record({
	sha256,
	mediaType: fc.constant('image/png'),
	widthPx: fc.constant(800),
	heightPx: fc.constant(600)
});

const evidence = fc.oneof(
	fc.record({
		kind: fc.constant('hole' as const),
		diameterMm: amount,
		edge: fc.constantFrom('sharp' as const, 'unknown' as const)
	}),
	fc.record({ kind: fc.constant('soap-response' as const), response: fc.constant('foam') })
);
const sighting = fc.record(
	{
		state: fc.constantFrom('leaking' as const, 'tight' as const),
		seenAt: fc.constant(AT),
		evidence,
		pressureBarGauge: amount
	},
	{ requiredKeys: ['state', 'seenAt'] }
);
const mending = fc.record(
	{
		mendedAt: fc.constant(AT),
		isolated: fc.boolean(),
		reSoaped: fc.constantFrom('tight' as const, 'still-leaking' as const)
	},
	{ requiredKeys: ['mendedAt'] }
);

const plan: fc.Arbitrary<Plan> = fc.record({ id: planId, name: text, image });
const fedFrom = fc.array(
	fc.oneof(
		fc.constant({ kind: 'station' as const }),
		fc.record({ kind: fc.constant('section' as const), sectionId })
	),
	{ minLength: 1, maxLength: 2 }
);
const feedAt = fc.record({ planId, from: at, to: at });
const section: fc.Arbitrary<Section> = fc.record(
	{ id: sectionId, name: text, valve: text, pressureBarGauge: amount, fedFrom, feedAt },
	{ requiredKeys: ['id', 'name'] }
);
const photo = fc.record({
	id: photoId,
	image,
	roundId,
	of: fc.constantFrom('leak' as const, 'mending' as const),
	takenAt: fc.constant(AT)
});
const photos = fc
	.array(photo, { minLength: 1, maxLength: 2 })
	.map((taken) => Object.fromEntries(taken.map((each) => [each.id, each])));
const leak: fc.Arbitrary<Leak> = fc.record(
	{
		id: leakId,
		tag: fc.integer({ min: 1, max: 9 }),
		part: fc.constantFrom('hose' as const, 'valve' as const),
		hazards: fc.constantFrom([], ['at-height' as const]),
		sightings: fc.dictionary(roundId, sighting),
		mendings: fc.constant({}),
		photos,
		planId,
		at,
		sectionId,
		note: text
	},
	{ requiredKeys: ['id', 'tag', 'part', 'hazards', 'sightings', 'mendings'] }
);

/** One random body of every kind but the one that starts a site. */
export const ANY_BODY: Readonly<
	Record<Exclude<CommandBody['kind'], 'start-site'>, fc.Arbitrary<CommandBody>>
> = {
	'set-site': body('set-site', {
		changes: changes({ name: text, altitudeM: cleared(amount), note: cleared(text) })
	}),
	'set-supply': body('set-supply', { changes: changes({ setPressureBarGauge: cleared(amount) }) }),
	'set-prices': body('set-prices', {
		changes: changes({ pricePerKwh: cleared(amount), costPerM3: cleared(amount) })
	}),
	'set-starting-values': body('set-starting-values', {
		changes: changes({
			soapBands: fc.constantFrom({}, { foam: { lowMm: 1, highMm: 2 } }),
			soapRefits: cleared(
				fc.constant({
					foam: { before: { lowMm: 1, highMm: 3 }, after: { lowMm: 1, highMm: 2 }, leaks: 3 }
				})
			)
		})
	}),
	'add-plan': body('add-plan', { plan }),
	'set-plan': body('set-plan', { planId, changes: changes({ name: text, image }) }),
	'remove-plan': body('remove-plan', { planId }),
	'restore-plan': body('restore-plan', { planId }),
	'add-section': body('add-section', { section }),
	'set-section': body('set-section', {
		sectionId,
		changes: changes({
			name: text,
			valve: cleared(text),
			pressureBarGauge: cleared(amount),
			fedFrom: cleared(fedFrom),
			feedAt: cleared(feedAt)
		})
	}),
	'remove-section': body('remove-section', { sectionId }),
	'restore-section': body('restore-section', { sectionId }),
	'add-round': body('add-round', {
		round: fc.record({ id: roundId, name: text, startedAt: fc.constant(AT) })
	}),
	'set-round': body('set-round', { roundId, changes: changes({ name: text }) }),
	'remove-round': body('remove-round', { roundId }),
	'restore-round': body('restore-round', { roundId }),
	'add-leak': body('add-leak', { leak }),
	'set-leak': body('set-leak', {
		leakId,
		changes: changes({
			tag: fc.integer({ min: 1, max: 9 }),
			note: cleared(text),
			sectionId: cleared(sectionId),
			action: cleared(fc.constant('nip-up' as const))
		})
	}),
	'move-pin': body('move-pin', { leakId, planId, at }),
	'remove-leak': body('remove-leak', { leakId }),
	'restore-leak': body('restore-leak', { leakId }),
	'record-sighting': body('record-sighting', { leakId, roundId, sighting: cleared(sighting) }),
	'log-mending': body('log-mending', {
		leakId,
		roundId,
		changes: fc.oneof(
			mending,
			fc.constant({ mendedAt: null, isolated: null, reSoaped: null }),
			changes({ couldNot: cleared(text), minutes: cleared(amount) })
		)
	}),
	'add-system-test': body('add-system-test', {
		test: fc.record({
			kind: fc.constant('load-time' as const),
			id: testId,
			name: text,
			doneAt: fc.constant(AT),
			capacityM3PerMin: amount,
			cycles: fc.constant([{ loadedS: 10, unloadedS: 30 }])
		})
	}),
	'remove-system-test': body('remove-system-test', { testId }),
	'restore-system-test': body('restore-system-test', { testId }),
	'set-mend-plan': body('set-mend-plan', {
		changes: changes({ budget: cleared(amount), foundBy: cleared(fc.constant('exact')) })
	}),
	'add-photo': body('add-photo', {
		leakId,
		photo
	}),
	'set-photo': body('set-photo', {
		leakId,
		photoId,
		changes: changes({
			caption: cleared(text),
			of: fc.constantFrom('leak' as const, 'mending' as const)
		})
	}),
	'remove-photo': body('remove-photo', { leakId, photoId }),
	'restore-photo': body('restore-photo', { leakId, photoId }),
	'add-area': body('add-area', {
		area: fc.record({
			id: areaId,
			planId,
			outline: fc.constant([
				{ x: 0, y: 0 },
				{ x: 1, y: 0 },
				{ x: 1, y: 1 }
			]),
			use: fc.oneof(
				fc.record({ kind: fc.constant('section'), sectionId }),
				fc.record({ kind: fc.constant('walked-tight'), roundId, walkedAt: fc.constant(AT) })
			)
		})
	}),
	'set-area': body('set-area', { areaId, changes: changes({ name: cleared(text), planId }) }),
	'remove-area': body('remove-area', { areaId }),
	'restore-area': body('restore-area', { areaId }),
	'add-room-check': body('add-room-check', {
		roomCheck: fc.record({
			id: roomCheckId,
			roundId,
			machine: text,
			point: fc.constantFrom('intake-filter', 'oil-level'),
			outcome: fc.constantFrom('in-order', 'finding'),
			checkedAt: fc.constant(AT)
		})
	}),
	'set-room-check': body('set-room-check', {
		roomCheckId,
		changes: changes({ note: cleared(text), outcome: fc.constant('not-done') })
	}),
	'remove-room-check': body('remove-room-check', { roomCheckId }),
	'restore-room-check': body('restore-room-check', { roomCheckId }),
	'add-window': body('add-window', {
		window: fc.record({
			id: windowId,
			name: text,
			startsAt: fc.constant(AT),
			minutes: amount,
			people: fc.constantFrom(1, 2),
			overnightOff: fc.boolean()
		})
	}),
	'set-window': body('set-window', {
		windowId,
		changes: changes({ minutes: amount, downtimeCostPerHour: cleared(amount) })
	}),
	'remove-window': body('remove-window', { windowId }),
	'restore-window': body('restore-window', { windowId }),
	'add-adjustment': body('add-adjustment', {
		adjustment: fc.record({
			id: adjustmentId,
			roundId,
			what: text,
			reason: text,
			energyKwhPerYear: fc.constantFrom(-500, 0, 800)
		})
	}),
	'set-adjustment': body('set-adjustment', {
		adjustmentId,
		changes: changes({ reason: text, energyKwhPerYear: amount })
	}),
	'remove-adjustment': body('remove-adjustment', { adjustmentId }),
	'restore-adjustment': body('restore-adjustment', { adjustmentId })
};

export const anyBody: fc.Arbitrary<CommandBody> = fc.oneof(...Object.values(ANY_BODY));

function body<Kind extends CommandBody['kind']>(
	kind: Kind,
	fields: Record<string, fc.Arbitrary<unknown>>
): fc.Arbitrary<CommandBody> {
	return fc.record({
		kind: fc.constant(kind),
		...fields
	}) as fc.Arbitrary<unknown> as fc.Arbitrary<CommandBody>;
}

function changes(fields: Record<string, fc.Arbitrary<unknown>>): fc.Arbitrary<unknown> {
	return fc.record(fields, { requiredKeys: [] });
}

function cleared<T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | null> {
	return fc.option(value, { nil: null });
}

export function startedSurvey(): Survey {
	return newSurvey(
		{ id: 'site-1', name: 'Tonwerk Nord', currency: 'EUR' },
		{ id: 'round-1', name: 'Round 1', startedAt: AT }
	);
}

export function startCommand(survey: Survey = startedSurvey()): Command {
	return {
		id: 'command-start',
		device: 'device-a',
		time: 0,
		at: AT,
		body: { kind: 'start-site', survey }
	};
}

/** Bodies as one device would log them, from a logical time on. */
export function asCommands(
	bodies: readonly CommandBody[],
	device = 'device-a',
	from = 1
): Command[] {
	return bodies.map((entry, index) => ({
		id: `command-${device}-${from + index}`,
		device,
		time: from + index,
		at: AT,
		body: entry
	}));
}
