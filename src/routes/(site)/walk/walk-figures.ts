import { apply } from '#lib/core/survey/apply.ts';
import { find } from '#lib/core/survey/ids.ts';
import { leakState, nextTag, sightingIn } from '#lib/core/survey/leak-state.ts';
import type { Leak, PlanPoint, Section, Survey } from '#lib/core/survey/schema.ts';
import { assess } from '#lib/core/weigh/assess.ts';
import type { Assessment, LeakAssessment } from '#lib/core/weigh/assessment.ts';
import type { Pin } from '#lib/plan/pin.ts';
import { now } from '#lib/session/identity.ts';
import { leakOf, type LeakDraft } from '#lib/ui/walk/leak-draft.ts';
import type { LeakRow } from '#lib/ui/walk/leak-row.ts';
import { STATE_WORDS } from '#lib/words/actions.ts';
import type { Format } from '#lib/words/format.ts';
import { PART_WORDS } from '#lib/words/parts.ts';
import { refusalSentence } from '#lib/words/refusals.ts';
import { walk } from '#lib/words/walk.ts';

/** What one leak wastes: to order by, and in words that are made when somebody reads them. */
class Waste {
	readonly worth: number;
	readonly #of: LeakAssessment;
	readonly #format: Format;

	constructor(of: LeakAssessment, format: Format) {
		this.#of = of;
		this.#format = format;
		this.worth = of.costMinorPerYear ?? of.energyKwhPerYear ?? of.freeAirM3PerS;
	}

	is(of: LeakAssessment, format: Format): boolean {
		return this.#of === of && this.#format === format;
	}

	get short(): string {
		return this.#yearly ?? this.#flow;
	}

	get long(): string {
		const [flow, yearly] = [this.#flow, this.#yearly];
		return yearly ? walk.wastes(flow, yearly) : walk.wastesFlow(flow);
	}

	get #flow(): string {
		return this.#format.flow(this.#of.freeAirM3PerS);
	}

	get #yearly(): string | undefined {
		const { costMinorPerYear: cost, energyKwhPerYear: energy } = this.#of;
		if (cost !== undefined) return this.#format.money(cost);
		return energy === undefined ? undefined : this.#format.energy(energy);
	}
}
export type WasteByLeak = ReadonlyMap<string, Waste>;

/** The survey is immutable and so are its figures: what was made of the same is the same again. */
const wastes = new WeakMap<LeakAssessment, Waste>();

export function wasteByLeak(assessment: Assessment, format: Format): WasteByLeak {
	return new Map(assessment.leaks.map((each) => [each.leakId, wasteOf(each, format)] as const));
}

function wasteOf(each: LeakAssessment, format: Format): Waste {
	const before = wastes.get(each);
	if (before?.is(each, format)) return before;
	const waste = new Waste(each, format);
	wastes.set(each, waste);
	return waste;
}

/** What one leak wastes, in words; or why that cannot be said. */
export function wasteWords(
	survey: Survey,
	roundId: string,
	leak: Leak,
	weighed: WasteByLeak
): string {
	const waste = weighed.get(leak.id);
	if (waste) return waste.long;
	const reason = assess(survey, roundId, [leakState(leak, roundId)]).unweighed.find(
		({ leakId }) => leakId === leak.id
	);
	return reason ? refusalSentence(reason.refusal) : '';
}

/** The same for a leak that is not pinned yet: the survey as it would be. */
export function draftWasteWords(
	survey: Survey,
	roundId: string,
	draft: LeakDraft,
	format: Format
): string | undefined {
	if (!draft.evidence) return undefined;
	const made = leakOf(draft, { id: 'leak-draft', tag: nextTag(survey), roundId, at: now() });
	const next = apply(survey, { kind: 'add-leak', leak: made });
	if (!next.ok) return undefined;
	return wasteWords(next.value, roundId, made, wasteByLeak(assess(next.value, roundId), format));
}

const pins = new WeakMap<Leak, Pin>();

/** Pins that have not changed are the same objects, and need not be drawn again. */
export function pinsOn(
	planId: string | undefined,
	leaks: readonly Leak[],
	roundId: string,
	weighed: WasteByLeak
): Pin[] {
	let largest = 0;
	for (const { worth } of weighed.values()) largest = Math.max(largest, worth);
	return leaks.flatMap((leak) => {
		if (!leak.at || leak.planId !== planId) return [];
		const state = leakState(leak, roundId);
		const share = largest > 0 ? (weighed.get(leak.id)?.worth ?? 0) / largest : 0;
		const size = share > 0.4 ? 3 : share > 0.1 ? 2 : 1;
		const before = pins.get(leak);
		if (before?.state === state && before.size === size) return before;
		const pin: Pin = {
			id: leak.id,
			tag: leak.tag,
			at: leak.at,
			state,
			size,
			name: walk.pin(leak.tag, STATE_WORDS[state], PART_WORDS[leak.part], leak.place ?? '')
		};
		pins.set(leak, pin);
		return pin;
	});
}

interface MadeRow {
	readonly roundId: string;
	readonly section: Section | undefined;
	readonly waste: Waste | undefined;
	readonly row: LeakRow;
}
const rows = new WeakMap<Leak, MadeRow>();

/** The list beside the plan, the newest first; rows that have not changed are the same objects. */
export function rowsOf(
	survey: Survey,
	leaks: readonly Leak[],
	roundId: string,
	weighed: WasteByLeak,
	doubtful: ReadonlySet<string>
): LeakRow[] {
	return leaks
		.map((leak): LeakRow => {
			const section = find(survey.sections, leak.sectionId);
			const waste = weighed.get(leak.id);
			const isDoubtful = doubtful.has(leak.id);
			const before = rows.get(leak);
			const same =
				before?.roundId === roundId &&
				before.section === section &&
				before.waste === waste &&
				before.row.doubtful === isDoubtful;
			if (same) return before.row;
			const state = leakState(leak, roundId);
			const row: LeakRow = {
				id: leak.id,
				tag: leak.tag,
				state,
				title: PART_WORDS[leak.part],
				about: [leak.place, section?.name].filter(Boolean).join(' · '),
				get waste() {
					return waste?.short ?? '–';
				},
				toSize: state === 'leaking' && !sightingIn(leak, roundId)?.evidence,
				doubtful: isDoubtful
			};
			rows.set(leak, { roundId, section, waste, row });
			return row;
		})
		.reverse();
}

export function placeWords(
	survey: Survey,
	at: PlanPoint | undefined,
	planId: string | undefined,
	format: Format
): string | undefined {
	const on = find(survey.plans, planId);
	if (!at || !on) return undefined;
	return walk.placed(on.name, format.percent(at.x), format.percent(at.y));
}
