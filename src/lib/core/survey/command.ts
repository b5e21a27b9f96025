import { z } from 'zod';
import { Instant, Name } from './field-schema.ts';
import { Id } from './ids.ts';
import {
	Adjustment,
	Area,
	Leak,
	Mending,
	MendPlan,
	Photo,
	Plan,
	PlanPoint,
	RoomCheck,
	Round,
	Section,
	ShutdownWindow,
	Sighting,
	Site,
	StartingValues,
	Survey
} from './schema.ts';
import { Prices, Supply } from './supply-schema.ts';
import { SystemTest } from './system-test-schema.ts';

/**
 * Changes to an entity: the fields named take the value given, `null` clears a field that may be
 * absent, and fields not named stay as they are, so that two people who change different fields of
 * one leak both keep their change.
 */
function changesOf<Shape extends z.core.$ZodLooseShape>(object: z.ZodObject<Shape>) {
	return z.strictObject(
		Object.fromEntries(
			Object.entries(object.shape).map(([key, field]) => [
				key,
				z.nullable(field as z.ZodType).optional()
			])
		)
	) as unknown as z.ZodType<Changes<z.infer<z.ZodObject<Shape>>>>;
}
export type Changes<T> = { [K in keyof T]?: T[K] | null | undefined };

const LeakFields = Leak.omit({
	id: true,
	sightings: true,
	mendings: true,
	photos: true,
	removed: true
});
const own = { id: true, removed: true } as const;

/** What a command does; the envelope around it says who, where and when. */
export const CommandBody = z.discriminatedUnion('kind', [
	z.object({ kind: z.literal('start-site'), survey: Survey }),
	z.object({ kind: z.literal('set-site'), changes: changesOf(Site.omit({ id: true })) }),
	z.object({ kind: z.literal('set-supply'), changes: changesOf(Supply) }),
	z.object({ kind: z.literal('set-prices'), changes: changesOf(Prices) }),
	z.object({ kind: z.literal('set-starting-values'), changes: changesOf(StartingValues) }),
	z.object({ kind: z.literal('add-plan'), plan: Plan }),
	z.object({
		kind: z.literal('set-plan'),
		planId: Id,
		changes: changesOf(Plan.omit(own))
	}),
	z.object({ kind: z.literal('remove-plan'), planId: Id }),
	z.object({ kind: z.literal('restore-plan'), planId: Id }),
	z.object({ kind: z.literal('add-section'), section: Section }),
	z.object({
		kind: z.literal('set-section'),
		sectionId: Id,
		changes: changesOf(Section.omit(own))
	}),
	z.object({ kind: z.literal('remove-section'), sectionId: Id }),
	z.object({ kind: z.literal('restore-section'), sectionId: Id }),
	z.object({ kind: z.literal('add-round'), round: Round }),
	z.object({
		kind: z.literal('set-round'),
		roundId: Id,
		changes: changesOf(Round.omit(own))
	}),
	z.object({ kind: z.literal('remove-round'), roundId: Id }),
	z.object({ kind: z.literal('restore-round'), roundId: Id }),
	z.object({ kind: z.literal('add-leak'), leak: Leak }),
	z.object({ kind: z.literal('set-leak'), leakId: Id, changes: changesOf(LeakFields) }),
	z.object({ kind: z.literal('move-pin'), leakId: Id, planId: Id, at: PlanPoint }),
	z.object({ kind: z.literal('remove-leak'), leakId: Id }),
	z.object({ kind: z.literal('restore-leak'), leakId: Id }),
	z.object({
		kind: z.literal('record-sighting'),
		leakId: Id,
		roundId: Id,
		sighting: Sighting.nullable()
	}),
	z.object({
		kind: z.literal('log-mending'),
		leakId: Id,
		roundId: Id,
		changes: changesOf(Mending)
	}),
	z.object({ kind: z.literal('add-system-test'), test: SystemTest }),
	z.object({ kind: z.literal('remove-system-test'), testId: Id }),
	z.object({ kind: z.literal('restore-system-test'), testId: Id }),
	z.object({ kind: z.literal('set-mend-plan'), changes: changesOf(MendPlan) }),
	z.object({ kind: z.literal('add-photo'), leakId: Id, photo: Photo }),
	z.object({
		kind: z.literal('set-photo'),
		leakId: Id,
		photoId: Id,
		changes: changesOf(Photo.pick({ of: true, caption: true }))
	}),
	z.object({ kind: z.literal('remove-photo'), leakId: Id, photoId: Id }),
	z.object({ kind: z.literal('restore-photo'), leakId: Id, photoId: Id }),
	z.object({ kind: z.literal('add-area'), area: Area }),
	z.object({ kind: z.literal('set-area'), areaId: Id, changes: changesOf(Area.omit(own)) }),
	z.object({ kind: z.literal('remove-area'), areaId: Id }),
	z.object({ kind: z.literal('restore-area'), areaId: Id }),
	z.object({ kind: z.literal('add-room-check'), roomCheck: RoomCheck }),
	z.object({
		kind: z.literal('set-room-check'),
		roomCheckId: Id,
		changes: changesOf(RoomCheck.omit(own))
	}),
	z.object({ kind: z.literal('remove-room-check'), roomCheckId: Id }),
	z.object({ kind: z.literal('restore-room-check'), roomCheckId: Id }),
	z.object({ kind: z.literal('add-window'), window: ShutdownWindow }),
	z.object({
		kind: z.literal('set-window'),
		windowId: Id,
		changes: changesOf(ShutdownWindow.omit(own))
	}),
	z.object({ kind: z.literal('remove-window'), windowId: Id }),
	z.object({ kind: z.literal('restore-window'), windowId: Id }),
	z.object({ kind: z.literal('add-adjustment'), adjustment: Adjustment }),
	z.object({
		kind: z.literal('set-adjustment'),
		adjustmentId: Id,
		changes: changesOf(Adjustment.omit(own))
	}),
	z.object({ kind: z.literal('remove-adjustment'), adjustmentId: Id }),
	z.object({ kind: z.literal('restore-adjustment'), adjustmentId: Id })
]);
export type CommandBody = z.infer<typeof CommandBody>;
export type CommandKind = CommandBody['kind'];

/** One small, serialisable change to the survey, as it stands in the log. */
export const Command = z.object({
	id: Id,
	/** The device that made it; together with `time` it orders the log the same everywhere. */
	device: Id,
	/** Logical time: one more than the highest that the device had seen. */
	time: z.int().min(0),
	/** The clock on the wall, for people; nothing is ordered by it. */
	at: Instant,
	author: Name.optional(),
	/** Shared by commands that the user gave in one go, and takes back in one go. */
	step: Id.optional(),
	/** The command that this one takes back or brings back, if it came from undo or redo. */
	undoes: Id.optional(),
	redoes: Id.optional(),
	body: CommandBody
});
export type Command = z.infer<typeof Command>;

/** The one order of a log: logical time, then device, then id. */
export function compareCommands(a: Command, b: Command): number {
	return a.time - b.time || compareText(a.device, b.device) || compareText(a.id, b.id);
}

function compareText(a: string, b: string): number {
	return a < b ? -1 : a > b ? 1 : 0;
}
