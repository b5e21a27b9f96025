import { describe, expect, it } from 'vitest';
import { newSurvey } from '../survey/new-survey.ts';
import { FINDINGS_AT, ROOM_FINDINGS, ROOM_POINTS, type RoomPoint } from '../survey/room-points.ts';
import type { RoomCheck, Survey } from '../survey/schema.ts';
import { cautionsForJob, cautionsForRoom, depressuriseFirst, roomCautions } from './cautions.ts';
import { roomFindings } from './room-findings.ts';

const idsAt = (point: RoomPoint, rotaryScrew?: boolean) =>
	cautionsForRoom({ point, ...(rotaryScrew && { rotaryScrew }) }).map(({ id }) => id);

describe('cautions of the compressor room', () => {
	it.each(ROOM_POINTS)(
		'[C1] [C9] %s leads with depressurising, and has eye protection',
		(point) => {
			expect(cautionsForRoom({ point })[0]).toEqual(depressuriseFirst());
			expect(idsAt(point)).toContain('C9');
		}
	);

	it.each<[string, RoomPoint]>([
		['[C3] rust takes a tank out of service', 'condensate-drain'],
		['[C10] mains off before the belt guard', 'belt-tension'],
		['[C11] a compressor starts by itself', 'head-bolts'],
		['[C12] the tank is empty before the drain', 'condensate-drain'],
		['[C20] a pump joint is nipped up vented', 'pump-joints'],
		['[C29] the drain is opened with the tank empty of air', 'condensate-drain'],
		['[C30] condensate is caught', 'timed-drain'],
		['[C31] a timed drain is shut off and dead first', 'timed-drain'],
		['[C32] no filter is opened on a running machine', 'intake-filter'],
		['[C33] oil is read with the machine stopped', 'oil-level'],
		['[C34] the belt guard stays on', 'belt-tension'],
		['[C35] head bolts to the torque of the maker', 'head-bolts']
	])('%s', (title, point) => {
		const id = title.slice(1, title.indexOf(']'));
		expect(idsAt(point)).toContain(id);
		expect(ROOM_POINTS.every((each) => idsAt(each).includes(id))).toBe(false);
	});

	it('[C5] a rotary screw machine is left to its service engineer at every point', () => {
		for (const point of ROOM_POINTS) {
			expect(idsAt(point, true)).toContain('C5');
			expect(idsAt(point)).not.toContain('C5');
		}
	});

	it('[C29] [C35] no leak is given a caution of the room alone', () => {
		const ids = cautionsForJob({ part: 'drain', hazards: [] }).map(({ id }) => id);
		expect(ids.filter((id) => Number(id.slice(1)) >= 29)).toEqual([]);
	});

	it('[C7] [C8] [C28] the room as a whole has those of a section', () => {
		expect(roomCautions().map(({ id }) => id)).toEqual(['C7', 'C8', 'C27', 'C28']);
	});
});

function survey(checks: readonly Partial<RoomCheck>[]): Survey {
	const base = newSurvey(
		{ id: 'site-a', name: 'A', currency: 'EUR' },
		{ id: 'round-1', name: 'Round 1', startedAt: '2026-03-02T08:00:00Z' }
	);
	const made = checks.map((check, index): RoomCheck => ({
		id: `room-${String(index)}`,
		roundId: 'round-1',
		machine: 'Compressor 1',
		point: 'oil-level',
		outcome: 'finding',
		checkedAt: '2026-03-02T09:00:00Z',
		...check
	}));
	return { ...base, roomChecks: Object.fromEntries(made.map((check) => [check.id, check])) };
}

describe('findings of the compressor room', () => {
	it('are what was found in this round and not taken back', () => {
		const found = roomFindings(
			survey([
				{ finding: 'oil-low' },
				{ outcome: 'in-order' },
				{ outcome: 'not-done' },
				{ roundId: 'round-0' },
				{ removed: true }
			]),
			'round-1'
		);
		expect(found.map(({ check }) => check.id)).toEqual(['room-0']);
		expect(found[0]?.cautions.length).toBeGreaterThan(2);
	});

	it('stand with rust first and what is mended last', () => {
		const found = roomFindings(
			survey([
				{ finding: 'oil-low', mendedAt: '2026-03-03T09:00:00Z' },
				{ point: 'belt-tension', finding: 'belt-slack' },
				{ machine: 'Tank', point: 'condensate-drain', finding: 'drain-rust' }
			]),
			'round-1'
		);
		expect(found.map(({ check }) => check.finding)).toEqual([
			'drain-rust',
			'belt-slack',
			'oil-low'
		]);
		expect(found.map(({ pinnedFirst, done }) => [pinnedFirst, done])).toEqual([
			[true, false],
			[false, false],
			[false, true]
		]);
	});

	it('on a rotary screw machine are for its service engineer', () => {
		const [found] = roomFindings(survey([{ rotaryScrew: true, finding: 'oil-low' }]), 'round-1');
		expect(found?.forEngineer).toBe(true);
	});

	it('each belong to one point', () => {
		expect(Object.values(FINDINGS_AT).flat().toSorted()).toEqual([...ROOM_FINDINGS].toSorted());
	});
});
