import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { ok, refuse, type Result } from '#lib/core/units/result.ts';
import { startCommand } from '../../../tests/arbitrary/commands.ts';
import { WriteQueue, type SaveState } from './write-queue.ts';

beforeEach(() => {
	vi.useFakeTimers();
});
afterEach(() => {
	vi.useRealTimers();
});

/** A queue before a disk that answers when it is told to. */
function queueBefore() {
	const answers: ((answer: Result<null>) => void)[] = [];
	const states: string[] = [];
	const write = () => new Promise<Result<null>>((resolve) => answers.push(resolve));
	const about = {
		name: '',
		currency: 'EUR',
		counts: { leaks: 0, leaking: 0, mended: 0, tight: 0 }
	};
	const queue = new WriteQueue({ write }, 'site-1', {
		about: () => ({ ...about, updatedAt: '2026-03-02T08:15:00Z' }),
		onState: (state: SaveState) =>
			states.push(state.kind === 'not-saved' ? state.refusal.code : state.kind),
		onSaved: () => states.push('written')
	});
	const answer = async (given: Result<null>) => {
		answers.shift()?.(given);
		await vi.advanceTimersByTimeAsync(0);
	};
	return { queue, states, answer };
}
const item = { commands: [startCommand()], blobs: [] };

describe('what is to be written', () => {
	test('is not called saved before the disk has answered, and within 2 s the user knows that it has not', async () => {
		const { queue, states, answer } = queueBefore();
		queue.add(item);
		await vi.advanceTimersByTimeAsync(1_999);
		expect(states).toEqual(['saving']);
		await vi.advanceTimersByTimeAsync(1);
		expect(states).toEqual(['saving', 'write-slow']);
		// It stays so for as long as it takes, and is saved when it is.
		await vi.advanceTimersByTimeAsync(60_000);
		expect(states).toEqual(['saving', 'write-slow']);
		await answer(ok(null));
		expect(states).toEqual(['saving', 'write-slow', 'written', 'saved']);
	});

	test('says nothing of a disk that answers in time', async () => {
		const { queue, states, answer } = queueBefore();
		queue.add(item);
		await vi.advanceTimersByTimeAsync(1_500);
		await answer(ok(null));
		await vi.advanceTimersByTimeAsync(10_000);
		expect(states).toEqual(['saving', 'written', 'saved']);
	});

	test('is tried again after a refusal, and stays in memory meanwhile', async () => {
		const { queue, states, answer } = queueBefore();
		queue.add(item);
		await answer(refuse('storage-full'));
		expect(states).toEqual(['saving', 'storage-full']);
		queue.retry();
		await vi.advanceTimersByTimeAsync(0);
		await answer(ok(null));
		expect(states).toEqual(['saving', 'storage-full', 'written', 'saved']);
	});
});
