import type { Plan, Survey } from '#lib/core/survey/schema.ts';
import { ok, refuse } from '#lib/core/units/result.ts';
import { assess } from '#lib/core/weigh/assess.ts';
import { geoJsonText, NOT_GEOGRAPHIC, planGeoJson } from '#lib/report/plan-geojson.ts';
import { command, type JsonKey, type Outcome } from '../command.ts';
import { complain, type Answer } from '../complaint.ts';
import type { Io } from '../io.ts';
import { may, type Given } from '../options.ts';
import { oneLine } from '../plain-text.ts';
import { words as anyWords } from '../reading.ts';
import {
	chooseRound,
	openingNotes,
	openSurvey,
	ROUND_OPTION,
	SURVEY_WORD
} from '../survey-argument.ts';

const OPTIONS = {
	plan: may('Ground floor', 'id or name of a plan; needed where there are several', anyWords),
	...ROUND_OPTION
};

const JSON_KEYS: readonly JsonKey[] = [
	['coordinatesAre', 'that they are local metres on the plan, and not geographic'],
	['localPlan', 'unit, origin, axes, widthM, heightM, northDegrees, plan, site, round'],
	[
		'features[].properties.kind',
		'leak, section, isolating-valve, way-of-the-air or walked-and-tight'
	],
	[
		'features[].geometry',
		'a point, an arrow’s two ends or an area’s ring, m from the plan’s lower left corner'
	],
	['features[].properties', 'of a leak: tag, state, part, place, section, freeAirLPerS (L/s),'],
	['', 'costPerYear in the currency; of a section: name, valve, volumeL, pressureBarGauge']
];

export const geojson = command({
	name: 'geojson',
	summary: 'what is on a plan, as GeoJSON in local metres (not geographic)',
	usage: ['geojson FILE [--plan "Ground floor"] [--round "First round"]'],
	word: { ...SURVEY_WORD, must: true },
	notes: [
		NOT_GEOGRAPHIC,
		'The plan needs its scale. With and without --json the answer is the same.'
	],
	options: OPTIONS,
	json: JSON_KEYS,
	run
});

async function run({ options, words }: Given<typeof OPTIONS>, io: Io): Promise<Answer<Outcome>> {
	const opened = await openSurvey(words[0] ?? '', io);
	if (!opened.ok) return opened;
	const { survey } = opened.value;
	const round = chooseRound(survey, options.round);
	if (!round.ok) return round;
	const plan = choosePlan(survey, options.plan);
	if (!plan.ok) return plan;
	const made = planGeoJson(survey, assess(survey, round.value.id), plan.value);
	if (!made.ok) return complain(made.error);
	return ok({
		json: { ...made.value },
		text: geoJsonText(made.value),
		notes: [...openingNotes(opened.value), NOT_GEOGRAPHIC]
	});
}

function choosePlan(survey: Survey, asked: string | undefined): Answer<Plan> {
	const plans = Object.values(survey.plans).filter(({ removed }) => !removed);
	const fitting =
		asked === undefined
			? plans
			: plans.filter(({ id, name }) => id === asked || name.trim() === asked.trim());
	const [only, second] = fitting;
	if (only && !second) return ok(only);
	if (plans.length === 0) return complain(refuse('survey-without-plan').error);
	const names = (second ? fitting : plans).map(({ id, name }) => `${oneLine(name)} (${id})`);
	return complain(refuse('plan-not-chosen', { plans: names.join(', ') }).error);
}
