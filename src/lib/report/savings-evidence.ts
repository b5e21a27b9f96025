import type { ComparedLeak, Comparison } from '../core/prove/compare.ts';
import { find } from '../core/survey/ids.ts';
import { compareInstants } from '../core/survey/instants.ts';
import type { Leak, Photo, Sighting, Survey } from '../core/survey/schema.ts';
import { EVIDENCE_WORDS } from '../words/evidence.ts';
import { PART_WORDS } from '../words/parts.ts';
import { FATE_WORDS } from '../words/prove.ts';
import { refusalSentence } from '../words/refusals.ts';
import { savingsReport } from '../words/savings-report.ts';
import type { JobPhoto, PrintFormat } from './model.ts';
import type { Shower } from './savings-show.ts';

/** A picture of one side, as it is named in the survey, with what stands under it. */
export interface SidePhoto extends Omit<JobPhoto, 'path'> {
	readonly caption: string;
	/** For those who do not see it. */
	readonly alt: string;
}

export interface EvidenceLine {
	readonly tag: string;
	readonly fate: string;
	readonly what: string;
	readonly where: string;
	readonly before: string;
	readonly after: string;
	/** How it was sized on either side, and when it was seen and mended. */
	readonly evidence: readonly string[];
	/** Before and after, where there are pictures. */
	readonly photos: readonly SidePhoto[];
}

export interface EvidenceGroup {
	readonly heading: string;
	readonly sum: string;
	/** Where its leaks are named instead, if not here. */
	readonly elsewhere?: string;
	readonly lines: readonly EvidenceLine[];
}

const ORDER = ['held', 'again', 'new', 'still', 'claimed', 'not-reached'] as const;

export function groupsOf(
	survey: Survey,
	{ leaks, before, after }: Comparison,
	show: Shower,
	format: PrintFormat
): EvidenceGroup[] {
	return ORDER.flatMap((fate) => {
		const here = leaks.filter((leak) => leak.fate === fate);
		if (here.length === 0) return [];
		const sum = (side: 'before' | 'after') =>
			show.text(here.reduce((total, leak) => total + (leak[side] ? show.of(leak[side]) : 0), 0));
		return [
			{
				heading: savingsReport.group(FATE_WORDS[fate], format.count(here.length)),
				sum: savingsReport.groupSum(sum('before'), sum('after')),
				// What nobody reached saves nothing; a report that names each twice is read by nobody.
				...(fate === 'not-reached'
					? { elsewhere: savingsReport.eachBelow, lines: [] }
					: {
							lines: here.map((leak) =>
								evidenceLine(survey, leak, [before.id, after.id], show, format)
							)
						})
			}
		];
	});
}

function evidenceLine(
	survey: Survey,
	{ leakId, tag, fate, claimFailed, before, after }: ComparedLeak,
	roundIds: readonly [string, string],
	show: Shower,
	format: PrintFormat
): EvidenceLine {
	const leak = find(survey.leaks, leakId);
	const section = find(survey.sections, leak?.sectionId);
	const seen = roundIds.map((id) => sightingWords(find(leak?.sightings ?? {}, id), format));
	const mending = find(leak?.mendings ?? {}, roundIds[0]);
	const words = savingsReport.seen;
	return {
		tag: String(tag),
		fate: FATE_WORDS[fate],
		what: leak ? PART_WORDS[leak.part] : '',
		where: [leak?.place, section?.name].filter(Boolean).join(', '),
		before: before ? show.value(before) : savingsReport.noneKnown,
		after: after ? show.value(after) : savingsReport.tight,
		evidence: [
			seen[0],
			mending?.mendedAt && words.mended(format.date(mending.mendedAt)),
			mending?.reSoaped && (mending.reSoaped === 'tight' ? words.soapedTight : words.soapedLeaking),
			claimFailed && words.claimFailed,
			seen[1]
		].filter((text): text is string => typeof text === 'string' && text !== ''),
		photos: leak ? photosOf(leak, roundIds, format) : []
	};
}

/** The first picture of the leak as it was, and the last of what became of it. */
function photosOf(
	leak: Leak,
	[beforeId, afterId]: readonly [string, string],
	format: PrintFormat
): SidePhoto[] {
	const all = Object.values(leak.photos ?? {})
		.filter(({ removed }) => !removed)
		.sort((a, b) => compareInstants(a.takenAt, b.takenAt));
	const before = all.find((photo) => photo.of === 'leak' && photo.roundId === beforeId);
	const after = all.findLast(
		(photo) => photo.roundId === afterId || (photo.of === 'mending' && photo.roundId === beforeId)
	);
	const shown = (side: string, photo: Photo | undefined): SidePhoto[] => {
		if (!photo) return [];
		const { sha256, widthPx, heightPx } = photo.image;
		const caption = savingsReport.caption(side, format.date(photo.takenAt));
		const alt = savingsReport.photo(leak.tag, caption, photo.caption ?? PART_WORDS[leak.part]);
		return [{ sha256, widthPx, heightPx, caption, alt }];
	};
	const { sides } = savingsReport;
	return [...shown(sides.before, before), ...shown(sides.after, after)];
}

function sightingWords(sighting: Sighting | undefined, format: PrintFormat): string {
	if (!sighting) return '';
	const day = format.date(sighting.seenAt);
	const words = savingsReport.seen;
	if (sighting.state === 'not-reached') return words.notReached(day);
	if (sighting.state === 'tight') return words.tightBySoap(day);
	return sighting.evidence
		? words.leakingBy(day, EVIDENCE_WORDS[sighting.evidence.kind])
		: words.leaking(day);
}

/** What was not looked at again: how many and how much, then each by itself. */
export interface NotReached {
	/** Empty when every stop was reached. */
	readonly counts: readonly string[];
	readonly lines: readonly string[];
}

export function notReachedOf(
	survey: Survey,
	{ leaks, notCompared, before, after: later }: Comparison,
	show: Shower,
	format: PrintFormat
): NotReached {
	const words = savingsReport;
	const placeOf = (leakId: string) => find(survey.leaks, leakId)?.place ?? words.noPlace;
	const seenOf = (leak: ComparedLeak) => {
		const line = evidenceLine(survey, leak, [before.id, later.id], show, format);
		return {
			where: [line.what, line.where].filter(Boolean).join(', '),
			seen: line.evidence.join(' · ')
		};
	};
	const unseen = leaks.filter(({ fate }) => fate === 'not-reached' || fate === 'claimed');
	const sum = unseen.reduce((total, { after }) => total + (after ? show.of(after) : 0), 0);
	const counted = (count: number) => [count, format.count(count)] as const;
	return {
		counts: [
			...(unseen.length > 0 ? [words.notReached(...counted(unseen.length), show.text(sum))] : []),
			...(notCompared.length > 0 ? [words.leftOutToo(...counted(notCompared.length))] : [])
		],
		lines: [
			...unseen.map((leak) => {
				const say = leak.fate === 'claimed' ? words.countedThoughClaimed : words.countedAsLeaking;
				const { where, seen } = seenOf(leak);
				return say(String(leak.tag), where, show.value(leak.after), seen);
			}),
			...notCompared.map(({ tag, leakId, refusal }) =>
				words.leftOut(String(tag), placeOf(leakId), refusalSentence(refusal))
			)
		]
	};
}
